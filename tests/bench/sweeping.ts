import coolerRating from "../../src/calculators/cooler-rating.ts";
import type { Given } from "../../src/calculators/engine/evaluate.ts";
import { sweep } from "../../src/calculators/engine/sweep.ts";
import twoStageSplit from "../../src/calculators/two-stage-split.ts";
import { perSecond } from "./per-second.ts";
import { figure, heading } from "./report.ts";

const startOf = ({ inputs }: typeof coolerRating): Given =>
  Object.fromEntries(Object.entries(inputs).map(([id, { start }]) => [id, start]));

/** Prints what a family of curves takes (aim: 50 ms for five of 200 points of the rating). */
export function benchSweeping(): void {
  heading("sweeps, with what the model says on the way");
  const rating = startOf(coolerRating);
  const family = (i: number) =>
    sweep({
      calculator: coolerRating,
      given: { ...rating, T_2: 440 + (i % 97) / 10 },
      along: "UA",
      from: 100,
      to: 1500,
      results: ["T_3"],
      family: { input: "m_w", values: [0.3, 0.5, 0.7, 0.9, 1.1] },
      count: 200,
    });
  figure("5 curves of 200 points, cooler-rating", 1e3 / perSecond(family), "ms", "aim: 50 ms");
  const split = startOf(twoStageSplit);
  const one = (i: number) =>
    sweep({
      calculator: twoStageSplit,
      given: { ...split, T_0: 290 + (i % 97) / 10 },
      along: "p_m",
      from: 3e5,
      to: 5e5,
      results: ["W_c12"],
    });
  figure("a curve of 41 points, two-stage-split", 1e3 / perSecond(one), "ms");
}
