import fc from "fast-check";
import { expect, test } from "vitest";
import { frictionToChoking } from "../../../calc/flow/friction-to-choking.ts";
import { machFromFrictionToChoking } from "../../../calc/flow/mach-from-friction-to-choking.ts";
import { DomainError } from "../../../calc/quantity/domain-error.ts";

fc.configureGlobal({ numRuns: Number(process.env["FAST_CHECK_RUNS"] ?? 100) });

const gas = fc.double({ min: 1.05, max: 1.67, noNaN: true });

test("Mach number and friction number to choking turn each other round", () => {
  fc.assert(
    fc.property(fc.double({ min: -7, max: -1e-3, noNaN: true }), gas, (power, kappa) => {
      const Ma = 10 ** power;
      const Lambda_left = frictionToChoking.compute({ Ma, kappa });
      expect(machFromFrictionToChoking.compute({ Lambda_left, kappa }) / Ma).toBeCloseTo(1, 9);
    }),
  );
});

test("at the speed of sound nothing is left, and before it always something", () => {
  fc.assert(
    fc.property(fc.double({ min: 1e-4, max: 0.999, noNaN: true }), gas, (Ma, kappa) => {
      expect(frictionToChoking.compute({ Ma: 1, kappa })).toBeCloseTo(0, 12);
      expect(frictionToChoking.compute({ Ma, kappa })).toBeGreaterThan(0);
      expect(machFromFrictionToChoking.compute({ Lambda_left: 0, kappa })).toBe(1);
    }),
  );
});

test("less than nothing is refused", () => {
  expect(() => machFromFrictionToChoking.compute({ Lambda_left: -1e-9, kappa: 1.4 })).toThrow(DomainError);
});
