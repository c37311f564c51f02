import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { kinds } from "../../../../calc/quantity/kinds.ts";
import { fromSI } from "../../../../calc/quantity/units.ts";
import { barometerField } from "../../../../src/calculators/engine/barometer.ts";
import type { Field } from "../../../../src/calculators/engine/calculator.ts";
import { type Entry, readEntry, type Surroundings } from "../../../../src/calculators/engine/entry.ts";
import { stepOf, stepped } from "../../../../src/calculators/engine/step.ts";

const around: Surroundings = { system: "metric", barometer: { value: 1e5, isExample: true } };
const field = (kind: Field["kind"], start: number, limits: readonly [number, number]): Field => ({
  label: "A field",
  symbol: "x",
  kind,
  start,
  limits,
  help: "",
});
const ratio = field("ratio", 2.2, [1, 10]);
const temperature = field("temperature", 298.15, [150, 1500]);
const pressure = field("pressure", 1.5e5, [1e4, 1e6]);
const altitude = field("altitude", 110, [-430, 6000]);

const entry = (of: Field, typed: string | null, unit: string, shown = unit): Entry => ({
  typed,
  example: of.start,
  unit,
  shown,
});
const unitOfKind = (of: Field): string => kinds[of.kind].metric;
const step = (of: Field, typed: string | null, steps: number, unit = unitOfKind(of), shown = unit) =>
  stepped(of, entry(of, typed, unit, shown), around, steps);

describe("the size of a step", () => {
  test.each([
    [2.2, 0.02],
    [1, 0.01],
    [1.4, 0.01],
    [1.5, 0.02],
    [3.1, 0.02],
    [3.2, 0.05],
    [7, 0.05],
    [7.1, 0.1],
    [100, 1],
    [4e-7, 5e-9],
    [6500, 50],
  ])("of %s is %s", (size, expected) => {
    expect(stepOf(size)).toBe(expected);
  });

  test("is a hundredth within a factor of 1.5 either way, and 1, 2 or 5 in front", () => {
    fc.assert(
      fc.property(fc.double({ min: -12, max: 12, noNaN: true }), (power) => {
        const size = 10 ** power;
        const found = stepOf(size);
        expect(found / (size / 100)).toBeGreaterThan(0.63);
        expect(found / (size / 100)).toBeLessThan(1.59);
        expect(found.toExponential()).toMatch(/^[125]e/);
      }),
    );
  });
});

test.each([
  ["2.2", 1, "2.22"],
  ["2.2", -1, "2.18"],
  ["2.2", 10, "2.4"],
  ["2.2", -10, "2"],
  // Onto the steps, not past them.
  ["2.213", 1, "2.22"],
  ["2.213", -1, "2.2"],
  ["11/5", 1, "2.22"],
  ["2,2", 1, "2.22"],
])("from %s by %i to %s", (typed, steps, expected) => {
  expect(step(ratio, typed, steps)).toBe(expected);
});

test("an example is stepped from as if it were typed", () => {
  expect(step(ratio, null, 1)).toBe("2.22");
});

test.each(["", "abc", "2..2", "1/0", "3 psi", "<b>2</b>"])("“%s” cannot be stepped", (typed) => {
  expect(step(ratio, typed, 1)).toBeNull();
  expect(step(ratio, typed, -10)).toBeNull();
});

test("stops before the bound: many steps take as many as there are", () => {
  expect(step(ratio, "9.9", 10)).toBe("10");
  expect(step(ratio, "10", 1)).toBeNull();
  expect(step(ratio, "1", -1)).toBeNull();
  expect(step(ratio, "1.004", -1)).toBe("1");
});

test("from beyond a bound the way leads back only", () => {
  expect(step(ratio, "12", 1)).toBeNull();
  expect(step(ratio, "12", -1)).toBe("11.9");
  expect(step(ratio, "0.5", -1)).toBeNull();
});

describe("counts from the true zero", () => {
  test("of temperature, so that 0 °C is passed in even steps", () => {
    expect([step(temperature, "1", -1), step(temperature, "0", -1), step(temperature, "0", 1)]).toEqual([
      "0",
      "-2",
      "2",
    ]);
  });

  test("of pressure, so that a gauge is passed through its zero", () => {
    expect(step(pressure, "0", 1, "kPa-g")).toBe("1");
    expect(step(pressure, "0", -1, "kPa-g")).toBe("-1");
  });

  test("and leaves it where the quantity has none of its own", () => {
    expect(step(altitude, "0", 1)).toBe("0.1");
    expect(step(altitude, "0.1", -1)).toBe("0");
    expect(step(altitude, "0", -1)).toBe("-0.1");
    expect(step(field("altitude", 0, [-430, 6000]), "0", 1)).toBe("5");
  });
});

test("is in the unit that the field shows, whatever was typed", () => {
  expect(step(pressure, "1 atm", 1, "kPa")).toBe("102");
  expect(step(pressure, "150", 1, "kPa", "psi")).toBe("21.8");
});

test("of the barometer is stepped within what a barometer can read", () => {
  expect(stepped(barometerField, entry(barometerField, "100", "kPa"), around, 1)).toBe("101");
  expect(stepped(barometerField, entry(barometerField, "110", "kPa"), around, 1)).toBeNull();
  expect(stepped(barometerField, entry(barometerField, "5 psig", "kPa"), around, 1)).toBeNull();
});

test("whatever stands in a field, a step moves it the right way, stays within the bound, and can be read", () => {
  const anyField = fc.constantFrom(ratio, temperature, pressure, altitude);
  fc.assert(
    fc.property(
      anyField,
      fc.nat(),
      fc.double({ min: 0, max: 1, noNaN: true }),
      fc.constantFrom(1, -1, 10, -10),
      (of, pick, part, steps) => {
        const units: readonly string[] = kinds[of.kind].units;
        const unit = units[pick % units.length] ?? unitOfKind(of);
        const [least, most] = of.limits;
        const value = least + part * (most - least);
        const typed = String(fromSI(value, unit, { barometer: 1e5 }));
        const before = readEntry(of, entry(of, typed, unit), around);
        const text = step(of, typed, steps, unit);
        if (text === null || !before.ok) return;
        const after = readEntry(of, entry(of, text, unit), around);
        if (!after.ok) throw new Error(after.says);
        expect(Math.sign(after.value - before.value)).toBe(Math.sign(steps));
        const slack = 1e-9 * most;
        expect(after.value).toBeGreaterThanOrEqual(least - slack);
        expect(after.value).toBeLessThanOrEqual(most + slack);
      },
    ),
  );
});
