import { orificePlate } from "../../calc/circuit/orifice/orifice-plate.ts";
import { twoCoolers } from "../../calc/circuit/two-coolers.ts";
import { controlValve } from "../../calc/circuit/valve/control-valve.ts";
import { waterCircuit } from "../../calc/circuit/water-circuit.ts";
import { perSecond } from "./per-second.ts";
import { figure, heading } from "./report.ts";

/** Another value each time, so that nothing can be kept from one run to the next. */
const step = (i: number) => (i % 9973) / 9973;

const branch = {
  source: "pump",
  points: [
    [0, 30],
    [10 / 3600, 29],
    [20 / 3600, 26],
  ],
  h_z: 2,
  liquid: "water",
  T_w: 298.15,
} as const;
const pipe = { L: 25, d: 0.0525, k_s: 45e-6, K: 9 };
const core = { Delta_p_ref: 18e3, V_ref: 12 / 3600, n_p: 1.9 };

const circuit = (i: number) =>
  waterCircuit({
    ...branch,
    pipe,
    core,
    characteristic: "equal-percentage",
    R_0: 50,
    K_vs: 25 / 3600,
    F_L: 0.9,
    wanted: "flow",
    x_v: step(i),
  });

const coolers = (layout: "parallel" | "series") => (i: number) =>
  twoCoolers({
    ...branch,
    layout,
    wanted: "flows",
    shared: pipe,
    one: { core, K_v: (2 + 20 * step(i)) / 3600 },
    two: { core, pipe, K_v: 5 / 3600 },
  });

const valve = (i: number) =>
  controlValve({
    wanted: "coefficient",
    liquid: "water",
    T_w: 298.15,
    fittings: "reducers",
    d_v: 0.04,
    d_in: 0.0525,
    d_out: 0.0525,
    V_w: (5 + 5 * step(i)) / 3600,
    p_in: 350e3,
    p_out: 200e3,
    F_L: 0.9,
  });

const plate = (i: number) =>
  orificePlate({
    wanted: "bore",
    fluid: "gas",
    taps: "flange",
    d_l: 0.1,
    p_in: 250e3,
    rho: 2.6,
    mu: 2e-5,
    kappa: 1.4,
    m: 0.2 + 0.2 * step(i),
    Delta_p: 8e3,
  });

/** Prints how fast the water circuit is solved (aim: two coolers, with how one moves the other, in 5 ms). */
export function benchCircuit(): void {
  heading("water circuit");
  figure("water circuit, flow at a position", 1e6 / perSecond(circuit), "µs");
  figure("two coolers side by side", 1e3 / perSecond(coolers("parallel")), "ms");
  figure("two coolers in one line", 1e3 / perSecond(coolers("series")), "ms");
  figure("control valve, coefficient with reducers", 1e6 / perSecond(valve), "µs");
  figure("orifice plate, bore", 1e6 / perSecond(plate), "µs");
}
