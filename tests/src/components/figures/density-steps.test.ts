import fc from "fast-check";
import { expect, test } from "vitest";
import { densitySteps } from "../../../../src/components/figures/density-steps.ts";

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const R = 287.0432;

test("the factors multiply to the ratio of the densities, and each step begins where the one before ended", () => {
  fc.assert(
    fc.property(
      between(60e3, 110e3),
      between(1.1, 5),
      between(260, 320),
      between(0, 200),
      between(0, 20e3),
      (p_1, r, T_1, rise, loss) => {
        const [p_2, T_2] = [p_1 * r, T_1 + rise];
        const [p_3, T_3] = [p_2 - Math.min(loss, 0.1 * p_2), T_1 + 0.3 * rise];
        const [rho_1, rho_3] = [p_1 / (R * T_1), p_3 / (R * T_3)];
        const steps = densitySteps({ rho_1, rho_3, p_1, p_2, p_3, T_1, T_2, T_3 });
        expect(steps.map(({ id }) => id)).toEqual(["pressure", "heating", "cooling", "loss"]);
        const product = steps.reduce((so, { factor }) => so * factor, 1);
        expect(product / (rho_3 / rho_1)).toBeCloseTo(1, 12);
        steps.forEach(({ from }, i) => {
          expect(from).toBe(i ? steps[i - 1]?.to : rho_1);
        });
        expect(steps.at(-1)?.to).toBeCloseTo(rho_3, 10);
      },
    ),
  );
});

test("vapour that condensed has a step of its own", () => {
  const steps = densitySteps({
    rho_1: 1.13,
    rho_3: 2.2,
    p_1: 99e3,
    p_2: 217.8e3,
    p_3: 211.8e3,
    T_1: 303.15,
    T_2: 400,
    T_3: 323.15,
  });
  expect(steps.at(-1)?.id).toBe("drying");
  expect(steps.reduce((so, { factor }) => so * factor, 1)).toBeCloseTo(2.2 / 1.13, 12);
});
