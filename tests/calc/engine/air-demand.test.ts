import { describe, expect, it } from "vitest";
import { type AirDemandGiven, airDemand } from "../../../calc/engine/air-demand.ts";
import { fuelMolarMass } from "../../../calc/engine/fuel-molar-mass.ts";
import { type FuelKey, fuels } from "../../../calc/engine/fuels.ts";
import { oxygenDemand } from "../../../calc/engine/oxygen-demand.ts";
import { stoichiometricRatio } from "../../../calc/engine/stoichiometric-ratio.ts";
import { DomainError } from "../../../calc/quantity/domain-error.ts";
import { plain, recording } from "../../../calc/relation/trace.ts";

const ratioOf = (atoms: { n_C: number; n_H: number; n_O: number }) =>
  stoichiometricRatio.compute({ n_O2: oxygenDemand.compute(atoms), M_f: fuelMolarMass.compute(atoms) });

describe("stoichiometric air-fuel ratio", () => {
  // Computed by an independent program with the same air and atomic weights.
  it.each([
    ["CH1.85", { n_C: 1, n_H: 1.85, n_O: 0 }, 14.578],
    ["CH4", fuels.methane, 17.243],
    ["C2H5OH", fuels.ethanol, 9.007],
    ["C8H18", { n_C: 8, n_H: 18, n_O: 0 }, 15.135],
    ["C12H23", fuels.diesel, 14.67],
    ["CH3OH", fuels.methanol, 6.48],
  ])("%s", (_, atoms, expected) => {
    expect(Math.abs(ratioOf(atoms) - expected)).toBeLessThan(0.005);
  });
});

/* Hill-climb four, worked by an independent program: 2.0 l, 235 kW at 6500 rev/min, 300 g/kWh, lambda 0.85, 14.6. */
const hillClimb: AirDemandGiven = {
  from: "power",
  W_e: 235e3,
  b: 300 / 3.6e9,
  lambda: 0.85,
  AFR_st: 14.6,
  V_d: 2e-3,
  n: 6500 / 60,
  cycle: "four-stroke",
  eta_v: 0.98,
};

describe("air demand", () => {
  it("from power: fuel, air and needed density", () => {
    const demand = airDemand(hillClimb);
    expect(demand.m_f).toBeCloseTo(19.5833e-3, 7);
    expect(demand.m_a).toBeCloseTo(0.24303, 5);
    expect(demand.m_a / (demand.m_f ?? 0)).toBeCloseTo(12.41, 2);
    expect(demand.rho_m).toBeCloseTo(2.2891, 4);
  });

  it("moist air needs more of it for the same dry air", () => {
    const moist = airDemand({ ...hillClimb, w: 0.02 });
    expect(moist.m_a / airDemand(hillClimb).m_a).toBeCloseTo(1.02, 12);
    expect(moist.m_da).toBeCloseTo(airDemand(hillClimb).m_da, 15);
  });

  it("displacement and power undo each other", () => {
    const forward = airDemand({ ...hillClimb, from: "displacement", p_m: 211.44e3, T_m: 321.783, w: 0.01 });
    const back = airDemand({ ...hillClimb, W_e: forward.W_e, w: 0.01 });
    expect(back.m_a).toBeCloseTo(forward.m_a, 12);
    expect(back.rho_m).toBeCloseTo(forward.rho_m ?? 0, 12);
  });

  it("a two-stroke draws in twice as often", () => {
    const given = { ...hillClimb, from: "displacement", p_m: 150e3, T_m: 320 } as const;
    expect(airDemand({ ...given, cycle: "two-stroke" }).m_a).toBeCloseTo(2 * airDemand(given).m_a, 12);
  });

  it("takes the ratio of a fuel", () => {
    for (const fuel of Object.keys(fuels) as FuelKey[]) {
      expect(airDemand({ ...hillClimb, fuel }).AFR_st).toBe(ratioOf(fuels[fuel]));
    }
  });

  it("leaves out what is not known", () => {
    const { b, lambda, AFR_st, ...engine } = hillClimb;
    const demand = airDemand({ ...engine, from: "displacement", p_m: 100e3, T_m: 300 });
    expect([demand.W_e, demand.m_f, demand.AFR_st]).toEqual([undefined, undefined, undefined]);
    expect([b, lambda, AFR_st].every((value) => value !== undefined)).toBe(true);
    const { V_d: _, ...fuelOnly } = hillClimb;
    expect(airDemand(fuelOnly).rho_m).toBeUndefined();
  });

  it("is the same with and without trace", () => {
    const given = { ...hillClimb, fuel: "diesel" } as const;
    expect(airDemand(given, recording())).toEqual(airDemand(given, plain));
  });

  it.each([
    ["W_e", { W_e: 0 }],
    ["b", { b: -1 }],
    ["lambda", { lambda: 0 }],
    ["AFR_st", { AFR_st: 0.5 }],
    ["V_d", { V_d: 1e-300 }],
    ["n", { n: Number.POSITIVE_INFINITY }],
    ["eta_v", { eta_v: 3 }],
    ["w", { w: -0.01 }],
  ] as const)("refuses %s that cannot be", (field, change) => {
    try {
      airDemand({ ...hillClimb, ...change });
      expect.unreachable();
    } catch (error) {
      expect(error).toBeInstanceOf(DomainError);
      expect((error as DomainError).field).toBe(field);
    }
  });
});
