import { uniformFloat64 } from "pure-rand/distribution/uniformFloat64";
import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";
import { monteCarlo } from "../../../calc/uncertainty/monte-carlo.ts";
import { propagate } from "../../../calc/uncertainty/propagate.ts";
import type { Correlation, Measurand, Reading, Spread } from "../../../calc/uncertainty/readings.ts";
import { subject } from "../subject.ts";

type X = Record<string, number>;

/** Little models of the trade, written out here so that only the uncertainty is under test. */
const models: Record<string, (x: X) => number> = {
  sum4: ({ x1 = 0, x2 = 0, x3 = 0, x4 = 0 }) => x1 + x2 + x3 + x4,
  effectiveness: ({ T1 = 0, T2 = 0, Tw = 0 }) => (T1 - T2) / (T1 - Tw),
  heat: ({ m = 0, cp = 0, T1 = 0, T2 = 0 }) => m * cp * (T1 - T2),
  density: ({ p = 0, T = 0 }) => p / (287.05 * T),
  density_ratio: ({ p2 = 0, T2 = 0, p3 = 0, T3 = 0 }) => (p3 / p2) * (T2 / T3),
  ua_lmtd: ({ m = 0, cp = 0, T1 = 0, T2 = 0, Tw1 = 0, Tw2 = 0 }) => {
    const [a, b] = [T1 - Tw2, T2 - Tw1];
    return (m * cp * (T1 - T2) * Math.log(a / b)) / (a - b);
  },
  orifice_flow: ({ C = 0, d = 0, rho = 0, dp = 0 }) => C * (Math.PI / 4) * d ** 2 * Math.sqrt(2 * rho * dp),
  compressor_efficiency: ({ p1 = 0, p2 = 0, T1 = 0, T2 = 0 }) =>
    (T1 * ((p2 / p1) ** (0.4 / 1.4) - 1)) / (T2 - T1),
  heat_balance: ({ ma = 0, cpa = 0, T1 = 0, T2 = 0, mw = 0, cpw = 0, Tw1 = 0, Tw2 = 0 }) =>
    ma * cpa * (T1 - T2) - mw * cpw * (Tw2 - Tw1),
};

/** Half-widths in standard deviations. */
const width: Record<Spread, number> = { normal: 1, rectangular: Math.sqrt(3), triangular: Math.sqrt(6) };

/** What a case gives: a model, readings with their spreads, and a correlation. */
export function uncertaintyCase(given: Readonly<Record<string, number | string>>): {
  readonly f: Measurand;
  readonly readings: Readonly<Record<string, Reading>>;
  readonly correlations: readonly Correlation[];
} {
  const f = models[String(given["model"])];
  if (!f) throw new Error(`no model ${given["model"]}`);
  const readings: Record<string, Reading> = {};
  for (const [id, value] of Object.entries(given)) {
    const spread = given[`${id}_spread`] as Spread | undefined;
    if (typeof value === "number" && spread !== undefined)
      readings[id] = { value, u: Number(given[`${id}_width`]) / width[spread], spread };
  }
  const [a = "", b = ""] = String(given["r_between"] ?? "").split(" ");
  return { f, readings, correlations: a ? [{ a, b, r: Number(given["r"]) }] : [] };
}

/* First order, and draws: the middle of the draws and their ends are given in u from y. */
export default subject<Record<string, number | string>>((given) => {
  const { f, readings, correlations } = uncertaintyCase(given);
  const { y, u, sensitivity, share } = propagate(f, readings, correlations);
  const generator = xoroshiro128plus(7);
  const uniform = () => uniformFloat64(generator);
  const draws = monteCarlo(f, readings, correlations, { count: 20_000, uniform });
  let step = draws.next();
  while (!step.done) step = draws.next();
  const { mean, u: u_drawn, low, high } = step.value;
  return {
    y,
    u,
    u_drawn,
    mean_off: (mean - y) / u,
    low_off: (low - y) / u,
    high_off: (high - y) / u,
    ...Object.fromEntries(Object.entries(sensitivity).map(([id, c]) => [`c_${id}`, c])),
    ...Object.fromEntries(Object.entries(share).map(([id, part]) => [`share_${id}`, part])),
  };
});
