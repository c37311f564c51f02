import { describe, expect, test } from "vitest";
import { symbols } from "../../calc/symbols.ts";
import { narrow } from "../../src/calculators/engine/narrow.ts";
import { calculator } from "../../src/components/calculators.ts";
import { quantities } from "../../src/components/quantities.ts";
import { numbersAsked, takesAndGives } from "../../src/components/takes-and-gives.ts";
import { quickAnswers } from "./every-quick.ts";

const workers = quickAnswers.map(({ id, calculator: whole, view }) => ({
  href: id,
  text: view.title,
  calculator: narrow(whole, view),
}));
const ways = takesAndGives(workers);
const place = (name: string) => quantities.findIndex((one) => one.name === name);

test("quantities are known symbols, each of one quantity only", () => {
  const all = quantities.flatMap((one) => one.symbols);
  expect(all.filter((symbol) => !Object.hasOwn(symbols, symbol))).toEqual([]);
  expect(new Set(all).size).toBe(all.length);
});

test("every quick answer but the converter is found by something", () => {
  const found = new Set(
    Object.values(ways)
      .flat()
      .map(({ href }) => href),
  );
  const unfound = quickAnswers.map(({ id }) => id).filter((id) => !found.has(id));
  expect(unfound).toEqual(["units"]);
});

describe("how many numbers are asked for", () => {
  test("those in sight with the choices that the two need", () => {
    expect(numbersAsked(calculator("power-air"), "W_e", "m_found")).toBe(4);
    expect(numbersAsked(calculator("boost-ratio"), "p_g", "r_found")).toBe(3);
    // A loss in the cooler is asked for only where the gauge stands behind it.
    expect(numbersAsked(calculator("boost-ratio"), "Delta_p_23", "r_found")).toBe(4);
  });

  test("none where no choices show both", () => {
    expect(numbersAsked(calculator("power-air"), "m_da", "m_found")).toBeNull();
    expect(numbersAsked(calculator("boost-ratio"), "r", "r_found")).toBeNull();
  });
});

test("the boost that is had gives the ratio that is wanted, and the other way round", () => {
  const [boost, ratio] = [place("boost on the gauge"), place("pressure ratio")];
  expect(ways[`${boost} ${ratio}`]).toEqual([
    { href: "boost-ratio", text: "Boost and pressure ratio", more: 2 },
  ]);
  expect(ways[`${ratio} ${boost}`]?.map(({ href }) => href)).toEqual(["boost-ratio"]);
});

test("of two pages over one calculator the first one counts", () => {
  const twice = takesAndGives([...workers, ...workers.map((one) => ({ ...one, href: `${one.href} again` }))]);
  expect(twice).toEqual(ways);
});
