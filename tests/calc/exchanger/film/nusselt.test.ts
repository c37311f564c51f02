import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { exactLaminarNusselt } from "../../../../calc/exchanger/film/exact-laminar-nusselt.ts";
import { laminarNusselt } from "../../../../calc/exchanger/film/laminar-nusselt.ts";
import { nusseltOfFlow } from "../../../../calc/exchanger/film/nusselt-of-flow.ts";
import { recording } from "../../../../calc/relation/trace.ts";

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const passages = fc.record({
  Pr: number(0.7, 100),
  Nu_d: number(2.98, 7.54),
  D_h: number(0.002, 0.03),
  L: number(0.1, 3),
  k_s: fc.constantFrom(0, 2e-5),
});

describe("heat transfer in a passage", () => {
  test("grows with the flow", () => {
    fc.assert(
      fc.property(passages, number(50, 1e5), number(1.001, 2), (passage, Re, more) => {
        const slow = nusseltOfFlow({ ...passage, Re }).Nu;
        expect(nusseltOfFlow({ ...passage, Re: Re * more }).Nu).toBeGreaterThan(slow);
      }),
    );
  });

  test.each([2300, 4000])("does not step at Re %i", (Re) => {
    fc.assert(
      fc.property(passages, (passage) => {
        const beside = nusseltOfFlow({ ...passage, Re: Re * (1 + 1e-9) }).Nu;
        expect(beside / nusseltOfFlow({ ...passage, Re: Re * (1 - 1e-9) }).Nu).toBeCloseTo(1, 6);
      }),
    );
  });

  test.each([
    [2300, "laminar", []],
    [3000, "transition", ["Re"]],
    [4000, "turbulent", []],
  ] as const)("Re %i is %s", (Re, regime, about) => {
    const trace = recording();
    expect(nusseltOfFlow({ Re, Pr: 6, Nu_d: 3.66, D_h: 0.01, L: 1 }, trace).regime).toBe(regime);
    expect(trace.notes.map((note) => note.about)).toEqual(about);
  });
});

describe("laminar flow in a round tube", () => {
  test("its formula is within 1 % of the exact solution", () => {
    for (let Gz = 0.1; Gz < 10_000; Gz *= 1.1)
      expect(
        Math.abs(laminarNusselt.compute({ Nu_d: 3.66, Gz }) / exactLaminarNusselt.compute({ Gz }) - 1),
      ).toBeLessThan(0.01);
  });

  // Shah and London 1978: 3.656793 far from the entrance, and 1.6151 Gz^(1/3) - 1.2 near it, from memory.
  test("the exact solution has the limits of an endless tube and of a short one", () => {
    expect(exactLaminarNusselt.compute({ Gz: 1e-3 })).toBeCloseTo(3.6568, 3);
    const Gz = 50_000;
    expect(exactLaminarNusselt.compute({ Gz }) / (1.6151 * Math.cbrt(Gz) - 1.2)).toBeCloseTo(1, 2);
  });
});
