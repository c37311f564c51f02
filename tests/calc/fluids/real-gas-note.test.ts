import { describe, expect, it } from "vitest";
import { noteRealGas } from "../../../calc/fluids/real-gas-note.ts";
import { recording } from "../../../calc/relation/trace.ts";
import low from "../../../content/checks/dry-air-real-gas.json" with { type: "json" };
import high from "../../../content/checks/dry-air-real-gas-high.json" with { type: "json" };

function noteAt(p: number, T: number) {
  const trace = recording();
  noteRealGas({ p, T }, "rho", trace);
  return trace.notes[0];
}

/** The percentage that the note states: above zero where the real gas is denser. */
function statedPercent(says: string): number {
  if (says.includes("the same within")) return 0;
  const [, size = "", side] = /about ([\d.]+) % (higher|lower)/.exec(says) ?? [];
  return Number(size) * (side === "higher" ? 1 : -1);
}

const rounding = 0.05;

// The reference equation of state of air, as in the checks: Lemmon et al. 2000, Z = p / (rho R T).
describe("the stated deviation of the density is that of the real gas", () => {
  it.each([
    ...low.cases.map((one) => ({ ...one, within: 0.1 })),
    ...high.cases.map((one) => ({ ...one, within: 0.2 })),
  ])("at $in.T K and $in.p Pa, within $within %", ({ in: { T, p }, out: { Z }, within }) => {
    const stated = statedPercent(noteAt(p, T)?.says ?? "");
    expect(Math.abs(stated - 100 * (1 / Z - 1))).toBeLessThanOrEqual(within + rounding);
  });
});

describe("the note", () => {
  it("is silent where the ideal gas is within 0.3 %", () => {
    for (const T of [280, 300, 400, 500]) expect(noteAt(0.6e6, T)).toBeUndefined();
    expect(noteAt(101325, 230)).toBeUndefined();
  });

  // Lemmon et al. 2000 by the virial coefficient of an open library (iapws 1.5.2): B(250 K) = -6.825e-4 m³/kg.
  it("speaks below 0.6 MPa too where the air is cold", () => {
    const Z = 1 - (6.825e-4 * 0.5e6) / (287.04 * 250);
    expect(statedPercent(noteAt(0.5e6, 250)?.says ?? "")).toBeCloseTo(100 * (1 / Z - 1), 1);
  });

  it("states no number above 2 MPa, where none was checked", () => {
    const note = noteAt(5e6, 400);
    expect(note?.says).not.toMatch(/\d/);
    expect(note?.limit).toEqual({ value: 2e6, kind: "pressure" });
  });
});
