import { uniformFloat64 } from "pure-rand/distribution/uniformFloat64";
import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";
import { describe, expect, test } from "vitest";
import type { SI } from "../../calc/quantity/domain-error.ts";
import { monteCarloOfAll, type Simulated } from "../../calc/uncertainty/monte-carlo.ts";
import type { Propagated } from "../../calc/uncertainty/propagate.ts";
import type { Calculator } from "../../src/calculators/engine/calculator.ts";
import type { Entries } from "../../src/calculators/engine/entry.ts";
import { evaluate, type Given, tryModel } from "../../src/calculators/engine/evaluate.ts";
import { isShown, listedResults } from "../../src/calculators/engine/shown.ts";
import { measurandsOf, propagateIn, uncertainIn } from "../../src/calculators/engine/uncertainty.ts";
import { calculators, fieldsOf, metric, numRuns, startWith, waysOf } from "./every-calculator.ts";

/** Draws a state: enough for a standard deviation to one or two parts in a hundred. */
const COUNT = numRuns > 100 ? 20_000 : 4_000;

/** The relative standard deviation of a standard deviation of so many normal draws is 1/√(2(n − 1)): from memory. */
const samplingError = 1 / Math.sqrt(2 * (COUNT - 1));

/** With some two thousand comparisons 4.5 standard deviations are passed by chance once in a hundred runs of all. */
const SIGMAS = 4.5;

/** Milliseconds for one calculator on a busy machine. */
const patience = 300_000;

/** The example with its own choices, and with others that are far from them. */
function statesOf(calculator: Calculator): readonly { readonly entries: Entries; readonly given: Given }[] {
  const ways = waysOf(calculator);
  const other = ways[Math.floor(ways.length / 2)];
  return [{}, ...(ways.length > 1 && other ? [other] : [])].flatMap((choices) => {
    const entries = startWith(calculator, choices);
    const { given, outcome } = evaluate(calculator, entries, metric);
    return outcome ? [{ entries, given }] : [];
  });
}

/** A thousandth of each number in sight, or of the span of what is usual where it is zero; counted ones are exact. */
function spreadOf(calculator: Calculator, given: Given, choices: Entries["choices"]): Record<string, SI> {
  return Object.fromEntries(
    fieldsOf(calculator)
      .filter(([, field]) => !field.whole && isShown(calculator, field.when, choices))
      .map(([id, { limits, typical = limits }]) => [
        id,
        1e-3 * (Math.abs(given[id] as SI) || typical[1] - typical[0]),
      ]),
  );
}

/** The state moved inwards where a number stands on a limit of its field: past it nothing is drawn. */
function movedInwards(calculator: Calculator, given: Given, u: Readonly<Record<string, SI>>): Given {
  const moved = { ...given };
  for (const [id, { limits }] of fieldsOf(calculator)) {
    const room = 6 * (u[id] ?? 0);
    if (u[id] === undefined) continue;
    moved[id] = Math.min(Math.max(given[id] as SI, limits[0] + room), limits[1] - room);
  }
  return moved;
}

function drawn(calculator: Calculator, uncertain: Parameters<typeof measurandsOf>[1]) {
  const generator = xoroshiro128plus(20);
  const uniform = () => uniformFloat64(generator);
  const draws = monteCarloOfAll(
    measurandsOf(calculator, uncertain),
    uncertain.readings,
    uncertain.correlations,
    { count: COUNT, uniform },
  );
  let step = draws.next();
  while (!step.done) step = draws.next();
  return step.value;
}

/**
 * What the second order may add to a standard deviation, as a part of it, from second differences over one u along each
 * reading; twice as much for what readings do together (JCGM 100:2008, note to 5.1.2, from memory).
 */
function secondOrder(
  values: (id: string, by: number) => SI | undefined,
  here: SI,
  ids: readonly string[],
  u: SI,
) {
  const squares = ids.map((id) => {
    const [up, down] = [values(id, 1), values(id, -1)];
    return up === undefined || down === undefined ? Number.NaN : (up + down - 2 * here) ** 2 / 2;
  });
  return Math.sqrt(1 + (2 * squares.reduce((sum, x) => sum + x, 0)) / u ** 2) - 1;
}

/**
 * Results that are bent sharply within three standard uncertainties of a state, so that no slope tells their spread: there the
 * draws have to be narrower, since what is cut off is no longer spread.
 */
const cut: Readonly<Record<string, string>> = {
  "condensation.m_c_wall": "Walls above the dew point take out nothing: the water cannot be less than none.",
};

/** A slope may be off by so much of the uncertainty of its result: a flat optimum is found to half of all digits only. */
const OFF = 2e-3;
/** What is left of a result that does not move, by the last bits of its digits. */
const STILL = 1e-12;

/** What is wrong with what is told of one result. */
function wrongOf(
  { u, sensitivity }: Propagated,
  draws: Simulated,
  value: SI,
  spread: Readonly<Record<string, SI>>,
  at: (id: string, by: number) => SI | undefined,
  isCut: boolean,
): readonly string[] {
  const ids = Object.keys(spread);
  const still = STILL * Math.abs(value);
  const slopes = ids.flatMap((id) => {
    const step = 0.07;
    const [up, down] = [at(id, step), at(id, -step)];
    if (up === undefined || down === undefined) return [`no difference by ${id}`];
    const [part, other] = [(sensitivity[id] as number) * (spread[id] as SI), (up - down) / (2 * step)];
    return Math.abs(part - other) <= OFF * u + 1e3 * still
      ? []
      : [`by ${id} ${part}, by a difference ${other}`];
  });
  if (isCut) return draws.u < u ? slopes : [...slopes, `u ${u}, drawn ${draws.u}, and it is cut off`];
  if (u <= still) return draws.u <= 1e3 * still ? slopes : [...slopes, `constant, drawn ${draws.u}`];
  const allowed = SIGMAS * samplingError + secondOrder(at, value, ids, u);
  const off = draws.u / u - 1;
  return Math.abs(off) <= allowed
    ? slopes
    : [...slopes, `u ${u}, drawn ${draws.u}, off ${off} of ${allowed}`];
}

describe.each(calculators)("$file", ({ calculator }) => {
  test(
    "to first order the uncertainty of every listed result is that of the draws, and its slopes are central differences",
    () => {
      let compared = 0;
      const wrong: string[] = [];
      for (const { entries, given: start } of statesOf(calculator)) {
        const u = spreadOf(calculator, start, entries.choices);
        const given = movedInwards(calculator, start, u);
        const within = Object.fromEntries(Object.entries(u).map(([id, x]) => [id, 2 * x]));
        const uncertain = uncertainIn(calculator, entries, { given, within }, metric);
        expect(Object.keys(uncertain.readings).sort()).toEqual(Object.keys(u).sort());
        const { results } = propagateIn(calculator, uncertain);
        const simulated = drawn(calculator, uncertain);
        const here = tryModel(calculator, given, {}) ?? {};
        for (const [y] of listedResults(calculator, entries.choices)) {
          const [value, found, draws] = [here[y], results[y], simulated[y]];
          if (value === undefined) continue;
          const at = (id: string, by: number) =>
            tryModel(calculator, given, { [id]: (given[id] as SI) + by * (u[id] as SI) })?.[y];
          const says =
            found && draws
              ? wrongOf(found, draws, value, u, at, `${calculator.id}.${y}` in cut)
              : ["no slopes or no draws"];
          wrong.push(...says.map((one) => `${y} = ${value}: ${one}`));
          compared += 1;
        }
      }
      expect(wrong).toEqual([]);
      expect(compared).toBeGreaterThan(0);
    },
    patience,
  );
});
