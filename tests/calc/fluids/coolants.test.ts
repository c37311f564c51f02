import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { acceptCoolant, type CoolantGiven, freezingOf } from "../../../calc/exchanger/coolant.ts";
import { filmProperties } from "../../../calc/exchanger/coolant-film.ts";
import { coolantProperties } from "../../../calc/exchanger/coolant-properties.ts";
import { rateCooler } from "../../../calc/exchanger/rate-cooler.ts";
import { massFractionOf } from "../../../calc/fluids/glycol/glycol.ts";
import { seawaterEnthalpy } from "../../../calc/fluids/seawater-enthalpy.ts";
import { seawaterHeatCapacity } from "../../../calc/fluids/seawater-heat-capacity.ts";
import { DomainError } from "../../../calc/quantity/domain-error.ts";
import { plain } from "../../../calc/relation/trace.ts";

const celsius = (t: number) => t + 273.15;
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const glycol = fc.constantFrom("ethylene-glycol" as const, "propylene-glycol" as const);
const film = (given: CoolantGiven, T: number) => filmProperties(given, acceptCoolant(given), T, plain);
const freezing = (given: CoolantGiven) => freezingOf(acceptCoolant(given));

describe("glycol in water", () => {
  test("freezes colder, the more there is", () => {
    fc.assert(
      fc.property(glycol, number(0, 0.59), number(0.005, 0.3), (coolant, x_g, more) => {
        fc.pre(x_g + more <= 0.6);
        expect(freezing({ coolant, x_g: x_g + more })).toBeLessThan(freezing({ coolant, x_g }));
      }),
    );
  });

  test("is thicker than water, carries less heat and conducts it less; and thins when it warms", () => {
    fc.assert(
      fc.property(glycol, number(0.1, 0.6), number(celsius(5), celsius(85)), (coolant, x_g, T) => {
        const mixture = film({ coolant, x_g }, T);
        const water = film({ coolant: "water" }, T);
        expect(mixture.mu).toBeGreaterThan(water.mu);
        expect(mixture.c_p).toBeLessThan(water.c_p);
        expect(mixture.k).toBeLessThan(water.k);
        expect(mixture.rho).toBeGreaterThan(water.rho);
        expect(film({ coolant, x_g }, T + 5).mu).toBeLessThan(mixture.mu);
      }),
    );
  });

  test("cools, down to where it freezes", () => {
    const cooler = {
      arrangement: "counterflow",
      UA: 500,
      m_a: 0.3,
      T_2: 420,
      coolant: "ethylene-glycol",
      phi_g: 0.3,
      m_w: 0.5,
    } as const;
    const T_f = freezing({ coolant: "ethylene-glycol", phi_g: 0.3 });
    expect(rateCooler({ ...cooler, T_w_in: T_f + 1 }).T_3).toBeLessThan(celsius(60));
    try {
      rateCooler({ ...cooler, T_w_in: T_f - 1 });
      expect.unreachable();
    } catch (error) {
      if (!(error instanceof DomainError)) throw error;
      expect([error.field, error.limit?.value]).toEqual(["T_w_in", T_f]);
    }
  });

  test.each([
    [{ coolant: "ethylene-glycol" }, "x_g"],
    [{ coolant: "ethylene-glycol", x_g: 0.7 }, "x_g"],
    [{ coolant: "propylene-glycol", phi_g: -0.1 }, "phi_g"],
    [{ coolant: "propylene-glycol", phi_g: Number.NaN }, "phi_g"],
  ] as const)("%o is refused at %s", (given, field) => {
    expect(() => acceptCoolant(given)).toThrow(DomainError);
    try {
      acceptCoolant(given);
    } catch (error) {
      expect((error as DomainError).field).toBe(field);
    }
  });
});

test("a stated liquid needs viscosity and conductivity for its film", () => {
  const given = { coolant: "stated", c: 2000, rho_w: 850 } as const;
  expect(() => film(given, 300)).toThrow(/viscosity/);
  expect(() => film({ ...given, mu_w: 0.01 }, 300)).toThrow(/conductivity/);
  expect(film({ ...given, mu_w: 0.01, k_w: 0.13 }, 300)).toEqual({ rho: 850, c_p: 2000, mu: 0.01, k: 0.13 });
});

test("seawater freezes where its salinity says", () => {
  expect(freezing({ coolant: "seawater", S: 0 })).toBeCloseTo(celsius(0), 9);
  // UNESCO 1983, practical salinity 35 under one atmosphere: -1.922 degC, from memory.
  expect(freezing({ coolant: "seawater", S: 0.03516504 })).toBeCloseTo(celsius(-1.922), 3);
});

describe("as much glycol as freezes at a wanted temperature", () => {
  const state = { T: celsius(40), p_w: 2e5, amount: "freezing" } as const;

  test("freezes there, and is the same mixture by volume", () => {
    fc.assert(
      fc.property(glycol, number(celsius(-49), celsius(-1)), (coolant, T_freeze) => {
        const { T_f, x_g, phi_g } = coolantProperties({ ...state, coolant, T_freeze });
        expect(T_f).toBeCloseTo(T_freeze, 9);
        expect(massFractionOf(coolant, phi_g ?? Number.NaN)).toBeCloseTo(x_g ?? Number.NaN, 12);
      }),
    );
  });

  test.each([
    [celsius(0.1), "T_freeze"],
    [celsius(-60), "T_freeze"],
    [Number.NaN, "T_freeze"],
  ])("%d K is refused", (T_freeze, field) => {
    try {
      coolantProperties({ ...state, coolant: "ethylene-glycol", T_freeze });
      expect.unreachable();
    } catch (error) {
      if (!(error instanceof DomainError)) throw error;
      expect(error.field).toBe(field);
    }
  });

  test("where fresh water is ice or steam there is nothing to compare with", () => {
    const given = { ...state, coolant: "ethylene-glycol", T_freeze: celsius(-30) } as const;
    expect(coolantProperties({ ...given, T: celsius(-10) }).X_C).toBeUndefined();
    expect(coolantProperties({ ...given, T: celsius(125) }).X_mu).toBeUndefined();
    expect(coolantProperties(given).X_C).toBeLessThan(1);
  });
});

test("the enthalpy of seawater rises with its temperature by its heat capacity", () => {
  fc.assert(
    fc.property(number(celsius(1), celsius(59)), number(0, 0.042), (T, S) => {
      const h = (at: number) => seawaterEnthalpy.compute({ T: at, S, p: 101325 });
      const slope = (h(T + 0.5) - h(T - 0.5)) / 1;
      expect(slope / seawaterHeatCapacity.compute({ T, S })).toBeCloseTo(1, 5);
    }),
  );
});
