import { describe, expect, test } from "vitest";
import { drainTime } from "../../../calc/circuit/drain-time.ts";
import { lockedIn } from "../../../calc/circuit/locked-in/locked-in-pressure.ts";
import { lockedInWater } from "../../../calc/circuit/locked-in/locked-in-water.ts";
import { orificePlate } from "../../../calc/circuit/orifice/orifice-plate.ts";
import { restriction } from "../../../calc/circuit/orifice/restriction.ts";
import { pumpSuction } from "../../../calc/circuit/pump/pump-suction.ts";
import { suction } from "../../../calc/circuit/pump/suction.ts";
import { pumpAndValve } from "../../../calc/circuit/pump-and-valve.ts";
import { twoCoolers } from "../../../calc/circuit/two-coolers.ts";
import { controlValve } from "../../../calc/circuit/valve/control-valve.ts";
import { installed } from "../../../calc/circuit/valve/installed.ts";
import { waterCircuit } from "../../../calc/circuit/water-circuit.ts";
import { DomainError } from "../../../calc/quantity/domain-error.ts";

// biome-ignore lint/suspicious/noExplicitAny: rubbish fits no type
type Loose = any;

const points = [
  [0, 30],
  [0.003, 29],
  [0.006, 25],
];
const water = { liquid: "water", T_w: 298.15 };
const pipe = { L: 25, d: 0.0525, k_s: 45e-6, K: 9 };
const core = { Delta_p_ref: 18e3, V_ref: 12 / 3600, n_p: 1.8 };
const valve = { characteristic: "equal-percentage", R_0: 50, K_vs: 25 / 3600, F_L: 0.9, x_v: 0.5 };
const circuit = { ...water, source: "pump", points, h_z: 2, pipe, core, ...valve, n: 40, n_ref: 48 };
const flat = { ...water, ...pipe, ...core, K_vs: 25 / 3600, F_L: 0.9, p_out: 1.1e5 };
const table = [
  [1, 0.5],
  [2, 4],
  [5, 11],
];
const plate = { d_l: 0.1, d: 0.06, rho: 2.6, mu: 2e-5, p_in: 2.5e5, kappa: 1.4, m: 0.3, Delta_p: 8e3 };
const branches = { one: { core, K_v: 1e-3 }, two: { core, pipe, K_v: 2e-3 }, shared: pipe };
const throughValve = {
  ...water,
  d_v: 0.04,
  d_in: 0.05,
  d_out: 0.06,
  p_in: 4e5,
  p_out: 2e5,
  F_L: 0.9,
  F_d: 1,
};
const stated = { liquid: "stated", rho_w: 1050, mu_w: 2e-3, p_v: 2e3, p_crit: 2e7 };
const flows = { one: { core, V_w: 1e-3 }, two: { core, V_w: 1e-3 } };

