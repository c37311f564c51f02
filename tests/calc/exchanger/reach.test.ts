import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { arrangementOf } from "../../../calc/exchanger/arrangements.ts";
import { reach } from "../../../calc/exchanger/reach.ts";
import { fromField, runs, someNTU, someR, withFormula } from "./sample.ts";

describe("what an arrangement reaches at most", () => {
  it.each([
    [0.1, 0.9085, 6.06],
    [0.25, 0.797, 4.34],
    [0.5, 0.661, 3.14],
    [1, 0.491, 2.12],
  ])(
    "with swapped hoses, at R %d: %d at %d transfer units (worked by an independent program)",
    (R, P, NTU) => {
      const most = reach(arrangementOf("parallel-cross-2"), R);
      expect(Math.abs(most.P - P)).toBeLessThanOrEqual(P > 0.9 ? 5e-5 : 5e-4);
      expect(Math.abs(most.NTU - NTU)).toBeLessThanOrEqual(0.0051);
    },
  );

  /* The limits as textbooks have them (chapter 3 of Shah and Sekulic, from memory). */
  const G = (R: number) => Math.sqrt(1 + R ** 2);
  const limits: Readonly<Record<string, (R: number) => number>> = {
    counterflow: (R) => Math.min(1, 1 / R),
    "parallel-flow": (R) => 1 / (1 + R),
    "cross-unmixed": (R) => Math.min(1, 1 / R),
    "cross-one-row": (R) => (1 - Math.exp(-R)) / R,
    "cross-air-mixed": (R) => 1 - Math.exp(-1 / R),
    "shell-1-2": (R) => 2 / (1 + R + G(R)),
    "counter-cross-2-remixed": (R) => Math.min(1, 1 / R),
    "counter-cross-2": (R) => (1 - 2 / (1 + Math.exp(2 * R))) / R,
  };
  it.each(Object.entries(limits))("%s comes near to its limit", (id, limit) => {
    for (const R of [0.01, 0.3, 1, 1.8, 6]) {
      const most = reach(arrangementOf(id), R);
      expect(most.P).toBeCloseTo(limit(R), 13);
      expect(most.NTU).toBe(Infinity);
    }
  });

  it("passes with the air, all mixed between, reach exactly what endless parallel flow does", () => {
    for (const R of [0.05, 0.3, 1, 2, 7]) {
      const { P, NTU } = reach(arrangementOf("parallel-cross-2-remixed"), R);
      expect(P).toBeCloseTo(1 / (1 + R), 11);
      expect(arrangementOf("cross-unmixed").effectiveness.compute({ NTU: NTU / 2, R })).toBeCloseTo(
        1 / (1 + R),
        6,
      );
    }
  });

  it("is all there is with water that does not warm", () => {
    for (const arrangement of [...withFormula, ...fromField])
      expect(reach(arrangement, 0), arrangement.id).toEqual({ P: 1, NTU: Infinity });
  });

  it.each(withFormula)("$id never does more", (arrangement) => {
    fc.assert(
      fc.property(someNTU, someR, (NTU, R) => {
        const most = reach(arrangement, R);
        if (Number.isFinite(most.NTU))
          expect(arrangement.effectiveness.compute({ NTU: most.NTU, R })).toBe(most.P);
        return arrangement.effectiveness.compute({ NTU, R }) <= most.P * (1 + 1e-11);
      }),
      runs,
    );
  });

  it.each(fromField)("$id never does more", (arrangement) => {
    for (const R of [0.3, 1, 2.5]) {
      const most = reach(arrangement, R);
      for (const NTU of [0.5, 1, 1.5, 2, 2.5, 3, 4, 6, 10])
        expect(arrangement.effectiveness.compute({ NTU, R }), `NTU ${NTU}, R ${R}`).toBeLessThan(
          most.P + 1e-9,
        );
    }
  });
});
