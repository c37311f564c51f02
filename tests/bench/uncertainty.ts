import chargePath from "../../src/calculators/charge-path.ts";
import coolerRating from "../../src/calculators/cooler-rating.ts";
import type { Calculator } from "../../src/calculators/engine/calculator.ts";
import { type Surroundings, startEntries } from "../../src/calculators/engine/entry.ts";
import { evaluate } from "../../src/calculators/engine/evaluate.ts";
import { propagateIn, uncertainIn } from "../../src/calculators/engine/uncertainty.ts";
import twoStageSplit from "../../src/calculators/two-stage-split.ts";
import { draw } from "../../src/widgets/uncertainty/draw-job.ts";
import { perSecond } from "./per-second.ts";
import { figure, heading } from "./report.ts";

const around: Surroundings = { system: "metric", barometer: { value: 1e5, isExample: true } };
const COUNT = 20_000;

/** Prints what all listed results take, with every number in sight uncertain by a hundredth: slopes, and draws. */
function bench(
  name: string,
  calculator: Calculator,
  choices: Readonly<Record<string, string>>,
  count = COUNT,
) {
  const start = startEntries(calculator, "metric");
  const entries = { ...start, choices: { ...start.choices, ...choices } };
  const { given } = evaluate(calculator, entries, around);
  const within: Record<string, number> = {};
  for (const [id, value] of Object.entries(
    uncertainIn(calculator, entries, { given, within: {} }, around).given,
  ))
    if (typeof value === "number") within[id] = 0.01 * Math.abs(value);
  const uncertain = uncertainIn(calculator, entries, { given, within }, around);
  const each = perSecond(() => propagateIn(calculator, uncertain));
  const before = performance.now();
  const draws = draw(calculator, { calculator: calculator.id, uncertain, seed: 1, count });
  let step = draws.next();
  while (!step.done) step = draws.next();
  const seconds = (performance.now() - before) / 1000;
  const readings = Object.keys(uncertain.readings).length;
  figure(`first order, ${name}`, 1000 / each, "ms", `all results, ${readings} readings`);
  figure(
    `draws, ${name}`,
    count / seconds,
    "per second",
    `20 000 in ${((COUNT / count) * seconds).toFixed(1)} s`,
  );
}

/** Prints how long the uncertainty of all results takes (aim: 20 000 draws of the path with two stages in 2 s). */
export function benchUncertainty(): void {
  heading("uncertainty");
  bench("charge path, one stage", chargePath, {});
  bench("charge path, two stages", chargePath, {
    stages: "two",
    cooler: "effectiveness",
    cooler_45: "effectiveness",
  });
  bench("cooler rating", coolerRating, {});
  bench("two-stage split, best", twoStageSplit, {}, 2_000);
}
