import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { arrangements } from "../../../calc/exchanger/arrangements.ts";
import { type RateCoolerGiven, rateCooler } from "../../../calc/exchanger/rate-cooler.ts";
import { sizeCooler } from "../../../calc/exchanger/size-cooler.ts";
import { enthalpy } from "../../../calc/fluids/enthalpy.ts";
import { waterEnthalpy } from "../../../calc/fluids/water/liquid-water.ts";
import { DomainError } from "../../../calc/quantity/domain-error.ts";
import { recording } from "../../../calc/relation/trace.ts";

const celsius = (t: number) => t + 273.15;

// A pilot boat's seawater cooler, worked out with a second program from the same published equations.
const boat = {
  UA: 3400,
  m_a: 0.85,
  T_2: celsius(190),
  coolant: "seawater",
  S: 0.035,
  m_w: 6,
  T_w_in: celsius(28),
} as const;

const rig: RateCoolerGiven = {
  arrangement: "counter-cross-2",
  UA: 560,
  m_a: 0.35,
  T_2: celsius(185),
  coolant: "water",
  p_w: 200_000,
  m_w: 0.9,
  T_w_in: celsius(22),
};

describe("the pilot boat", () => {
  test.each([
    ["counter-cross-2", 0.97623, 31.851, 136.165, 33.669, 3.949, 0.03585],
    ["parallel-cross-2", 0.95104, 35.931, 132.678, 33.524, 3.9482, 0.03586],
    ["cross-unmixed", 0.97509, 32.035, 136.007, 33.663, 3.9489, 0.03585],
  ])("%s", (arrangement, P, T_3, Q, T_w_out, NTU, R) => {
    const found = rateCooler({ ...boat, arrangement });
    expect(found.P).toBeCloseTo(P, 5);
    expect(found.T_3 - 273.15).toBeCloseTo(T_3, 3);
    expect(found.Q / 1000).toBeCloseTo(Q, 3);
    expect(found.T_w_out - 273.15).toBeCloseTo(T_w_out, 3);
    expect(found.NTU).toBeCloseTo(NTU, 4);
    expect(found.R).toBeCloseTo(R, 5);
  });

  test.each([
    ["counterflow", 31.471],
    ["cross-one-row", 33.884],
  ])("%s", (arrangement, T_3) => {
    expect(rateCooler({ ...boat, arrangement }).T_3 - 273.15).toBeCloseTo(T_3, 3);
  });

  test("with the sea valve throttled, as far as it is an exchanger", () => {
    const found = rateCooler({ ...boat, arrangement: "counter-cross-2", m_w: 0.33391 });
    // Five digits of flow leave 0.3 mK of the outlet open.
    expect(found.T_3 - 273.15).toBeCloseTo(55, 3);
    expect(found.P).toBeCloseTo(0.83333, 5);
    expect(found.Q / 1000).toBeCloseTo(116.372, 3);
    expect(found.T_w_out - 273.15).toBeCloseTo(114.688, 3);
    expect(found.NTU).toBeCloseTo(3.9443, 4);
    expect(found.R).toBeCloseTo(0.64213, 5);
  });

  test("the size for 42 °C", () => {
    const found = sizeCooler({ ...boat, arrangement: "counter-cross-2", T_3: celsius(42) });
    expect(found.UA).toBeCloseTo(2180.2, 1);
  });
});

const flows = {
  UA: fc.double({ min: 5, max: 2e4, noNaN: true }),
  m_a: fc.double({ min: 0.02, max: 5, noNaN: true }),
  m_w: fc.double({ min: 0.02, max: 20, noNaN: true }),
  T_2: fc.double({ min: celsius(60), max: celsius(230), noNaN: true }),
  T_w_in: fc.double({ min: celsius(2), max: celsius(50), noNaN: true }),
};
const anyArrangement = fc.constantFrom(...arrangements.map(({ id }) => id));
const anyRig = fc
  .record({ ...flows, arrangement: anyArrangement })
  .map((some): RateCoolerGiven => ({ ...some, coolant: "water", p_w: 2e6 }));

