import type { Layout } from "../../../calc/exchanger/layout.ts";
import { acrossHoses } from "./hose-across.ts";
import { alongHoses } from "./hose-along.ts";
import type { Frame, Hoses } from "./hose-parts.ts";
import { shellHoses } from "./hose-shells.ts";
import { sideBySideHoses } from "./hose-side-by-side.ts";
import { textWidth } from "./text.ts";

export const size = { width: 168, height: 112, font: 13 };

const frame: Frame = { core: { x: 46, y: 30, w: 76, h: 50 }, tank: 9, hose: 17, gap: 14, pitch: 12 };

export interface Word {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly look: "" | "end";
}

function partsOf(layout: Layout): Hoses {
  switch (layout.kind) {
    case "across":
      return acrossHoses(layout, frame);
    case "along":
      return alongHoses(layout, frame);
    case "side by side":
      return sideBySideHoses(layout, frame);
    case "shell":
      return shellHoses(layout, frame);
  }
}

/** Where the parts and words of a small drawing of hoses stand. */
export function layoutHoses(layout: Layout): Hoses & { readonly words: readonly Word[] } {
  const parts = partsOf(layout);
  const above = Math.min(...parts.air.map(([[, y]]) => y));
  const words: Word[] = parts.ends.map(({ leads, at: [x, y], side, word }) => {
    const text = leads === "in" ? "water in" : "out";
    const w = textWidth(text, size.font) + 7;
    // A word that has no room on its own side stands on the other.
    const isRight = word === "right" ? x + w <= size.width : x - w < 0;
    return {
      text,
      x: isRight ? x + 7 : x - 7,
      y: side === "bottom" ? y - 3 : y + 12,
      look: isRight ? "" : "end",
    };
  });
  return { ...parts, words: [{ text: "air", x: 4, y: above - 6, look: "" }, ...words] };
}
