import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { arrangementOf } from "../../../calc/exchanger/arrangements.ts";
import { correctionFromTransferUnits } from "../../../calc/exchanger/correction-from-transfer-units.ts";
import { counterflowTransferUnits } from "../../../calc/exchanger/counterflow-transfer-units.ts";
import { shellCorrectionFactor } from "../../../calc/exchanger/shell-correction-factor.ts";
import { shellTransferUnits } from "../../../calc/exchanger/shell-transfer-units.ts";
import { DomainError } from "../../../calc/quantity/domain-error.ts";
import { runs, someNTU, someR, withFormula } from "./sample.ts";

const F = (id: string, NTU: number, R: number) =>
  correctionFromTransferUnits.compute({ P: arrangementOf(id).effectiveness.compute({ NTU, R }), R, NTU });

describe("the correction of the mean temperature difference", () => {
  it("is 1 in counterflow, and wherever the water does not warm", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 5, noNaN: true }),
        fc.double({ min: 0, max: 2, noNaN: true }),
        (NTU, R) => {
          expect(F("counterflow", NTU, R)).toBeCloseTo(1, 9);
          for (const { id } of withFormula) expect(F(id, NTU, 0)).toBeCloseTo(1, 9);
        },
      ),
      runs,
    );
  });

  it("is below 1 in every other arrangement, and 1 for a small cooler", () => {
    for (const { id } of withFormula)
      for (const R of [0.2, 1, 1.8]) {
        expect(F(id, 2, R), id).toBeLessThanOrEqual(1 + 1e-12);
        expect(F(id, 1e-6, R), id).toBeCloseTo(1, 5);
        expect(correctionFromTransferUnits.compute({ P: 0, R, NTU: 0 })).toBe(1);
      }
  });

  /* F of one shell in the form of its authors (Bowman, Mueller and Nagle 1940, from memory). */
  function published(P: number, R: number): number {
    const G = Math.sqrt(1 + R ** 2);
    const ends = Math.log((2 - P * (1 + R - G)) / (2 - P * (1 + R + G)));
    return R === 1 ? (G * P) / (1 - P) / ends : ((G / (R - 1)) * Math.log((1 - P) / (1 - P * R))) / ends;
  }

  it("of one shell, two tube passes is that of its authors", () => {
    for (const R of [0.2, 0.7, 1, 1.4, 4])
      for (const part of [0.05, 0.4, 0.8, 0.97]) {
        const P = (part * 2) / (1 + R + Math.sqrt(1 + R ** 2));
        expect(shellCorrectionFactor.compute({ P, R }), `P ${P}, R ${R}`).toBeCloseTo(published(P, R), 11);
      }
    expect(shellCorrectionFactor.compute({ P: 0, R: 0.5 })).toBe(1);
  });

  it("of one shell does not care which stream is counted on", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 0.55, noNaN: true }),
        fc.double({ min: 0.1, max: 1, noNaN: true }),
        (P, R) => {
          const other = shellCorrectionFactor.compute({ P: P * R, R: 1 / R });
          expect(shellCorrectionFactor.compute({ P, R })).toBeCloseTo(other, 11);
        },
      ),
      runs,
    );
  });

  it("goes back and forth between effectiveness and transfer units", () => {
    fc.assert(
      fc.property(someNTU, someR, (NTU, R) => {
        const size = Math.min(NTU, 6) / Math.max(1, R);
        const P = arrangementOf("counterflow").effectiveness.compute({ NTU: size, R });
        expect(counterflowTransferUnits.compute({ P, R }) / size).toBeCloseTo(1, 10);
        const inShell = arrangementOf("shell-1-2").effectiveness.compute({ NTU: size, R });
        expect(shellTransferUnits.compute({ P: inShell, R }) / size).toBeCloseTo(1, 9);
      }),
      runs,
    );
  });

  it.each([
    [counterflowTransferUnits, 1, 0.3, 1],
    [counterflowTransferUnits, 0.5, 2, 0.5],
    [shellTransferUnits, 0.6, 1, 2 / (2 + Math.SQRT2)],
  ])("%o refuses what nothing reaches: P %d at R %d", (relation, P, R, bound) => {
    try {
      relation.compute({ P, R });
      expect.unreachable();
    } catch (error) {
      expect(error).toBeInstanceOf(DomainError);
      expect((error as DomainError).field).toBe("P");
      expect((error as DomainError).limit?.value).toBeCloseTo(bound, 14);
    }
  });
});