describe("of any cooler", () => {
  test("what the air gives off the water takes up", () => {
    fc.assert(
      fc.property(anyRig, (given) => {
        const { T_3, T_w_out, Q } = rateCooler(given);
        const { m_a = 0, m_w = 0, T_2 = 0, T_w_in = 0 } = given;
        const h = (T: number) => enthalpy.compute({ T, w: 0 });
        const h_w = (T: number) => waterEnthalpy({ T, p: 2e6 });
        expect(m_a * (h(T_2) - h(T_3))).toBeCloseTo(Q, 4);
        expect(m_w * (h_w(T_w_out) - h_w(T_w_in))).toBeCloseTo(Q, 4);
      }),
    );
  });

  test("both outlets lie between the inlets, and effectiveness below what the arrangement can do", () => {
    fc.assert(
      fc.property(anyRig, (given) => {
        const { T_3, T_w_out, P, P_most, epsilon } = rateCooler(given);
        const { T_2 = 0, T_w_in = 0 } = given;
        for (const T of [T_3, T_w_out]) {
          expect(T).toBeGreaterThanOrEqual(T_w_in - 1e-9);
          expect(T).toBeLessThanOrEqual(T_2 + 1e-9);
        }
        expect(P).toBeLessThanOrEqual(P_most + 1e-9);
        expect(epsilon).toBeLessThanOrEqual(1 + 1e-12);
      }),
    );
  });

  test("its size follows from its outlet again, where it is not past its best", () => {
    fc.assert(
      fc.property(anyRig, (given) => {
        const rated = rateCooler(given);
        const { UA = 0 } = given;
        // Near the limit a hair of temperature is a mile of size.
        fc.pre(rated.P < 0.97 * rated.P_most && (rated.UA_most === undefined || UA < rated.UA_most));
        const sized = sizeCooler({ ...given, T_3: rated.T_3 });
        expect(sized.UA / UA).toBeCloseTo(1, 6);
        expect(sized.T_w_out).toBeCloseTo(rated.T_w_out, 6);
      }),
    );
  });

  test("recorded, it gives the same numbers", () => {
    fc.assert(
      fc.property(anyRig, (given) => {
        expect(rateCooler(given, recording())).toEqual(rateCooler(given));
      }),
      { numRuns: 20 },
    );
  });
});

test("water may warm the air", () => {
  const found = rateCooler({ ...rig, T_2: celsius(5), T_w_in: celsius(40) });
  expect(found.T_3).toBeGreaterThan(celsius(5));
  expect(found.T_3).toBeLessThan(celsius(40));
  expect(found.Q).toBeLessThan(0);
  expect(found.P).toBeGreaterThan(0);
});

test("a liquid that does not freeze may be colder than water, and seawater a little", () => {
  const brine = rateCooler({ ...rig, coolant: "stated", c: 3500, T_w_in: celsius(-20) });
  expect(brine.T_3).toBeLessThan(rateCooler({ ...rig, coolant: "stated", c: 3500 }).T_3);
  expect(rateCooler({ ...rig, coolant: "seawater", S: 0.035, T_w_in: celsius(-1) }).T_3).toBeGreaterThan(
    celsius(-1),
  );
});

test("litres at the inlet are the same water", () => {
  const found = rateCooler({ ...rig, flow: "volume", V_w: 0.9 / 997.77 });
  expect(found.T_3).toBeCloseTo(rateCooler(rig).T_3, 2);
});

