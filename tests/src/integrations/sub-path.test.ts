import { expect, test } from "vitest";
import { below } from "../../../src/integrations/sub-path.ts";

test("addresses from the root get the path, once, and nothing else does", () => {
  expect(below("/a/b/", '<a href="/c/#d">/c/</a>')).toBe('<a href="/a/b/c/#d">/c/</a>');
  expect(below("/a/b/", '<form action="/c/" data-to="/d/">')).toBe(
    '<form action="/a/b/c/" data-to="/a/b/d/">',
  );
  expect(below("/a/b/", '{"href":"/c/","text":"/c/"}')).toBe('{"href":"/a/b/c/","text":"/c/"}');
  for (const left of [
    '<script src="/a/b/_astro/x.js">',
    '<a href="#c">',
    '<a href="//c.example/">',
    '<link href="https://c.example/d/">',
    '<a href="c/">',
  ])
    expect(below("/a/b/", left)).toBe(left);
});
