import { fileURLToPath } from "node:url";
import type { Plugin } from "vite";

const fonts = fileURLToPath(new URL("../fonts", import.meta.url));
const olderFormats = /,\s*url\([^)]*\.(?:woff|ttf)\)\s*format\("(?:woff|truetype)"\)/g;

/** KaTeX's style sheet with its fonts as WOFF2 only. */
export const onlyWoff2 = (css: string): string => css.replace(olderFormats, "");

const shorter = /url\(fonts\/(KaTeX_(?:Main-Regular|Math-Italic)\.woff2)\)/g;

/** The two faces that every page needs, from the shorter files that src/fonts/subset.mjs made of them. */
export const shorterFaces = (css: string, folder: string): string =>
  css.replace(shorter, (_, file: string) => `url(${folder}/${file})`);

/**
 * Takes the shorter faces, and keeps the two older copies of each KaTeX font out of the site. The style sheet has to be imported by a script or an
 * Astro component: an `@import` inside CSS does not pass through here.
 */
export const katexFonts = (): Plugin => ({
  name: "katex-fonts",
  enforce: "pre",
  transform: (css, id) =>
    /\/katex(?:\.min)?\.css(?:\?|$)/.test(id)
      ? { code: shorterFaces(onlyWoff2(css), fonts), map: null }
      : null,
});
