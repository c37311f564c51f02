import { DomainError } from "../quantity/domain-error.ts";
import type { Relation } from "../relation/relation.ts";
import type { Arrangement } from "./arrangement.ts";
import { counterCross2 } from "./effectiveness/counter-cross-2.ts";
import { counterCross2Crossover } from "./effectiveness/counter-cross-2-crossover.ts";
import { counterCross2Remixed } from "./effectiveness/counter-cross-2-remixed.ts";
import { counterCross2Rows } from "./effectiveness/counter-cross-2-rows.ts";
import { counterCross2RowsIdentical } from "./effectiveness/counter-cross-2-rows-identical.ts";
import { counterCross2RowsInverted } from "./effectiveness/counter-cross-2-rows-inverted.ts";
import { counterCross3 } from "./effectiveness/counter-cross-3.ts";
import { counterCross4 } from "./effectiveness/counter-cross-4.ts";
import { counterCross5 } from "./effectiveness/counter-cross-5.ts";
import { counterflow } from "./effectiveness/counterflow.ts";
import { crossAirMixed } from "./effectiveness/cross-air-mixed.ts";
import { crossFourRows } from "./effectiveness/cross-four-rows.ts";
import { crossMixed } from "./effectiveness/cross-mixed.ts";
import { crossOneRow } from "./effectiveness/cross-one-row.ts";
import { crossThreeRows } from "./effectiveness/cross-three-rows.ts";
import { crossTwoRows } from "./effectiveness/cross-two-rows.ts";
import { crossUnmixed } from "./effectiveness/cross-unmixed.ts";
import { faceSplit } from "./effectiveness/face-split.ts";
import { faceSplitRows } from "./effectiveness/face-split-rows.ts";
import { parallelCross2 } from "./effectiveness/parallel-cross-2.ts";
import { parallelCross2Crossover } from "./effectiveness/parallel-cross-2-crossover.ts";
import { parallelCross2Remixed } from "./effectiveness/parallel-cross-2-remixed.ts";
import { parallelCross2Rows } from "./effectiveness/parallel-cross-2-rows.ts";
import { parallelCross2RowsIdentical } from "./effectiveness/parallel-cross-2-rows-identical.ts";
import { parallelCross2RowsInverted } from "./effectiveness/parallel-cross-2-rows-inverted.ts";
import { parallelCross3 } from "./effectiveness/parallel-cross-3.ts";
import { parallelCross4 } from "./effectiveness/parallel-cross-4.ts";
import { parallelCross5 } from "./effectiveness/parallel-cross-5.ts";
import { parallelFlow } from "./effectiveness/parallel-flow.ts";
import { shell12 } from "./effectiveness/shell-1-2.ts";
import { shell14 } from "./effectiveness/shell-1-4.ts";
import { shell24 } from "./effectiveness/shell-2-4.ts";
import { shell36 } from "./effectiveness/shell-3-6.ts";
import { layouts } from "./layouts.ts";

type Id = keyof typeof layouts;

const arrangement = (
  id: Id,
  name: string,
  says: string,
  effectiveness: Relation<"NTU" | "R">,
  more: { readonly peaks?: true; readonly swapped?: Id } = {},
): Arrangement => ({ id, name, says, layout: layouts[id], effectiveness, peaks: false, ...more });

/** Swapped with this one, and worse past its peak. */
const wrongWay = (swapped: Id) => ({ peaks: true, swapped }) as const;

const wrongWayRound =
  "The hoses the wrong way round: the warmed water meets the air that has been cooled already.";
const turnsWorse = `${wrongWayRound} Past a certain size more area makes it worse.`;
const stands = `${wrongWayRound} Past a certain size more area gains next to nothing.`;

/**
 * Every arrangement once, in the order in which lists show them: the streams along each other, one pass across, several
 * passes across with the water against the air, the same with the hoses swapped, the face shared, and shells.
 */
