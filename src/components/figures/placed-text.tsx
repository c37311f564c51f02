import type { Box } from "../../widgets/pictures/boxes.ts";
import { r1 } from "../../widgets/pictures/numbers.ts";
import { Words } from "../../widgets/pictures/Picture.tsx";
import { textWidth } from "../../widgets/pictures/text.ts";

export type Anchor = "start" | "middle" | "end";

/** A line of text of some look, with the box that it takes and where it is anchored in that. */
export interface PlacedText<Look extends string> extends Box {
  readonly words: string;
  readonly look: Look;
  readonly anchor: Anchor;
}

/** Collects lines of text at their anchors, with the boxes that they take. Values are bold, and so wider. */
export function textWriter<Look extends string>(font: number) {
  const texts: PlacedText<Look | "value">[] = [];
  const write = (
    words: string,
    look: Look | "value",
    x: number,
    base: number,
    anchor: Anchor = "middle",
  ): void => {
    const w = textWidth(words, font, look === "value");
    const start = anchor === "middle" ? x - w / 2 : anchor === "end" ? x - w : x;
    texts.push({ words, look, anchor, x: start, y: base - font, w, h: font + 2 });
  };
  return { texts, write };
}

const classes = { start: "", middle: " middle", end: " end" } as const;

interface Props<Look extends string> {
  readonly texts: readonly PlacedText<Look>[];
  readonly font: number;
  readonly looks: Readonly<Record<Look, string>>;
}

/** Those lines, drawn. */
export const PlacedTexts = <Look extends string>({ texts, font, looks }: Props<Look>) => (
  <>
    {texts.map(({ words, look, anchor, x, y, w }) => (
      <Words
        key={`${words} ${r1(x)} ${r1(y)}`}
        look={looks[look] + classes[anchor]}
        x={anchor === "start" ? x : anchor === "end" ? x + w : x + w / 2}
        y={y + font}
      >
        {words}
      </Words>
    ))}
  </>
);