const models: Readonly<Record<string, readonly [(given: Loose) => object, object]>> = {
  "control valve, flow": [controlValve, { ...throughValve, wanted: "flow", fittings: "reducers", K_v: 4e-3 }],
  "control valve, coefficient": [
    controlValve,
    { ...throughValve, ...stated, wanted: "coefficient", fittings: "none", V_w: 2e-3 },
  ],
  installed: [installed, { ...valve, N_v: 0.3 }],
  "installed, position": [installed, { ...valve, N_v: 0.3, wanted: "position", q_v: 0.4 }],
  "installed, table": [installed, { characteristic: "table", table, N_v: 0.3, y_v: 2.5 }],
  "by flat fields": [
    pumpAndValve,
    { ...flat, ...valve, source: "tank", wanted: "flow", A: 1, h_w: 9, h_to: 5, T_w_out: 310 },
  ],
  "by flat fields, with a table": [
    pumpAndValve,
    {
      ...flat,
      source: "pump",
      points,
      h_z: 2,
      characteristic: "table",
      table,
      wanted: "position",
      V_w: 1e-3,
    },
  ],
  "orifice, flow": [orificePlate, { ...plate, wanted: "flow", fluid: "gas", taps: "flange" }],
  "orifice, difference": [orificePlate, { ...plate, wanted: "difference", fluid: "gas", taps: "corner" }],
  "orifice, bore": [orificePlate, { ...plate, wanted: "bore", fluid: "liquid", taps: "radius", rho: 997 }],
  restriction: [restriction, { m: 0.3, rho: 2.2, d_l: 0.07, Delta_p: 12e3, C_D: 0.6, p_in: 2.5e5 }],
  suction: [suction, { ...water, p_surf: 98e3, Delta_p_suc: 6e3, h_suc: 1.5, NPSH_R: 3 }],
  "locked in": [lockedIn, { T_in: 290, T_out: 300, p_in: 2e5, alpha_l: 1e-5, chi_V: 5e-11 }],
  "suction behind a pipe": [
    pumpSuction,
    {
      ...water,
      ...pipe,
      surface: "open",
      p_0: 98e3,
      loss: "pipe",
      V_w: 2e-3,
      Delta_p_str: 6e3,
      h_suc: 1.5,
      NPSH_R: 3,
    },
  ],
  "locked into a pipe": [
    lockedInWater,
    {
      T_in: 290,
      Delta_T: 10,
      p_in: 2e5,
      p_lim: 8e5,
      material: "stated",
      alpha_l: 1e-5,
      E_m: 2e11,
      nu_m: 0.3,
      vessel: "pipe",
      d: 0.05,
      t_w: 0.003,
    },
  ],
  "circuit, flow": [waterCircuit, { ...circuit, wanted: "flow", p_out: 1.1e5, p_v_hot: 5e3 }],
  "circuit, position": [waterCircuit, { ...circuit, ...stated, wanted: "position", V_w: 1e-3 }],
  "circuit below a tank": [waterCircuit, { ...circuit, source: "head", h_w: 12, wanted: "flow" }],
  "two coolers side by side": [twoCoolers, { ...circuit, ...branches, layout: "parallel", wanted: "flows" }],
  "two coolers in one line": [twoCoolers, { ...circuit, ...branches, layout: "series", wanted: "flows" }],
  "two valves for two flows": [
    twoCoolers,
    { ...circuit, ...branches, ...flows, layout: "parallel", wanted: "settings" },
  ],
  tank: [drainTime, { A: 0.8, h_from: 3, h_to: 1, circuit: { ...water, pipe, core, ...valve } }],
};

const rubbish = [Number.NaN, Number.POSITIVE_INFINITY, -1, 0, 5e-324, 1e-9, 0.5, 1, 3, 1e3, 1e6, 1e9, 1e300];

/** Each number of a record, one after the other, replaced by each piece of rubbish; records inside are gone through too. */
function* spoilt(given: Loose): Generator<Loose> {
  for (const [key, value] of Object.entries<Loose>(given)) {
    if (typeof value === "number") for (const one of [...rubbish, undefined]) yield { ...given, [key]: one };
    else if (Array.isArray(value))
      for (const one of rubbish)
        for (const at of [0, 1])
          yield {
            ...given,
            [key]: value.map((row: Loose, i: number) => (i === 1 ? row.with(at, one) : row)),
          };
    else if (typeof value === "object") for (const one of spoilt(value)) yield { ...given, [key]: one };
  }
}

const numbersIn = (result: object): readonly number[] =>
  Object.values(result).flatMap((value: unknown) =>
    typeof value === "number" ? [value] : typeof value === "object" && value ? numbersIn(value) : [],
  );

describe("rubbish in any number gives finite numbers or a sentence", () => {
  test.each(Object.entries(models))("%s", (_, [model, given]) => {
    expect(numbersIn(model(given)).every(Number.isFinite)).toBe(true);
    for (const one of spoilt(given)) {
      try {
        const bad = numbersIn(model(one)).filter((x) => !Number.isFinite(x));
        expect(bad, JSON.stringify(one)).toEqual([]);
      } catch (error) {
        if (!(error instanceof DomainError)) throw new Error(`${JSON.stringify(one)}: ${error}`);
        expect(error.message).toMatch(/\.$/);
      }
    }
  });
});
