import type { Layout } from "../../calc/exchanger/layout.ts";
import { layouts } from "../../calc/exchanger/layouts.ts";

/** How the streams lie in the arrangement with this id. */
export function layoutOf(id: string): Layout {
  if (!Object.hasOwn(layouts, id)) throw new Error(`There is no arrangement “${id}” to draw.`);
  return layouts[id as keyof typeof layouts];
}
