import { fileURLToPath } from "node:url";
import type { Plugin } from "vite";

const fonts = fileURLToPath(new URL("../fonts", import.meta.url));
const olderFormats = /,\s*url\([^)]*\.(?:woff|ttf)\)\s*format\("(?:woff|truetype)"\)/g;

/** KaTeX's style sheet with its fonts as WOFF2 only. */
export const onlyWoff2 = (css: string): string => css.replace(olderFormats, "");

const carried = /url\(fonts\/KaTeX_(?:Main-Regular|Math-Italic|Size[1-4]-Regular)\./;

/** The sheet without the faces of letters that no formula here may use; `renderTex` refuses them. */
export const onlyCarried = (css: string): string =>
  css.replace(/@font-face\s*\{[^}]*\}\s*/g, (face) => (carried.test(face) ? face : ""));

const shorter = /url\(fonts\/(KaTeX_(?:Main-Regular|Math-Italic)\.woff2)\)/g;

/** The two faces that every page needs, from the shorter files that src/fonts/subset.mjs made of them. */
export const shorterFaces = (css: string, folder: string): string =>
  css.replace(shorter, (_, file: string) => `url(${folder}/${file})`);

/**
 * Takes the shorter faces, and keeps out of the site the two older copies of each KaTeX font and the faces of letters
 * that are not used. The style sheet has to be imported by a script or an
 * Astro component: an `@import` inside CSS does not pass through here.
 */
export const katexFonts = (): Plugin => ({
  name: "katex-fonts",
  enforce: "pre",
  transform: (css, id) =>
    /\/katex(?:\.min)?\.css(?:\?|$)/.test(id)
      ? { code: shorterFaces(onlyCarried(onlyWoff2(css)), fonts), map: null }
      : null,
});
