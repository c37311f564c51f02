// Reads the file _headers of a built site, as static hosts do: a path, or the opening of some with a star, then its headers indented.

/**
 * The rules of a file, in their order.
 * @param {string} text
 */
export function readRules(text) {
  /** @type {{ path: string, headers: [string, string][] }[]} */
  const rules = [];
  for (const line of text.split("\n")) {
    const header = /^\s+([\w-]+):\s*(.*)$/.exec(line);
    if (header) rules.at(-1)?.headers.push([(header[1] ?? "").toLowerCase(), header[2] ?? ""]);
    else if (line.trim() !== "") rules.push({ path: line.trim(), headers: [] });
  }
  return rules;
}

/** @type {(path: string, pathname: string) => boolean} */
const fits = (path, pathname) =>
  path.endsWith("*") ? pathname.startsWith(path.slice(0, -1)) : pathname === path;

/**
 * The headers of an address; of two rules for one header the later one counts.
 * @param {ReturnType<typeof readRules>} rules
 * @param {string} pathname
 * @returns {Record<string, string>}
 */
export const headersFor = (rules, pathname) =>
  Object.fromEntries(rules.filter(({ path }) => fits(path, pathname)).flatMap(({ headers }) => headers));
