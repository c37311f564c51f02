import { readdir, readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { AstroIntegration } from "astro";

const fromRoot = /(\s(?:href|src|action|poster|data-[\w-]+)="|"href":")(\/(?!\/)[^"]*)/g;

/** A page, or a list that pages fetch, whose addresses start at the root of the site, with `base` before those that do not have it yet. */
export const below = (base: string, html: string): string =>
  html.replace(fromRoot, (whole, attribute: string, path: string) =>
    path.startsWith(base) ? whole : attribute + base + path.slice(1),
  );

/**
 * Lets the site stand below a path. Texts and templates write addresses from the root; here all of them get the path
 * before them at once. Scripts, which have no build to mend them, use `atRoot`.
 */
export function subPath(): AstroIntegration {
  let base = "/";
  return {
    name: "sub-path",
    hooks: {
      "astro:config:done": ({ config }) => {
        base = config.base.replace(/\/?$/, "/");
      },
      "astro:build:done": async ({ dir }) => {
        if (base === "/") return;
        const root = fileURLToPath(dir);
        const files = await readdir(root, { recursive: true });
        // An address could not be told from one that has its path already.
        const [, first = ""] = base.split("/");
        if (files.includes(first))
          throw new Error(`The site cannot stand below ${base}: it has a ${first}/ itself.`);
        for (const file of files.filter((name) => /\.(?:html|json)$/.test(name))) {
          const path = join(root, file);
          await writeFile(path, below(base, await readFile(path, "utf8")));
        }
      },
    },
  };
}