export const arrangements: readonly Arrangement[] = [
  arrangement(
    "counterflow",
    "Counterflow",
    "Air and water run against each other all the way. Nothing of the same size does better; it is what many passes come near to.",
    counterflow,
    { swapped: "parallel-flow" },
  ),
  arrangement(
    "parallel-flow",
    "Parallel flow",
    "Air and water run the same way side by side, and their temperatures approach each other: however large the cooler is, the air leaves no colder than the water.",
    parallelFlow,
    { swapped: "counterflow" },
  ),

  arrangement(
    "cross-unmixed",
    "Cross-flow, single pass, both streams unmixed",
    "The water crosses the air once, in many channels one behind the other, and the fins keep the air in strips: the usual core with its headers at opposite ends.",
    crossUnmixed,
  ),
  arrangement(
    "cross-one-row",
    "Cross-flow, single pass, one tube row",
    "One row of tubes, or of flat channels as deep as the core: the water is mixed across the depth, the air is not.",
    crossOneRow,
  ),
  arrangement(
    "cross-two-rows",
    "Cross-flow, single pass, two tube rows",
    "Two rows one behind the other, fed side by side from one header.",
    crossTwoRows,
  ),
  arrangement(
    "cross-three-rows",
    "Cross-flow, single pass, three tube rows",
    "Three rows one behind the other, fed side by side from one header.",
    crossThreeRows,
  ),
  arrangement(
    "cross-four-rows",
    "Cross-flow, single pass, four tube rows",
    "Four rows one behind the other, fed side by side from one header: nearly what many rows do.",
    crossFourRows,
  ),
  arrangement(
    "cross-air-mixed",
    "Cross-flow, single pass, air mixed, water unmixed",
    "The water crosses once in many channels, and the air is stirred across its way throughout, as between bare tubes in a free space.",
    crossAirMixed,
  ),
  arrangement(
    "cross-mixed",
    "Cross-flow, single pass, both streams mixed",
    "The water crosses once, and each stream is stirred across its way throughout. Past a certain size more area makes it worse.",
    crossMixed,
    { peaks: true },
  ),

  arrangement(
    "counter-cross-2",
    "Counter-cross-flow, two passes, one channel each",
    "The water enters the half that the air meets last, turns in the return header and comes back through the half that the air meets first. One row, or flat channels as deep as a pass; the fins run through both.",
    counterCross2,
    { swapped: "parallel-cross-2" },
  ),
  arrangement(
    "counter-cross-2-crossover",
    "Counter-cross-flow, two passes, one channel each, led across",
    "As with a return header, but a pipe leads the water back to the side where it came in, so that it runs the same way in both passes.",
    counterCross2Crossover,
    { swapped: "parallel-cross-2-crossover" },
  ),
  arrangement(
    "counter-cross-3",
    "Counter-cross-flow, three passes, one channel each",
    "A serpentine of three: the water enters the one that the air meets last and works its way forward, turning at each end.",
    counterCross3,
    { swapped: "parallel-cross-3" },
  ),
  arrangement(
    "counter-cross-4",
    "Counter-cross-flow, four passes, one channel each",
    "A serpentine of four: the water enters the quarter that the air meets last and works its way forward, turning at each end.",
    counterCross4,
    { swapped: "parallel-cross-4" },
  ),
  arrangement(
    "counter-cross-5",
    "Counter-cross-flow, five passes, one channel each",
    "A serpentine of five: the water enters the fifth that the air meets last and works its way forward, turning at each end.",
    counterCross5,
    { swapped: "parallel-cross-5" },
  ),
  arrangement(
    "counter-cross-2-rows",
    "Counter-cross-flow, two passes, many channels each, water mixed in the return header",
    "Many rows in each pass, and an open return header that mixes their water before the second pass. The fins run through both.",
    counterCross2Rows,
    { swapped: "parallel-cross-2-rows" },
  ),
  arrangement(
    "counter-cross-2-rows-identical",
    "Counter-cross-flow, two passes, many channels each, identical order",
    "Many rows in each pass. Each goes on as its own channel, and the first that the air meets in one pass is the first that it meets in the other.",
    counterCross2RowsIdentical,
    { swapped: "parallel-cross-2-rows-identical" },
  ),
  arrangement(
    "counter-cross-2-rows-inverted",
    "Counter-cross-flow, two passes, many channels each, inverted order",
    "Many rows in each pass, joined by U-bends one inside the other: the first that the air meets in one pass is the last that it meets in the other.",
    counterCross2RowsInverted,
    { swapped: "parallel-cross-2-rows-inverted" },
  ),
  arrangement(
    "counter-cross-2-remixed",
    "Counter-cross-flow, two passes, many channels each, both streams mixed between",
    "Two separate cores one behind the other, with room between them in which the air mixes, and an open return header.",
    counterCross2Remixed,
    { swapped: "parallel-cross-2-remixed" },
  ),

  arrangement(
    "parallel-cross-2",
    "Parallel-cross-flow, two passes, one channel each",
    turnsWorse,
    parallelCross2,
    wrongWay("counter-cross-2"),
  ),
  arrangement(
    "parallel-cross-2-crossover",
    "Parallel-cross-flow, two passes, one channel each, led across",
    `${wrongWayRound} Unless the water is short, past a certain size more area makes it worse.`,
    parallelCross2Crossover,
    wrongWay("counter-cross-2-crossover"),
  ),
  arrangement(
    "parallel-cross-3",
    "Parallel-cross-flow, three passes, one channel each",
    stands,
    parallelCross3,
    { swapped: "counter-cross-3" },
  ),
  arrangement(
    "parallel-cross-4",
    "Parallel-cross-flow, four passes, one channel each",
    turnsWorse,
    parallelCross4,
    wrongWay("counter-cross-4"),
  ),
  arrangement(
    "parallel-cross-5",
    "Parallel-cross-flow, five passes, one channel each",
    stands,
    parallelCross5,
    { swapped: "counter-cross-5" },
  ),
  arrangement(
    "parallel-cross-2-rows",
    "Parallel-cross-flow, two passes, many channels each, water mixed in the return header",
    turnsWorse,
    parallelCross2Rows,
    wrongWay("counter-cross-2-rows"),
  ),
  arrangement(
    "parallel-cross-2-rows-identical",
    "Parallel-cross-flow, two passes, many channels each, identical order",
    `${wrongWayRound} Unless water is plentiful, past a certain size more area makes it worse.`,
    parallelCross2RowsIdentical,
    wrongWay("counter-cross-2-rows-identical"),
  ),
  arrangement(
    "parallel-cross-2-rows-inverted",
    "Parallel-cross-flow, two passes, many channels each, inverted order",
    turnsWorse,
    parallelCross2RowsInverted,
    wrongWay("counter-cross-2-rows-inverted"),
  ),
  arrangement(
    "parallel-cross-2-remixed",
    "Parallel-cross-flow, two passes, many channels each, both streams mixed between",
    turnsWorse,
    parallelCross2Remixed,
    wrongWay("counter-cross-2-remixed"),
  ),

  arrangement(
    "face-split",
    "Face split, two passes side by side, one channel each",
    "The two passes share the face: one half of the air meets the cold water, the other the warmed one, and it leaves in two stripes. Together it is no better than a single pass; swapped hoses only swap the stripes.",
    faceSplit,
  ),
  arrangement(
    "face-split-rows",
    "Face split, two passes side by side, many channels each",
    "The two passes share the face, with many rows in each: one half of the air meets the cold water, the other the warmed one, and it leaves in two stripes.",
    faceSplitRows,
  ),

  arrangement(
    "shell-1-2",
    "One shell, two tube passes",
    "Shell and tube with the shell's stream mixed: one tube pass runs against it and one with it.",
    shell12,
  ),
  arrangement(
    "shell-1-4",
    "One shell, four tube passes",
    "Shell and tube with the air in the shell and mixed there. A little less than with two tube passes, and past a certain size more area makes it worse.",
    shell14,
    { peaks: true },
  ),
  arrangement(
    "shell-2-4",
    "Two shells in series, four tube passes",
    "Two shells with two tube passes each, the water led from shell to shell against the air.",
    shell24,
  ),
  arrangement(
    "shell-3-6",
    "Three shells in series, six tube passes",
    "Three shells with two tube passes each, the water led from shell to shell against the air.",
    shell36,
  ),
];

const byId = new Map(arrangements.map((one) => [one.id, one]));

/**
 * The arrangement with this id. Throws a DomainError naming the field `arrangement` where there is none: ids also come from
 * links.
 *
 * @example arrangementOf("counter-cross-2").effectiveness.compute({ NTU: 2, R: 0.5 }) // 0.7523
 */
export function arrangementOf(id: string): Arrangement {
  const found = byId.get(id);
  if (!found)
    throw new DomainError("arrangement", "This arrangement is not known. Choose one from the list.");
  return found;
}
