import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type Contributions,
  type ContributionsGiven,
  contributions,
} from "../../../calc/charge/contributions.ts";
import { outfitName, thoseIn } from "../../../calc/charge/device-set.ts";
import { logMeanRatio } from "../../../calc/charge/log-mean-ratio.ts";
import { DomainError } from "../../../calc/quantity/domain-error.ts";
import { plain, recording } from "../../../calc/relation/trace.ts";

const runs = { numRuns: Number(process.env["FAST_CHECK_RUNS"] ?? 60) };

/* Hill-climb four, worked by an independent program. */
const hillClimb: ContributionsGiven = {
  stages: "one",
  split: "hardware",
  p_1: 98e3,
  T_1: 298.15,
  r_1: 2.24936,
  eta_s: 0.72,
  cooler: "effectiveness",
  P: 0.78,
  T_w_in: 298.15,
  Delta_p_23: 9e3,
  n_p: 2,
};

const ratios = fc.double({ min: 1, max: 3, noNaN: true });
const efficiencies = fc.double({ min: 0.4, max: 1, noNaN: true });
const coolers = fc.constantFrom("effectiveness", "effectiveness", "none");
const effectivenesses = fc.double({ min: 0, max: 1, noNaN: true });
const waters = fc.double({ min: 278, max: 350, noNaN: true });
const chains = fc.record({
  stages: fc.constantFrom("one", "two"),
  p_1: fc.double({ min: 60e3, max: 110e3, noNaN: true }),
  T_1: fc.double({ min: 260, max: 320, noNaN: true }),
  w: fc.constantFrom(0, 0, 0.01, 0.03),
  r_1: ratios,
  eta_s: efficiencies,
  cooler: coolers,
  P: effectivenesses,
  T_w_in: waters,
  r_2: ratios,
  eta_s_2: efficiencies,
  cooler_45: coolers,
  P_45: effectivenesses,
  T_w_in_45: waters,
  Delta_p_23: fc.double({ min: 0, max: 20e3, noNaN: true }),
  Delta_p_45: fc.double({ min: 0, max: 20e3, noNaN: true }),
  n_p: fc.double({ min: 1, max: 2, noNaN: true }),
}) as unknown as fc.Arbitrary<Omit<ContributionsGiven, "split">>;

const byHardware = (chain: Omit<ContributionsGiven, "split">) =>
  contributions({ ...chain, split: "hardware" });
const byChanges = (chain: Omit<ContributionsGiven, "split">) => contributions({ ...chain, split: "changes" });

const creditsOf = ({ hardware }: Contributions) => Object.fromEntries(hardware?.credits ?? []);
const sum = (parts: readonly number[]) => parts.reduce((a, b) => a + b, 0);
const partsOf = ({ changes }: Contributions) => (changes ?? []).flatMap((stage) => Object.values(stage));

test("the shares are parts of the gain, and there are none of a gain too small", () => {
  fc.assert(
    fc.property(chains, (chain) => {
      const { hardware, Delta_D } = byHardware(chain);
      const shares = [...(hardware?.shares ?? [])];
      if (Delta_D < 0.01) expect(shares).toEqual([]);
      for (const [id, share] of shares)
        expect(share * Delta_D).toBeCloseTo(hardware?.credits.get(id) ?? Number.NaN, 12);
      if (shares.length > 0) expect(sum(shares.map(([, share]) => share))).toBeCloseTo(1, 9);
    }),
    runs,
  );
});

test.each([
  ["one", "compressor gives"],
  ["two", "compressors give"],
] as const)("a manifold below the inlet behind %s is remarked on", (stages, words) => {
  const notes = (Delta_p: number) => {
    const trace = recording();
    const second = { r_2: 1, eta_s_2: 0.7, cooler_45: "none" } as const;
    contributions({ ...hillClimb, ...second, stages, r_1: 1.1, Delta_p_23: Delta_p }, trace);
    return trace.notes.filter(({ about }) => about === "p_m");
  };
  expect(notes(9e3)).toEqual([]);
  expect(notes(20e3)[0]?.says).toContain(words);
});

describe("both splits", () => {
  test("add up to the gain exactly", () => {
    fc.assert(
      fc.property(chains, (chain) => {
        const hardware = byHardware(chain);
        const changes = byChanges(chain);
        expect(hardware.Delta_D).toBe(changes.Delta_D);
        expect(Math.abs(sum(partsOf(changes)) - changes.Delta_D)).toBeLessThan(1e-12);
        if (hardware.hardware?.credits.size === hardware.devices.length)
          expect(Math.abs(sum(Object.values(creditsOf(hardware))) - hardware.Delta_D)).toBeLessThan(1e-12);
      }),
      runs,
    );
  });

  test("a traced run gives the same numbers", () => {
    fc.assert(
      fc.property(chains, fc.constantFrom("hardware", "changes"), (chain, split) => {
        const given = { ...chain, split } as ContributionsGiven;
        expect(contributions(given, recording())).toStrictEqual(contributions(given, plain));
      }),
      runs,
    );
  });
});

