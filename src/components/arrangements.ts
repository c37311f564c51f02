import type { Arrangement } from "../../calc/exchanger/arrangement.ts";
import { arrangements } from "../../calc/exchanger/arrangements.ts";
import type { Layout } from "../../calc/exchanger/layout.ts";

/** Arrangements of one family, as tables and lists show them together. */
export interface Family {
  readonly title: string;
  /** The sentences with which every member's own text begins. */
  readonly says: string;
  readonly members: readonly Arrangement[];
}

function familyOf(layout: Layout): string {
  switch (layout.kind) {
    case "along":
      return "One direction";
    case "across":
      if (layout.passes === 1) return "Cross-flow, one pass";
      return `Cross-flow, two passes and more${layout.order === "parallel" ? ", the hoses swapped" : ""}`;
    case "side by side":
      return "Cross-flow, two passes and more";
    case "shell":
      return "Tubes in shells";
  }
}

function commonOpening(texts: readonly string[]): string {
  const [first = [], ...others] = texts.map((text) => text.split(/(?<=\.) /));
  const parting = first.findIndex((sentence, i) => others.some((other) => other[i] !== sentence));
  return first.slice(0, parting < 0 ? first.length : parting).join(" ");
}

/** Every arrangement by family, in the order of the list. */
export const families: readonly Family[] = [
  ...Map.groupBy(arrangements, ({ layout }) => familyOf(layout)),
].map(([title, members]) => ({ title, says: commonOpening(members.map(({ says }) => says)), members }));

/** The same, one after the other. */
export const arrangementsInOrder: readonly Arrangement[] = families.flatMap(({ members }) => members);

/** Words by which people look for an arrangement and which its own name may lack. */
export function otherWordsFor(layout: Layout): readonly string[] {
  switch (layout.kind) {
    case "along":
      return layout.water === "against"
        ? ["counter-current", "countercurrent", "contraflow", "opposed flow"]
        : ["co-current", "cocurrent", "concurrent flow", "same direction"];
    case "across":
      return [
        "cross-flow",
        "crossflow",
        ...passes(layout.passes),
        ...(layout.passes > 1 ? orders[layout.order] : []),
      ];
    case "side by side":
      return ["cross-flow", "crossflow", "split face", ...passes(layout.passes)];
    case "shell":
      return ["shell and tube", `${layout.shells}-${layout.tubePasses}`, "tube bundle"];
  }
}

const orders = {
  counter: ["counter-cross-flow", "counter-crossflow", "overall counterflow"],
  parallel: ["parallel-cross-flow", "parallel-crossflow", "overall parallel flow"],
} as const;

const counted = ["", "single", "two", "three", "four", "five"] as const;
const passes = (count: number): readonly string[] => [
  `${counted[count] ?? count} pass`,
  `${count}-pass`,
  ...(count === 2 ? ["double pass"] : []),
];
