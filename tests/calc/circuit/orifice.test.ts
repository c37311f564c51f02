import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type OrificePlateGiven, orificePlate } from "../../../calc/circuit/orifice/orifice-plate.ts";
import { restriction } from "../../../calc/circuit/orifice/restriction.ts";
import { DomainError } from "../../../calc/quantity/domain-error.ts";
import { recording } from "../../../calc/relation/trace.ts";

const runs = { numRuns: Number(process.env["FAST_CHECK_RUNS"] ?? 100) };
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const plate = {
  wanted: "flow",
  fluid: "gas",
  taps: "flange",
  d_l: 0.1,
  d: 0.06,
  p_in: 250e3,
  rho: 2.6,
  mu: 2e-5,
  kappa: 1.4,
  Delta_p: 8e3,
} as const satisfies OrificePlateGiven;

function refusal(run: () => unknown): DomainError {
  try {
    run();
  } catch (error) {
    if (error instanceof DomainError) return error;
    throw error;
  }
  throw new Error("not refused");
}

describe("an orifice plate", () => {
  test("flow, difference and bore are found from the other two", () => {
    fc.assert(
      fc.property(
        fc.constantFrom("gas", "liquid"),
        fc.constantFrom("corner", "flange", "radius"),
        number(0.15, 0.75),
        number(500, 60e3),
        (fluid, taps, beta, Delta_p) => {
          const fluids = fluid === "gas" ? {} : { rho: 997, mu: 9e-4 };
          const given = { ...plate, ...fluids, fluid, taps, d: 0.1 * beta, Delta_p };
          const { m } = orificePlate(given);
          expect(orificePlate({ ...given, wanted: "difference", m }).Delta_p / Delta_p).toBeCloseTo(1, 8);
          expect(orificePlate({ ...given, wanted: "bore", m }).d / given.d).toBeCloseTo(1, 8);
        },
      ),
      runs,
    );
  });

  test("less is lost for good than the taps show, and the wider the hole the more comes back", () => {
    const kept = [0.3, 0.5, 0.7].map((beta) => {
      const { Delta_p, Delta_p_lost } = orificePlate({ ...plate, d: beta * 0.1 });
      return Delta_p_lost / Delta_p;
    });
    // ISO 5167-2 gives 1 - beta^1.9 for it, from memory.
    for (const [i, beta] of [0.3, 0.5, 0.7].entries()) expect(kept[i]).toBeCloseTo(1 - beta ** 1.9, 1);
    expect([...kept].sort((a, b) => b - a)).toEqual(kept);
  });

  test("what leaves the limits of the standard is said", () => {
    const said = (more: Partial<OrificePlateGiven>) => {
      const trace = recording();
      orificePlate({ ...plate, ...more }, trace);
      return trace.notes.map(({ about }) => about);
    };
    expect(said({})).toEqual([]);
    expect(said({ d: 0.078 })).toEqual(["beta_d"]);
    expect(said({ d_l: 0.04, d: 0.02 })).toEqual(["d_l"]);
    expect(said({ Delta_p: 70e3 })).toEqual(["Delta_p"]);
    expect(said({ Delta_p: 0.05 })).toEqual(["Re"]);
  });

  test("what cannot be is refused at its field, with the bound", () => {
    const refused = (more: Partial<OrificePlateGiven>) => refusal(() => orificePlate({ ...plate, ...more }));
    expect(refused({ Delta_p: 130e3 }).message).toContain("speed of sound");
    expect(refused({ wanted: "difference", m: 50 }).field).toBe("m");
    expect(refused({ wanted: "bore", m: 50 }).limit?.value).toBeGreaterThan(0);
    expect(refused({ wanted: "bore", m: 1e-3, Delta_p: 100e3 }).message).toContain("too small");
    expect(refused({ wanted: "bore", m: 1e-5 }).limit?.value).toBeCloseTo(
      (500 * Math.PI * 0.1 * 2e-5) / 4,
      12,
    );
    expect(refused({ d: 0.1 }).field).toBe("d");
    expect(refused({ rho: Number.NaN }).field).toBe("rho");
    expect(refused({ kappa: 1 }).field).toBe("kappa");
  });
});

describe("a plate that takes a wanted loss", () => {
  test("the more it shall take, the smaller its hole; a large loss of a gas is said", () => {
    const duct = { m: 0.3, rho: 2.2, d_l: 0.07, p_in: 250e3 };
    const bores = [2e3, 5e3, 12e3].map((Delta_p) => restriction({ ...duct, Delta_p }).d);
    expect([...bores].sort((a, b) => b - a)).toEqual(bores);
    const trace = recording();
    restriction({ ...duct, Delta_p: 20e3 }, trace);
    expect(trace.notes.map(({ about }) => about)).toEqual(["plate"]);
    expect(refusal(() => restriction({ ...duct, Delta_p: 250e3 })).field).toBe("Delta_p");
  });
});
