import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { explicitFrictionFactor } from "../../../calc/flow/explicit-friction-factor.ts";
import { frictionArgument } from "../../../calc/flow/friction-argument.ts";
import { frictionFactorAllRegimes } from "../../../calc/flow/friction-factor-all-regimes.ts";
import { frictionPartBeyondLaminar } from "../../../calc/flow/friction-part-beyond-laminar.ts";
import { frictionTransitionPart } from "../../../calc/flow/friction-transition-part.ts";
import { frictionTurbulentPart } from "../../../calc/flow/friction-turbulent-part.ts";
import { laminarFrictionFactor } from "../../../calc/flow/laminar-friction-factor.ts";
import { roughFrictionFactor } from "../../../calc/flow/rough-friction-factor.ts";
import { turbulentFrictionFactor } from "../../../calc/flow/turbulent-friction-factor.ts";
import { DomainError } from "../../../calc/quantity/domain-error.ts";

fc.configureGlobal({ numRuns: Number(process.env["FAST_CHECK_RUNS"] ?? 100) });

const all = (Re: number, k_s: number, d = 1) => {
  const Theta_t = frictionTurbulentPart.compute({ Theta_k: frictionArgument.compute({ Re, k_s, d }) });
  const Theta_l = frictionTransitionPart.compute({ Re });
  return frictionFactorAllRegimes.compute({
    Re,
    Theta: frictionPartBeyondLaminar.compute({ Theta_t, Theta_l }),
  });
};
const roughness = fc.double({ min: 0, max: 0.05, noNaN: true });
/** Spread evenly over the powers of ten. */
const reynolds = (from: number, to: number) =>
  fc.double({ min: Math.log10(from), max: Math.log10(to), noNaN: true }).map((power) => 10 ** power);

test("slow flow is laminar, whatever the roughness", () => {
  fc.assert(
    fc.property(reynolds(1, 1000), roughness, (Re, k_s) => {
      expect(all(Re, k_s) / laminarFrictionFactor.compute({ Re })).toBeCloseTo(1, 5);
    }),
  );
});

test("fast flow in a rough pipe no longer depends on its speed", () => {
  fc.assert(
    fc.property(fc.double({ min: 1e-3, max: 0.05, noNaN: true }), (k_s) => {
      const limit = roughFrictionFactor.compute({ k_s, d: 1 });
      expect(turbulentFrictionFactor.compute({ Re: 1e14, k_s, d: 1 }) / limit).toBeCloseTo(1, 8);
    }),
  );
});

test("the implicit formula is met to the last digits", () => {
  fc.assert(
    fc.property(reynolds(1, 1e12), roughness, (Re, k_s) => {
      const f = turbulentFrictionFactor.compute({ Re, k_s, d: 1 });
      const right = -2 * Math.log10(k_s / 3.7 + 2.51 / (Re * Math.sqrt(f)));
      expect(1 / Math.sqrt(f) / right).toBeCloseTo(1, 10);
    }),
  );
});

test("the explicit formula lies within 1.5 %, that for all regimes within 3.5 %, where the flow is turbulent", () => {
  fc.assert(
    fc.property(reynolds(4000, 1e8), roughness, (Re, k_s) => {
      const f = turbulentFrictionFactor.compute({ Re, k_s, d: 1 });
      expect(Math.abs(explicitFrictionFactor.compute({ Re, k_s, d: 1 }) / f - 1)).toBeLessThan(0.015);
      expect(Math.abs(all(Re, k_s) / f - 1)).toBeLessThan(0.035);
    }),
  );
});

describe("friction in turbulent flow", () => {
  test("falls with speed and rises with roughness", () => {
    fc.assert(
      fc.property(reynolds(5000, 1e8), roughness, (Re, k_s) => {
        const f = turbulentFrictionFactor.compute({ Re, k_s, d: 1 });
        expect(turbulentFrictionFactor.compute({ Re: 1.1 * Re, k_s, d: 1 })).toBeLessThanOrEqual(
          f * (1 + 1e-12),
        );
        expect(turbulentFrictionFactor.compute({ Re, k_s: k_s + 1e-4, d: 1 })).toBeGreaterThan(f);
      }),
    );
  });

  test("has no meaning where the roughness fills the pipe", () => {
    expect(() => turbulentFrictionFactor.compute({ Re: 1e5, k_s: 0.4, d: 0.1 })).toThrow(DomainError);
  });
});