describe("among the changes of the air", () => {
  test("the order of the changes does not matter, and each is the logarithm of its own ratio", () => {
    fc.assert(
      fc.property(chains, (chain) => {
        const { changes, paths, D_rho } = byChanges(chain);
        const mean = D_rho === 1 ? 1 : (D_rho - 1) / Math.log1p(D_rho - 1);
        for (const [i, { inlet, before, after }] of paths.entries()) {
          const found = changes?.[i];
          expect(found?.pressure).toBeCloseTo(mean * Math.log(before.p / inlet.p), 12);
          expect(found?.heating).toBeCloseTo(mean * Math.log(inlet.T / before.T), 12);
          expect(found?.cooling).toBeCloseTo(mean * Math.log(before.T / after.T), 12);
          expect(found?.loss).toBeCloseTo(mean * Math.log(after.p / before.p), 12);
          expect(found?.drying).toBeCloseTo(mean * Math.log(before.R_m / after.R_m), 12);
        }
      }),
      runs,
    );
  });

  test("water that condenses has a part of its own, and dry air has none", () => {
    const damp = byChanges({ ...hillClimb, w: 0.03, T_w_in: 283.15, P: 0.95 });
    expect(damp.changes?.[0]?.drying).toBeGreaterThan(0.001);
    expect(byChanges(hillClimb).changes?.[0]?.drying).toBe(0);
  });

  test("the logarithmic mean is 1 where nothing is gained, and smooth around it", () => {
    expect(logMeanRatio.compute({ D_rho: 1 })).toBe(1);
    for (const x of [1e-15, 1e-12, 1e-8, 1e-4]) {
      const D_rho = 1 + x;
      // Of the series of the logarithmic mean, 1 + x/2 - x²/12 + ….
      expect(logMeanRatio.compute({ D_rho })).toBeCloseTo(1 + (D_rho - 1) / 2 - (D_rho - 1) ** 2 / 12, 12);
    }
  });

  test("lies between the density ratio and 1, and below their mean", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.2, max: 8, noNaN: true }), (D_rho) => {
        const mean = logMeanRatio.compute({ D_rho });
        expect(mean).toBeGreaterThanOrEqual(Math.min(D_rho, 1));
        expect(mean).toBeLessThanOrEqual((D_rho + 1) / 2 + 1e-12);
      }),
      runs,
    );
  });
});

/** Every order of fitting, one device after the other, as the words say it. */
function overAllOrders(found: Contributions): Record<string, number> {
  const { devices, hardware } = found;
  const value = (set: number) =>
    hardware?.outfits.get(outfitName(thoseIn(devices, set)))?.D_rho ?? Number.NaN;
  const sums: Record<string, number> = {};
  let orders = 0;
  const fitNext = (left: readonly number[], set: number, added: readonly (readonly [number, number])[]) => {
    if (left.length === 0) {
      orders += 1;
      for (const [i, more] of added) {
        const id = devices[i] ?? "";
        sums[id] = (sums[id] ?? 0) + more;
      }
    }
    for (const i of left) {
      const next = set + 2 ** i;
      fitNext(
        left.filter((other) => other !== i),
        next,
        [...added, [i, value(next) - value(set)]],
      );
    }
  };
  fitNext([...devices.keys()], 0, []);
  return Object.fromEntries(Object.entries(sums).map(([id, total]) => [id, total / orders]));
}

