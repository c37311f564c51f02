import { atRoot } from "../at-root.ts";

/** Every source that a working may name, by its key on the page of sources. */
export type SourceLines = Readonly<Record<string, string>>;

export async function fetchSources(signal: AbortSignal): Promise<SourceLines> {
  const answer = await fetch(atRoot("/working/sources.json"), { signal });
  if (!answer.ok) throw new Error(`sources: ${answer.status}`);
  return answer.json();
}

const linksIn = (working: Element) =>
  working.querySelectorAll<HTMLAnchorElement>('.from a[href*="/sources/#"]');

/** Numbers the sources that a working names, in the order in which it first names them; their keys in that order. */
export function numberSources(working: Element): readonly string[] {
  const links = [...linksIn(working)];
  const keys = [...new Set(links.map(({ hash }) => hash.slice(1)))];
  for (const link of links) link.dataset["cite"] = String(keys.indexOf(link.hash.slice(1)) + 1);
  return keys;
}
