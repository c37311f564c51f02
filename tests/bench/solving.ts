import chargePath from "../../src/calculators/charge-path.ts";
import coolerRating from "../../src/calculators/cooler-rating.ts";
import type { Calculator } from "../../src/calculators/engine/calculator.ts";
import { type Given, tryModel } from "../../src/calculators/engine/evaluate.ts";
import { solve } from "../../src/calculators/engine/solve.ts";
import twoStageSplit from "../../src/calculators/two-stage-split.ts";
import { figure, heading } from "./report.ts";

const startOf = ({ inputs }: Calculator): Given =>
  Object.fromEntries(Object.entries(inputs).map(([id, { start }]) => [id, start]));

const rounds = 30;

/** Prints what one question asked backwards takes, another target each time: the middle of the rounds, and the longest. */
function bench(calculator: Calculator, result: string, input: string): void {
  const given = startOf(calculator);
  const start = tryModel(calculator, given, {})?.[result] ?? Number.NaN;
  const taken: number[] = [];
  const points: number[] = [];
  for (let i = -5; i < rounds; i++) {
    const target = start * (0.97 + (0.06 * i) / rounds);
    const before = performance.now();
    const solved = solve({ calculator, given, result, input, target });
    if (i >= 0) taken.push(performance.now() - before);
    if (solved.kind !== "refused") points.push(solved.points);
  }
  taken.sort((a, b) => a - b);
  const at = (i: number) => taken[i] ?? Number.NaN;
  figure(
    `${calculator.id}, ${result} by ${input}`,
    at(rounds >> 1),
    "ms",
    `at most ${at(rounds - 1).toFixed(1)} ms; looks at ${Math.min(...points)} values or more`,
  );
}

/** Prints how long it takes to find an input for a wanted result (aim: 50 ms). */
export function benchSolving(): void {
  heading("solving backwards");
  bench(chargePath, "rho_m", "r");
  bench(coolerRating, "T_3", "UA");
  bench(twoStageSplit, "W_c12", "p_m");
  bench(twoStageSplit, "W_c12", "T_w_in");
}