describe("among the hardware", () => {
  test("engines with less fitted go by the names of what is fitted", () => {
    const namesOf = (change: Partial<ContributionsGiven>) => [
      ...(contributions({ ...hillClimb, ...change }).hardware?.outfits.keys() ?? []),
    ];
    expect(namesOf({})).toEqual(["none", "C1", "K1", "C1K1"]);
    expect(namesOf({ stages: "two", r_2: 1.5, eta_s_2: 0.7, cooler: "none" })).toEqual([
      "none",
      "C1",
      "C2",
      "C1C2",
    ]);
  });

  test("two stages with two coolers: the mean over all twenty-four orders", () => {
    fc.assert(
      fc.property(chains, (chain) => {
        const found = byHardware({
          ...chain,
          stages: "two",
          cooler: "effectiveness",
          cooler_45: "effectiveness",
        });
        if (found.hardware?.credits.size !== 4) return;
        const expected = overAllOrders(found);
        for (const [id, credit] of found.hardware.credits) expect(credit).toBeCloseTo(expected[id] ?? 0, 11);
      }),
      runs,
    );
  });

  test("a device that changes nothing gets nothing", () => {
    const idleCompressor = creditsOf(
      byHardware({ ...hillClimb, stages: "two", r_2: 1, eta_s_2: 0.7, cooler_45: "none" }),
    );
    expect(idleCompressor["C2"]).toBeCloseTo(0, 12);
    expect(idleCompressor["C1"]).toBeCloseTo(creditsOf(contributions(hillClimb))["C1"] ?? 0, 11);
    const idleCooler = creditsOf(byHardware({ ...hillClimb, P: 0, Delta_p_23: 0 }));
    expect(idleCooler["K1"]).toBeCloseTo(0, 12);
  });

  test("two ideal compressors of one ratio that only multiply get the same", () => {
    // With constant heating nothing would tell them apart; with the real heat capacity the second meets hotter air, so the
    // test takes a ratio at which the air hardly warms.
    const two = {
      ...hillClimb,
      stages: "two",
      r_1: 1.001,
      r_2: 1.001,
      cooler: "none",
      cooler_45: "none",
    } as const;
    const { C1 = 0, C2 = 1 } = creditsOf(byHardware({ ...two, eta_s: 0.7, eta_s_2: 0.7 }));
    expect(Math.abs(C1 / C2 - 1)).toBeLessThan(1e-5);
  });

  test("two coolers one after the other that exchange their data behind idle compressors exchange their credits", () => {
    const chain = {
      ...hillClimb,
      stages: "two",
      T_1: 400,
      r_1: 1,
      r_2: 1,
      eta_s_2: 0.7,
      T_w_in_45: 298.15,
      Delta_p_23: 0,
      Delta_p_45: 0,
    } as const;
    const one = creditsOf(
      byHardware({ ...chain, cooler: "effectiveness", cooler_45: "effectiveness", P: 0.5, P_45: 0.8 }),
    );
    const other = creditsOf(
      byHardware({ ...chain, cooler: "effectiveness", cooler_45: "effectiveness", P: 0.8, P_45: 0.5 }),
    );
    expect(one["K1"]).toBeCloseTo(other["K2"] ?? 0, 12);
    expect(one["K2"]).toBeCloseTo(other["K1"] ?? 0, 12);
  });

  test("of a cooler alone, the loss times its mean density goes with the power of its own flow", () => {
    fc.assert(
      fc.property(chains, (chain) => {
        const found = byHardware({ ...chain, stages: "one", cooler: "effectiveness" });
        const alone = found.hardware?.outfits.get("K1");
        const [path] = found.paths;
        if (!alone || !path) return;
        const { before, after } = path;
        const whole = ((before.rho + after.rho) / 2) * (before.p - after.p);
        const own = ((found.inlet.rho + alone.end.rho) / 2) * (found.inlet.p - alone.end.p);
        expect(Math.abs(own - whole * (alone.end.rho / after.rho) ** (chain.n_p ?? 2))).toBeLessThan(1e-5);
        expect(alone.losses.get("K1")).toBeCloseTo(found.inlet.p - alone.end.p, 4);
      }),
      runs,
    );
  });

  test("a cooler alone, without a loss, brings the inlet air towards its water", () => {
    const found = byHardware({ ...hillClimb, Delta_p_23: 0, T_w_in: 278.15 });
    const alone = found.hardware?.outfits.get("K1");
    expect(alone?.end.T).toBeCloseTo(298.15 - 0.78 * 20, 10);
    expect(alone?.end.p).toBe(98e3);
  });

  test("losses that leave hardly any flow give no credits, and a sentence", () => {
    const trace = recording();
    const found = contributions(
      { ...hillClimb, r_1: 1.5, Delta_p_23: 0.99 * 1.5 * 98e3, T_w_in: 283.15 },
      trace,
    );
    expect(found.hardware?.credits.size).toBe(0);
    expect(trace.notes.some(({ about }) => about === "Delta_D")).toBe(true);
  });
});

test("what cannot be is refused at its field", () => {
  const refused = (change: Partial<ContributionsGiven>) => {
    try {
      contributions({ ...hillClimb, ...change });
    } catch (error) {
      if (error instanceof DomainError) return error.field;
      throw error;
    }
    return "nothing";
  };
  expect(refused({ Delta_p_23: 300e3 })).toBe("Delta_p_23");
  expect(refused({ eta_s: 1.2 })).toBe("eta_s");
  expect(refused({ r_1: 0.5 })).toBe("r_1");
  expect(refused({ P: 1.2 })).toBe("P");
  expect(refused({ n_p: 3 })).toBe("n_p");
  expect(refused({ stages: "two", r_2: 11 })).toBe("r_2");
  expect(refused({ p_1: -1 })).toBe("p_1");
  // So little that a search would run out of digits.
  expect(refused({ p_1: 1e-322, Delta_p_23: 1e-322, w: 0.01 })).toBe("p_1");
});
