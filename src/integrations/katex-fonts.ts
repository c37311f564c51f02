import type { Plugin } from "vite";

const olderFormats = /,\s*url\([^)]*\.(?:woff|ttf)\)\s*format\("(?:woff|truetype)"\)/g;

/** KaTeX's style sheet with its fonts as WOFF2 only. */
export const onlyWoff2 = (css: string): string => css.replace(olderFormats, "");

/**
 * Keeps the two older copies of each KaTeX font out of the site. The style sheet has to be imported by a script or an
 * Astro component: an `@import` inside CSS does not pass through here.
 */
export const katexFonts = (): Plugin => ({
  name: "katex-fonts",
  enforce: "pre",
  transform: (css, id) =>
    /\/katex(?:\.min)?\.css(?:\?|$)/.test(id) ? { code: onlyWoff2(css), map: null } : null,
});
