import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type CondensationGiven,
  condensationInCoolers,
} from "../../../calc/charge/condensation-in-coolers.ts";
import { DomainError } from "../../../calc/quantity/domain-error.ts";
import { plain, recording } from "../../../calc/relation/trace.ts";

const runs = { numRuns: Number(process.env["FAST_CHECK_RUNS"] ?? 100) };
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const ferry: CondensationGiven = {
  p_0: 100.6e3,
  T_0: 306.15,
  humidity: "relative",
  varphi_0: 0.85,
  m_a: 1.1,
  stages: "two",
  T_2: 443.15,
  T_3: 311.15,
  p_3: 280e3,
  T_w_in: 301.15,
  T_4: 400,
  T_5: 308.15,
  p_5: 600e3,
  T_w_in_45: 301.15,
};

describe("condensation in the coolers", () => {
  it("keeps the mass of water", () => {
    const { first, second, w_0 } = condensationInCoolers(ferry);
    const m_da = 1.1 / (1 + w_0);
    expect(first.m_c).toBeCloseTo(m_da * (w_0 - first.w), 12);
    expect(second?.m_c).toBeCloseTo(m_da * (first.w - (second?.w ?? 0)), 12);
  });

  it("is told by the dew point, which rises with pressure", () => {
    fc.assert(
      fc.property(number(0.1, 1), number(120e3, 900e3), number(302, 360), (varphi_0, p_3, T_3) => {
        const { first, T_dp_0 } = condensationInCoolers({ ...ferry, stages: "one", varphi_0, p_3, T_3 });
        expect(first.T_dp).toBeGreaterThan(T_dp_0 ?? Number.NaN);
        if ((first.airAbove ?? 0) > 1e-6) expect(first.m_c).toBe(0);
        if ((first.airAbove ?? 0) < -1e-6) expect(first.m_c).toBeGreaterThan(0);
        expect(first.m_c_wall > 0).toBe((first.waterAbove ?? 0) < 0);
      }),
      runs,
    );
  });

  it("does not speak of water in dry air", () => {
    const { first, T_dp_0 } = condensationInCoolers({ ...ferry, humidity: "dry" });
    expect(first).toMatchObject({ m_c: 0, m_c_wall: 0, Q_l: 0, x_l: 0, T_dp: undefined });
    expect(T_dp_0).toBeUndefined();
  });

  it("says which of both is wet", () => {
    const about = (given: CondensationGiven) => {
      const trace = recording();
      condensationInCoolers(given, trace);
      return trace.notes.map((note) => note.about);
    };
    expect(about({ ...ferry, stages: "one" })).toContain("T_3");
    expect(about({ ...ferry, stages: "one", T_3: 330 })).toContain("T_w_in");
    expect(about({ ...ferry, stages: "one", T_3: 330, T_w_in: 326 })).toEqual([]);
    expect(about({ ...ferry, stages: "one", T_w_in: 270, T_3: 300 })).toContain("T_w_in");
    expect(condensationInCoolers(ferry, recording())).toEqual(condensationInCoolers(ferry, plain));
  });

  it.each([
    ["a cooler that heats", { T_3: 500 }, "T_3"],
    ["air colder than its water", { T_3: 299 }, "T_3"],
    ["a second cooler that heats", { T_5: 500 }, "T_5"],
    ["no pressure", { p_3: 0 }, "p_3"],
    ["no flow", { m_a: 0 }, "m_a"],
  ] as const)("refuses %s", (_, change, field) => {
    try {
      condensationInCoolers({ ...ferry, ...change });
      expect.unreachable();
    } catch (error) {
      expect(error).toBeInstanceOf(DomainError);
      expect((error as DomainError).field).toBe(field);
    }
  });
});