describe("it notes", () => {
  const notes = (given: RateCoolerGiven) => {
    const trace = recording();
    const found = rateCooler(given, trace);
    return { found, notes: trace.notes };
  };

  test("a size past the best of swapped hoses, with the best size", () => {
    const { found, notes: said } = notes({ ...rig, arrangement: "parallel-cross-2", UA: 4000, m_w: 0.1 });
    const note = said.find(({ about }) => about === "UA");
    expect(note?.limit?.value).toBeCloseTo(found.UA_most ?? 0, 6);
    const better = rateCooler({ ...rig, arrangement: "parallel-cross-2", UA: found.UA_most, m_w: 0.1 });
    expect(better.T_3).toBeLessThan(found.T_3);
  });

  test("the same where the effectiveness rises again far beyond, as in swapped hoses with channels kept in order", () => {
    const swapped = {
      ...rig,
      arrangement: "parallel-cross-2-rows-identical",
      coolant: "stated",
      c: 4200,
      m_w: 0.17,
    } as const;
    const { found, notes: said } = notes({ ...swapped, UA: 2500 });
    expect(found.P_most).toBeCloseTo(1, 6);
    expect(said.find(({ about }) => about === "UA")?.limit?.value).toBeCloseTo(found.UA_most ?? 0, 6);
    // A size for what the first rise reaches is on the first rise.
    const best = rateCooler({ ...swapped, UA: found.UA_most });
    expect(sizeCooler({ ...swapped, T_3: best.T_3 + 0.05 }).UA).toBeLessThan(found.UA_most ?? 0);
  });

  test("water that would boil, with the boiling temperature", () => {
    const { notes: said } = notes({ ...rig, m_w: 0.05, p_w: 110_000 });
    const note = said.find(({ about }) => about === "T_w_out");
    // Steam tables: 102.3 °C at 1.1 bar, from memory.
    expect((note?.limit?.value ?? 0) - 273.15).toBeCloseTo(102.3, 1);
  });

  test("seawater that would boil, and hot water that would boil before it enters", () => {
    const salt = { ...rig, coolant: "seawater", S: 0.035, m_w: 0.05, p_w: 110_000 } as const;
    expect(notes(salt).notes.some(({ about }) => about === "T_w_out")).toBe(true);
    const warming = { ...rig, T_2: celsius(20), T_w_in: celsius(150), p_w: 200_000 };
    expect(notes(warming).notes.some(({ about, limit }) => about === "T_w_in" && limit)).toBe(true);
  });

  test("one of many channels that would boil while the mean of them would not", () => {
    const many = { ...rig, arrangement: "cross-unmixed", UA: 1775, m_w: 0.17 };
    const { found, notes: said } = notes(many);
    const note = said.find(({ about }) => about === "T_w_out");
    expect(found.Delta_T_sat).toBeGreaterThan(0);
    // The channel along the hot face meets air that is as hot as at the inlet all the way.
    const hottest = celsius(22) + 163 * (1 - Math.exp(-found.R * found.NTU));
    expect(note?.limit?.value).toBeLessThan(hottest);
    expect(note?.limit?.value).toBeGreaterThan(hottest - 5);
    expect(
      notes({ ...many, arrangement: "cross-one-row" }).notes.some(({ about }) => about === "T_w_out"),
    ).toBe(false);
  });

  test("walls that may be wet while the air on average is not", () => {
    const { found, notes: said } = notes({ ...rig, w: 0.02, p_2: 260_000 });
    const note = said.find(({ about }) => about === "T_3");
    expect(note?.limit?.value).toBeLessThan(found.T_3);
    expect(note?.limit?.value).toBeGreaterThan(celsius(22));
  });

  test("air that leaves below its dew point", () => {
    const { notes: said } = notes({ ...rig, UA: 3000, w: 0.02, p_2: 300_000 });
    expect(said.some(({ about }) => about === "T_3")).toBe(true);
    const { notes: ofDry } = notes({ ...rig, UA: 3000, w: 0.002, p_2: 120_000 });
    expect(ofDry.some(({ about }) => about === "T_3")).toBe(false);
  });
});

const refusal = (run: () => unknown): DomainError => {
  try {
    run();
  } catch (error) {
    if (error instanceof DomainError) return error;
    throw error;
  }
  throw new Error("nothing was refused");
};

