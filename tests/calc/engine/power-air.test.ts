import fc from "fast-check";
import { expect, test } from "vitest";
import { airDemand } from "../../../calc/engine/air-demand.ts";
import { powerAir } from "../../../calc/engine/power-air.ts";

const state = fc.record({
  W_e: fc.double({ min: 1e3, max: 1e7, noNaN: true }),
  b: fc.double({ min: 4e-8, max: 1.5e-7, noNaN: true }),
  lambda: fc.double({ min: 0.7, max: 3, noNaN: true }),
  AFR_st: fc.double({ min: 6, max: 18, noNaN: true }),
});

test("the power of the air that a power takes is that power", () => {
  fc.assert(
    fc.property(state, (given) => {
      const { m_da, m_f } = powerAir({ ...given, find: "air" });
      const back = powerAir({ ...given, find: "power", m_da });
      expect(back.W_e / given.W_e).toBeCloseTo(1, 12);
      expect(back.m_f / m_f).toBeCloseTo(1, 12);
    }),
  );
});

test("it is the air that the longer calculation finds for dry air", () => {
  fc.assert(
    fc.property(state, (given) => {
      expect(powerAir({ ...given, find: "air" }).m_da).toBe(airDemand({ ...given, from: "power" }).m_da);
    }),
  );
});

test.each(["W_e", "b", "lambda", "AFR_st"] as const)("refuses a missing %s at its field", (missing) => {
  const given = { find: "air", W_e: 1e5, b: 8e-8, lambda: 1, AFR_st: 14.5 } as const;
  expect(() => powerAir({ ...given, [missing]: undefined })).toThrow(
    expect.objectContaining({ field: missing }),
  );
});
