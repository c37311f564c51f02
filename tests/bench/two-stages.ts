import { chargePath } from "../../calc/charge/charge-path.ts";
import { twoStageSplit } from "../../calc/charge/two-stage-split.ts";
import { perSecond } from "./per-second.ts";
import { figure, heading } from "./report.ts";

/** Another value each time, so that nothing can be kept from one run to the next. */
const step = (i: number) => (i % 9973) / 9973;

const air = { p_0: 99e3, T_0: 303.15, humidity: "relative", varphi_0: 0.6, Delta_p_01: 1000 } as const;

const coolers = {
  cooler: "effectiveness",
  P: 0.8,
  T_w_in: 303.15,
  Delta_p_23: 6000,
  cooler_45: "effectiveness",
  P_45: 0.85,
  T_w_in_45: 303.15,
  Delta_p_45: 7000,
} as const;

const efficiencies = { heatCapacity: "real", eta_s: 0.7, eta_s_2: 0.76 } as const;

const path = (i: number) =>
  chargePath({
    ...air,
    ...coolers,
    ...efficiencies,
    efficiency: "isentropic",
    stages: "two",
    wanted: "ratio",
    r: 1.6 + step(i),
    r_2: 2,
    V_d: 0.0124,
    n: 25,
    cycle: "four-stroke",
    eta_v: 0.9,
  });

const split = (i: number, more = {}) =>
  twoStageSplit({
    ...air,
    ...coolers,
    ...efficiencies,
    m_a: 0.62,
    p_m: 400e3 + 40e3 * step(i),
    drive: "crankshaft",
    drive_2: "exhaust",
    eta_b: 0.95,
    least: "shaft",
    split: "best",
    ...more,
  });

const limits = { T_2_most: 423.15, T_3_most: 333.15, T_4_most: 463.15, W_b_most: 60e3, r_1_most: 2.4 };

/** Prints how fast two stages are: the path, and the best split with all its comparisons (aim: a millisecond). */
export function benchTwoStages(): void {
  heading("two stages");
  figure("two-stage path, moist air", perSecond(path), "per second");
  const each = (name: string, run: (i: number) => unknown) => figure(name, 1e3 / perSecond(run), "ms");
  each("best split, dry air", (i) => split(i, { humidity: "dry" }));
  each("best split, moist air", split);
  each("best split, moist air, with limits", (i) => split(i, limits));
  each("one more split of it", (i) => split(0, { split: "given", r_1: 1.3 + step(i) }));
}
