import { expect, test } from "vitest";
import { headersFor, readRules } from "../../../src/headers.mjs";
import { headerRules, headersText } from "../../../src/integrations/headers-file.ts";
import { policy } from "../../../src/integrations/policy.ts";

const top = [
  { name: "_astro", isFolder: true },
  { name: "404.html", isFolder: false },
  { name: "embed", isFolder: true },
  { name: "lessons", isFolder: true },
];
const rules = readRules(headersText(headerRules("/", top)));
const sent = (path: string) => headersFor(rules, path);

test("pages may not be framed, embedded ones may", () => {
  for (const path of ["/", "/404.html", "/lessons/", "/lessons/a/"])
    expect(sent(path)["content-security-policy"]).toBe(`${policy}; frame-ancestors 'none'`);
  expect(sent("/embed/a/")["content-security-policy"]).toBe(`${policy}; frame-ancestors *`);
});

test("an address that nobody has is not framed either", () =>
  expect(sent("/nowhere/")["x-frame-options"]).toBe("DENY"));

test("a host that sends the headers of all rules for a path sends none that contradict each other", () => {
  for (const path of ["/", "/lessons/", "/embed/a/", "/_astro/a.js", "/nowhere"]) {
    const all = rules.filter((rule) => headersFor([rule], path)["content-security-policy"] !== undefined);
    const ancestors = all.flatMap(({ headers }) =>
      headers.flatMap(([, value]) => /frame-ancestors .*/.exec(value ?? "")?.[0] ?? []),
    );
    expect(ancestors.length, path).toBeLessThanOrEqual(1);
    const caching = rules.filter((rule) => headersFor([rule], path)["cache-control"] !== undefined);
    expect(caching.length, path).toBeLessThanOrEqual(1);
  }
});

test("below a path all rules lie below it", () => {
  const paths = [...headerRules("/a/b/", top).keys()];
  expect(paths).toEqual([
    "/a/b/*",
    "/a/b/",
    "/a/b/_astro/*",
    "/a/b/404.html",
    "/a/b/embed/*",
    "/a/b/lessons/*",
  ]);
});
