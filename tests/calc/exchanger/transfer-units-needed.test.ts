import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Arrangement } from "../../../calc/exchanger/arrangement.ts";
import { arrangementOf, arrangements } from "../../../calc/exchanger/arrangements.ts";
import { reach } from "../../../calc/exchanger/reach.ts";
import { transferUnitsNeeded } from "../../../calc/exchanger/transfer-units-needed.ts";
import { DomainError } from "../../../calc/quantity/domain-error.ts";
import { fromField, runs, someR, withFormula } from "./sample.ts";

const part = fc.double({ min: 0, max: 0.95, noNaN: true });

/** What it says about P, and its bound; fails where nothing is refused. */
function refusal(
  arrangement: Arrangement,
  P: number,
  R: number,
): { says: string; bound: number | undefined } {
  try {
    transferUnitsNeeded(arrangement, { P, R });
  } catch (error) {
    expect(error).toBeInstanceOf(DomainError);
    const { field, message, limit } = error as DomainError;
    expect(field).toBe("P");
    expect(limit?.kind).toBe("fraction");
    return { says: message, bound: limit?.value };
  }
  throw new Error(`${arrangement.id} reaches ${P} at R ${R}`);
}

describe("the transfer units that an effectiveness needs", () => {
  it.each(withFormula)("$id gives back what was wanted", (arrangement) => {
    fc.assert(
      fc.property(part, someR, (part, R) => {
        const P = part * reach(arrangement, R).P;
        const NTU = transferUnitsNeeded(arrangement, { P, R });
        const found = arrangement.effectiveness.compute({ NTU, R });
        expect(Math.abs(found - P), `P ${P}, R ${R}, NTU ${NTU}`).toBeLessThanOrEqual(1e-12 * P + 1e-300);
      }),
      runs,
    );
  });

  it.each(withFormula)("$id gives back the size, to eleven digits", (arrangement) => {
    fc.assert(
      fc.property(fc.double({ min: 1e-6, max: 1.2, noNaN: true }), someR, (NTU, R) => {
        const small = NTU / Math.max(1, R);
        const P = arrangement.effectiveness.compute({ NTU: small, R });
        expect(Math.abs(transferUnitsNeeded(arrangement, { P, R }) / small - 1)).toBeLessThan(1e-11);
      }),
      runs,
    );
  });

  it.each(fromField)("$id gives back the size", (arrangement) => {
    for (const R of [0.2, 1, 2])
      for (const NTU of [0.01, 0.4, 1]) {
        const P = arrangement.effectiveness.compute({ NTU, R });
        expect(transferUnitsNeeded(arrangement, { P, R }) / NTU).toBeCloseTo(1, 8);
      }
  });

  it.each(arrangements.filter(({ peaks }) => peaks))(
    "$id: the smaller of the two, up to the very peak",
    (arrangement) => {
      for (const R of [0.8, 1.3]) {
        const most = reach(arrangement, R);
        expect(transferUnitsNeeded(arrangement, { P: most.P, R }) / most.NTU).toBeCloseTo(1, 3);
        expect(transferUnitsNeeded(arrangement, { P: 0.98 * most.P, R })).toBeLessThan(most.NTU);
      }
    },
  );

  it("nothing is needed for nothing", () => {
    for (const arrangement of arrangements)
      expect(transferUnitsNeeded(arrangement, { P: 0, R: 0.5 })).toBe(0);
  });

  it("a chart of cross-flow, both unmixed, gives 2.1 for 0.755 at 0.45 (textbook, from memory)", () => {
    expect(transferUnitsNeeded(arrangementOf("cross-unmixed"), { P: 0.755, R: 0.45 })).toBeCloseTo(2.1, 1);
  });

  it("refuses what is out of reach, with the most as the bound", () => {
    for (const arrangement of arrangements)
      for (const R of [0.4, 1, 2]) {
        const most = reach(arrangement, R).P;
        const { says, bound } = refusal(arrangement, most * 1.0001, R);
        expect(bound, arrangement.id).toBe(most);
        expect(says).toMatch(/does not reach/);
      }
  });

  it("refuses the limit itself where nothing gets there", () => {
    for (const arrangement of arrangements.filter(({ peaks }) => !peaks)) {
      const most = reach(arrangement, 0.7).P;
      expect(refusal(arrangement, most, 0.7).bound).toBe(most);
    }
  });

  it("refuses what no cooler is large enough for, with what a thousand transfer units reach as the bound", () => {
    for (const id of ["counterflow", "cross-unmixed", "counter-cross-2-remixed"]) {
      const arrangement = arrangementOf(id);
      const { says, bound } = refusal(arrangement, 0.99999, 1);
      expect(says).toMatch(/no cooler is large enough/);
      expect(bound).toBe(arrangement.effectiveness.compute({ NTU: 1000, R: 1 }));
      expect(transferUnitsNeeded(arrangement, { P: (bound as number) - 1e-9, R: 1 })).toBeLessThanOrEqual(
        1000,
      );
    }
  });

  it("refuses less than nothing, and what is no number", () => {
    const arrangement = arrangementOf("counterflow");
    expect(refusal(arrangement, -0.1, 0.5).bound).toBe(0);
    expect(refusal(arrangement, Number.NaN, 0.5).bound).toBe(0);
  });
});
