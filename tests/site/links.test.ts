import { describe, expect, test } from "vitest";
import { embedPages, fileOf, files, pages, read } from "./dist.ts";

const html = new Map(pages.map((page) => [page, read(fileOf(page)).toString()]));
const idsOf = (page: string) =>
  new Set(Array.from(html.get(page)?.matchAll(/\sid="([^"]+)"/g) ?? [], ([, id]) => id));
const ids = new Map(pages.map((page) => [page, idsOf(page)]));
const decode = (text: string) =>
  text.replaceAll("&amp;", "&").replaceAll("&#38;", "&").replaceAll("&quot;", '"');

/** A link that carries the state of a calculator is no anchor. */
const isState = (fragment: string) => /^[\w.-]+=/.test(fragment);

describe.each(pages)("%s", (page) => {
  const text = html.get(page) ?? "";

  test("its links lead somewhere", () => {
    const broken = Array.from(
      text.matchAll(/<(?:a|link|script|img)\b[^>]*?\s(?:href|src)="([^"]*)"/g),
      ([, link = ""]) => decode(link),
    )
      .filter((link) => !link.startsWith("data:"))
      .filter((link) => {
        const { origin, pathname, hash } = new URL(link, `http://here${page}`);
        if (origin !== "http://here") return false;
        const target = decodeURIComponent(pathname);
        if (!pages.includes(target)) return ![...files, ...embedPages].includes(target);
        const fragment = decodeURIComponent(hash.slice(1));
        return fragment !== "" && !isState(hash.slice(1)) && !ids.get(target)?.has(fragment);
      });
    expect([...new Set(broken)]).toEqual([]);
  });

  test("no id stands twice", () => {
    const all = Array.from(
      text.replace(/<template>[\s\S]*?<\/template>/g, "").matchAll(/\sid="([^"]+)"/g),
      ([, id]) => id,
    );
    expect(all.filter((id, i) => all.indexOf(id) !== i)).toEqual([]);
  });

  test("what labels and descriptions point to is there", () => {
    const pointers = Array.from(
      text.matchAll(/\s(?:for|aria-labelledby|aria-describedby|popovertarget)="([^"]+)"/g),
      ([, id = ""]) => id,
    );
    expect(pointers.flatMap((p) => p.split(" ")).filter((id) => !ids.get(page)?.has(id))).toEqual([]);
  });
});