describe("it refuses, and names the bound", () => {
  test.each([
    ["no air flow", { m_a: 0 }, "m_a", 0],
    ["no water flow", { m_w: 0 }, "m_w", 0],
    ["no size", { UA: 0 }, "UA", 0],
    ["more than any cooler", { UA: 1e6, m_a: 0.01 }, "UA", undefined],
    ["frozen water", { T_w_in: celsius(-1) }, "T_w_in", celsius(0)],
    ["hardly any water", { m_w: 1e-5, coolant: "stated", c: 4200 }, "m_w", undefined],
    ["air and water equally warm", { T_w_in: celsius(185) }, "T_w_in", celsius(185)],
  ] as const)("%s", (_, change, field, bound) => {
    const error = refusal(() => rateCooler({ ...rig, ...change }));
    expect(error.field).toBe(field);
    if (bound !== undefined) expect(error.limit?.value).toBeCloseTo(bound, 9);
    // Just within the bound that was named, it is accepted.
    else
      rateCooler({ ...rig, ...change, [field]: (error.limit?.value ?? 0) * (field === "UA" ? 0.99 : 1.01) });
  });

  test("an outlet below the water", () => {
    const error = refusal(() => sizeCooler({ ...rig, T_3: celsius(20) }));
    expect([error.field, error.limit?.value]).toEqual(["T_3", celsius(22)]);
  });

  test("an outlet that is no cooling", () => {
    const error = refusal(() => sizeCooler({ ...rig, T_3: celsius(190) }));
    expect([error.field, error.limit?.value]).toEqual(["T_3", celsius(185)]);
  });

  test("an outlet that no size reaches, with the best there is", () => {
    const swapped = { ...rig, arrangement: "parallel-cross-2", m_w: 0.15 };
    const error = refusal(() => sizeCooler({ ...swapped, T_3: celsius(50) }));
    expect(error.field).toBe("T_3");
    const best = error.limit?.value ?? 0;
    // A scan over sizes finds nothing colder, and comes as near.
    const scanned = Math.min(
      ...Array.from({ length: 400 }, (_, i) => rateCooler({ ...swapped, UA: 20 * (i + 1) }).T_3),
    );
    expect(scanned).toBeGreaterThanOrEqual(best - 1e-9);
    expect(scanned - best).toBeLessThan(0.01);
  });

  test("water that would have to leave hotter than the air enters, with the least flow", () => {
    const error = refusal(() => sizeCooler({ ...rig, m_w: 0.01, T_3: celsius(60) }));
    expect(error.field).toBe("m_w");
    const least = error.limit?.value ?? 0;
    const { T_w_out } = sizeCooler({
      ...rig,
      arrangement: "counterflow",
      m_w: least * 1.02,
      T_3: celsius(60),
    });
    expect(T_w_out).toBeLessThan(celsius(185));
    expect(T_w_out).toBeGreaterThan(celsius(180));
  });

  test("the best outlet does not depend on the one wanted, nor pass the water, where both streams are alike", () => {
    const alike = { ...rig, arrangement: "cross-unmixed", m_w: 0.0858, p_w: 2e6 };
    const bests = [60, 100, 165].map((t) => sizeCooler({ ...alike, T_3: celsius(t) }).T_3_best);
    for (const best of bests) expect(best).toBeCloseTo(bests[0] ?? 0, 6);
    expect(bests[0]).toBeGreaterThan(celsius(22));
    expect(rateCooler({ ...alike, UA: 300_000 }).T_3).toBeGreaterThanOrEqual((bests[0] ?? 0) - 1e-6);
  });

  test("an outlet that takes more than any cooler, at the outlet", () => {
    const error = refusal(() =>
      sizeCooler({
        ...rig,
        arrangement: "cross-unmixed",
        coolant: "stated",
        c: 4200,
        m_w: 0.088,
        T_2: 600,
        T_3: 295.5,
      }),
    );
    expect([error.field, error.limit?.kind]).toEqual(["T_3", "temperature"]);
  });

  test("nothing where air is hotter than liquid water can be: the water boils, and that is noted", () => {
    const trace = recording();
    rateCooler({ ...rig, T_2: celsius(340), m_w: 0.03, UA: 5000 }, trace);
    expect(trace.notes.some(({ about }) => about === "T_w_out")).toBe(true);
    const error = refusal(() => sizeCooler({ ...rig, T_2: celsius(500), m_w: 0.02, T_3: celsius(50) }));
    expect(error.field).toBe("m_w");
  });

  test("the same of litres in litres", () => {
    const error = refusal(() => sizeCooler({ ...rig, flow: "volume", V_w: 1e-5, T_3: celsius(60) }));
    expect([error.field, error.limit?.kind]).toEqual(["V_w", "liquidFlow"]);
  });
});
