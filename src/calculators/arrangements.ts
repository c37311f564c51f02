import { arrangements } from "../../calc/exchanger/arrangements.ts";
import { compareArrangements } from "../../calc/exchanger/compare-arrangements.ts";
import { type Calculator, defineCalculator, type Outcome } from "./engine/calculator.ts";
import {
  arrangementFrom,
  arrangementInputs,
  coolerResults,
  coreInputs,
  turnable,
} from "./parts/exchanger.ts";
import { effectivenessRelations, smallerStreamRelations } from "./parts/exchanger-relations.ts";

/** A result for each, named by its id, which holds no dots. */
const resultOf = (id: string) => `P_${id}`;

const results: Readonly<Record<string, Outcome>> = {
  P: coolerResults.P,
  P_best: { label: "Counterflow, the best", symbol: "P", kind: "fraction" },
  P_swapped: {
    label: "With the hoses the other way round",
    symbol: "P",
    kind: "fraction",
    when: { core: turnable },
  },
  epsilon: coolerResults.epsilon,
  C_star: coolerResults.C_star,
  NTU_min: coolerResults.NTU_min,
  ...Object.fromEntries(
    arrangements.map(({ id, name }) => [
      resultOf(id),
      { label: name, symbol: "P", kind: "fraction", inPicture: true },
    ]),
  ),
};

export default defineCalculator({
  id: "arrangements",
  title: "All arrangements",
  group: "Cooling",
  asks: "How much does the arrangement matter, at one size and one ratio of the streams?",
  inputs: {
    ...coreInputs,
    ...arrangementInputs,
  },
  results,
  relations: [...effectivenessRelations, ...smallerStreamRelations],
  model: (given, trace) => {
    const { all, ...found } = compareArrangements(
      { ...given, arrangement: arrangementFrom(given) } as unknown as Parameters<
        typeof compareArrangements
      >[0],
      trace,
    );
    return {
      ...found,
      ...Object.fromEntries(Object.entries(all).map(([id, P]) => [resultOf(id), P])),
    } as unknown as ReturnType<Calculator["model"]>;
  },
  pictures: [
    {
      draw: "ranking",
      rows: arrangements.map(({ id, name }) => ({ label: name, y: resultOf(id), arrangement: id })),
      chosen: arrangementFrom,
      title: "Effectiveness on the air of every arrangement, the best first.",
    },
  ],
});
