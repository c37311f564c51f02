import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type TurbineBalanceGiven, turbineBalance } from "../../../calc/charge/turbine-balance.ts";
import { compressorOutlet } from "../../../calc/compression/compressor-outlet.ts";
import { constantHeatCapacity } from "../../../calc/compression/constant-heat-capacity.ts";
import { expansionRatio } from "../../../calc/compression/expansion-ratio.ts";
import { turbineIdealFall } from "../../../calc/compression/turbine-ideal-fall.ts";
import { turbineNeededTemperature } from "../../../calc/compression/turbine-needed-temperature.ts";
import { turbineOutletTemperature } from "../../../calc/compression/turbine-outlet-temperature.ts";
import { constants } from "../../../calc/constants.ts";
import { DomainError } from "../../../calc/quantity/domain-error.ts";
import { plain, recording } from "../../../calc/relation/trace.ts";

const runs = { numRuns: Number(process.env["FAST_CHECK_RUNS"] ?? 100) };

const pump = {
  m_a: 0.154,
  known: "power",
  W_c: 15_747,
  p_m: 211_800,
  eta_T: 0.7,
  eta_m: 0.97,
  T_g: 873.15,
  p_T_out: 104e3,
  kappa_g: 1.33,
  c_p_g: 1150,
  lambda: 1.6,
  AFR_st: 14.5,
  V_d: 4.4e-3,
  n: 33.25,
} as const satisfies TurbineBalanceGiven;

const byRatio = {
  known: "ratio",
  p_1: 99e3,
  T_1: 298.15,
  r: 2.2,
  Delta_p_23: 6e3,
  efficiency: "isentropic",
  eta_s: 0.74,
  heatCapacity: "real",
} as const satisfies Partial<TurbineBalanceGiven>;

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

test("an ideal turbine undoes an ideal compressor of the same gas", () => {
  fc.assert(
    fc.property(number(1.05, 8), number(250, 500), number(1.2, 1.6), (r, T_in, kappa) => {
      const up = compressorOutlet({
        p_in: 100e3,
        T_in,
        boost: "ratio",
        r,
        efficiency: "isentropic",
        eta_s: 1,
        heatCapacity: "constant",
        kappa,
      });
      const c_p_g = constantHeatCapacity.compute({ R_m: constants.R_a.value, kappa });
      const theta_T = turbineIdealFall.compute({ Delta_h_T: up.Delta_h, eta_T: 1, c_p_g, T_g: up.T_out });
      expect(expansionRatio.compute({ theta_T, kappa_g: kappa })).toBeCloseTo(r, 9);
      const T_out = turbineOutletTemperature.compute({ T_g: up.T_out, Delta_h_T: up.Delta_h, c_p_g });
      expect(T_out).toBeCloseTo(T_in, 9);
    }),
    runs,
  );
});

test("the temperature for an expansion ratio is the ratio read backwards", () => {
  fc.assert(
    fc.property(
      number(1.01, 9),
      number(1e4, 3e5),
      number(0.4, 1),
      number(1.25, 1.4),
      (r_T, Delta_h_T, eta_T, kappa_g) => {
        const T_g = turbineNeededTemperature.compute({ Delta_h_T, eta_T, c_p_g: 1150, r_T, kappa_g });
        const theta_T = turbineIdealFall.compute({ Delta_h_T, eta_T, c_p_g: 1150, T_g });
        expect(expansionRatio.compute({ theta_T, kappa_g })).toBeCloseTo(r_T, 8);
      },
    ),
    runs,
  );
});

describe("the balance", () => {
  test("the gas gives what compressor and bearings take", () => {
    const { m_g, T_g_out, W_T, W_c } = turbineBalance(pump);
    expect(m_g * 1150 * (873.15 - T_g_out)).toBeCloseTo(W_T, 6);
    expect(0.97 * W_T).toBeCloseTo(W_c, 8);
  });

  test("by ratio and by power it is one and the same", () => {
    const { W_c: _, p_m: __, ...rest } = pump;
    const found = turbineBalance({ ...rest, ...byRatio });
    const { W_c, p_m } = found;
    expect(turbineBalance({ ...pump, W_c, p_m })).toStrictEqual(found);
  });

  test("hotter gas, a better turbine or more gas has to be held back less", () => {
    const p_T = (change: Partial<TurbineBalanceGiven>) => turbineBalance({ ...pump, ...change }).p_T;
    expect(p_T({ T_g: 1000 })).toBeLessThan(p_T({}));
    expect(p_T({ eta_T: 0.75 })).toBeLessThan(p_T({}));
    expect(p_T({ lambda: 1.2 })).toBeLessThan(p_T({}));
    expect(p_T({ x_wg: 0.2 })).toBeGreaterThan(p_T({}));
  });

  test("at the exhaust temperature that it names, turbine inlet and manifold have one pressure", () => {
    const { T_g_even } = turbineBalance(pump);
    const even = turbineBalance({ ...pump, T_g: T_g_even ?? 0 });
    expect(even.p_T).toBeCloseTo(even.p_m, 6);
    expect(even.W_gx).toBeCloseTo(0, 6);
    expect(turbineBalance({ ...pump, p_m: 100e3 }).T_g_even).toBeUndefined();
  });

  test("a compressor that takes nothing leaves the gas as it is", () => {
    const idle = turbineBalance({ ...pump, W_c: 0 });
    expect([idle.r_T, idle.p_T, idle.T_g_out, idle.T_g_even]).toEqual([1, 104e3, 873.15, undefined]);
  });

  test("the vapour in the air goes through the turbine too", () => {
    const damp = turbineBalance({ ...pump, m_a: 1.02, w: 0.02, W_c: 1e5 });
    expect(damp.m_g).toBeCloseTo(1.02 + 1 / (1.6 * 14.5), 12);
  });

  test("a traced run gives the same numbers", () => {
    expect(turbineBalance(pump, recording())).toStrictEqual(turbineBalance(pump, plain));
  });
});

