import { readdir, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { AstroIntegration } from "astro";
import { policy, policyFramedBy } from "./policy.ts";

type Headers = Readonly<Record<string, string>>;

/** What pages have no use for, and nobody who gets into one should have. */
const refused = [
  "accelerometer",
  "camera",
  "display-capture",
  "geolocation",
  "gyroscope",
  "magnetometer",
  "microphone",
  "midi",
  "payment",
  "usb",
];

const everywhere: Headers = {
  "Content-Security-Policy": policy,
  "X-Frame-Options": "DENY",
  "X-Content-Type-Options": "nosniff",
  "Referrer-Policy": "no-referrer",
  "Permissions-Policy": refused.map((name) => `${name}=()`).join(", "),
  "Cross-Origin-Opener-Policy": "same-origin",
  // A frame in a sandbox has no origin, so its scripts and fonts are asked for as a stranger's. All of it is public.
  "Access-Control-Allow-Origin": "*",
};

const framedBy = (ancestors: "'none'" | "*"): Headers => ({
  "Content-Security-Policy": policyFramedBy(ancestors),
  "Cache-Control": "no-cache",
});

const immutable: Headers = { "Cache-Control": "public, max-age=31536000, immutable" };

/**
 * The rules of a site with these folders and pages at its root, by path. Where two rules name one header, some hosts send
 * the last and others both; so no two rules of a path ever contradict each other. A policy that names its ancestors
 * outdoes X-Frame-Options.
 */
export function headerRules(base: string, top: readonly { name: string; isFolder: boolean }[]) {
  const rules = new Map<string, Headers>([
    [`${base}*`, everywhere],
    [base, framedBy("'none'")],
  ]);
  for (const { name, isFolder } of top) {
    const own =
      name === "_astro" || name === "formulas" ? immutable : framedBy(name === "embed" ? "*" : "'none'");
    rules.set(`${base}${name}${isFolder ? "/*" : ""}`, own);
  }
  return rules;
}

/** Rules as static hosts read them: a path, then its headers indented. */
export const headersText = (rules: ReadonlyMap<string, Headers>): string =>
  [...rules]
    .map(([path, headers]) =>
      [path, ...Object.entries(headers).map(([name, value]) => `  ${name}: ${value}`)].join("\n"),
    )
    .join("\n\n")
    .concat("\n");

/** Writes the file `_headers`, by which a static host sends the site's headers. */
export function headersFile(): AstroIntegration {
  let base = "/";
  return {
    name: "headers-file",
    hooks: {
      "astro:config:done": ({ config }) => {
        base = config.base.replace(/\/?$/, "/");
      },
      "astro:build:done": async ({ dir }) => {
        const root = fileURLToPath(dir);
        const top = (await readdir(root, { withFileTypes: true }))
          .map((entry) => ({ name: entry.name, isFolder: entry.isDirectory() }))
          .filter(({ name, isFolder }) => isFolder || name.endsWith(".html"))
          .sort((a, b) => a.name.localeCompare(b.name));
        await writeFile(join(root, "_headers"), headersText(headerRules(base, top)));
      },
    },
  };
}