test("more than the gas holds is refused, with the exhaust temperature that would do", () => {
  const refusal = (change: Partial<TurbineBalanceGiven>) => {
    try {
      turbineBalance({ ...pump, ...change });
    } catch (error) {
      if (error instanceof DomainError) return error;
      throw error;
    }
    return undefined;
  };
  fc.assert(
    fc.property(number(2e4, 2e5), number(0.2, 0.8), number(0, 0.5), (W_c, eta_T, x_wg) => {
      const { field, limit } = refusal({ W_c, eta_T, x_wg, T_g: 450 }) ?? {};
      if (field === undefined) return;
      if (field === "T_g") {
        const T_g = (limit?.value ?? 0) * (1 + 1e-9);
        expect(turbineBalance({ ...pump, W_c, eta_T, x_wg, T_g }).r_T).toBeCloseTo(10, 5);
        return;
      }
      // The cause is the bypass only where closing it would do.
      expect(limit).toBeUndefined();
      expect(refusal({ W_c, eta_T, x_wg, T_g: 1600 })?.field).toBe(field);
      expect(refusal({ W_c, eta_T, T_g: 1600 })?.field).toBe(field === "x_wg" ? undefined : "W_c");
    }),
    runs,
  );
  expect(refusal({ W_c: 20e6 })?.message).toContain("No exhaust is hot enough");
  expect(refusal({ x_wg: 0.9 })?.field).toBe("x_wg");
  expect(refusal({ ...byRatio, eta_T: 0.1, eta_m: 0.1 })?.field).toBe("eta_T");
  expect(refusal({ T_g: 100 })?.field).toBe("T_g");
  expect(refusal({ x_wg: 1 })?.field).toBe("x_wg");
  expect(refusal({ m_a: 0 })?.field).toBe("m_a");
});

describe("the engine", () => {
  const engine = { ...pump, n: 2000 / 60, T_m: 323.15 } as const;
  const notes = (change: Partial<TurbineBalanceGiven>) => {
    const trace = recording();
    turbineBalance({ ...engine, ...change }, trace);
    return trace.notes.map(({ about }) => about);
  };

  test("is filled as the worked example of a pump engine says", () => {
    expect(turbineBalance({ ...engine, m_a: 0.15405 }).eta_v).toBeCloseTo(0.92, 4);
    expect(turbineBalance(pump).eta_v).toBeUndefined();
  });

  test("is remarked on where it would be filled too little or too much", () => {
    expect(notes({})).toEqual([]);
    expect(notes({ n: 20_000 / 60 })).toEqual(["eta_v"]);
    expect(notes({ n: 1000 / 60 })).toEqual(["eta_v"]);
  });

  test("is remarked on where its manifold is below the compressor inlet", () => {
    expect(notes({ ...byRatio, r: 1.05, Delta_p_23: 10e3 })).toContain("p_m");
    expect(notes(byRatio)).toEqual([]);
  });
});

test("a far expansion is remarked on", () => {
  const trace = recording();
  turbineBalance({ ...pump, W_c: 35e3 }, trace);
  expect(trace.notes.find(({ says }) => says.includes("single wheel"))?.about).toBe("r_T");
});

test("a heat capacity that does not go with its ratio is remarked on, with the nearest that does", () => {
  const notes = (change: Partial<TurbineBalanceGiven>) => {
    const trace = recording();
    turbineBalance({ ...pump, ...change }, trace);
    return trace.notes.filter(({ about }) => about === "c_p_g");
  };
  expect(notes({})).toEqual([]);
  for (const c_p_g of [950, 1400]) {
    const [note] = notes({ c_p_g });
    const bound = note?.limit?.value ?? 0;
    expect(Math.abs(bound - 1150)).toBeLessThan(Math.abs(c_p_g - 1150));
    expect(notes({ c_p_g: bound })).toEqual([]);
    expect((bound * 0.33) / 1.33).toBeCloseTo(c_p_g < 1150 ? 270 : 300, 9);
  }
});

test("air with more vapour than it can hold is remarked on", () => {
  const { W_c: _, p_m: __, ...rest } = pump;
  const machine = { efficiency: "isentropic", eta_s: 0.74, heatCapacity: "real" } as const;
  const trace = recording();
  turbineBalance({ ...rest, ...machine, known: "ratio", p_1: 99e3, T_1: 298.15, r: 2.2, w: 0.05 }, trace);
  expect(trace.notes.map(({ about }) => about)).toEqual(["w"]);
});
