import fc from "fast-check";
import { describe, expect, it, test } from "vitest";
import { writeBound, writeNumber, writePlain, writeQuantity } from "../../../calc/quantity/write.ts";

const numRuns = Number(process.env.FAST_CHECK_RUNS ?? 200);
const finite = fc.double({ noNaN: true, min: -1e308, max: 1e308 });

describe("writeNumber", () => {
  test.each([
    [0, 4, "0"],
    [-0, 4, "0"],
    [99, 4, "99.00"],
    [99, 3, "99.0"],
    [101.325, 4, "101.3"],
    [-40, 3, "−40.0"],
    [9999.4, 4, "9999"],
    [9999.6, 4, "10\u202f000"],
    [12345.6, 6, "12\u202f345.6"],
    [12345.6789, 9, "12\u202f345.6789"],
    [123456, 3, "123\u202f000"],
    [999999.6, 4, "1.000\u00a0×\u00a010⁶"],
    [0.001, 2, "0.0010"],
    [0.0009999, 2, "0.0010"],
    [-0.000018, 2, "−1.8\u00a0×\u00a010⁻⁵"],
    [1.5e-12, 2, "1.5\u00a0×\u00a010⁻¹²"],
  ])("writes %d in %d figures as %s", (x, digits, text) => {
    expect(writeNumber(x, digits)).toBe(text);
  });

  it("says what toPrecision says, in another dress", () => {
    fc.assert(
      fc.property(finite, fc.integer({ min: 1, max: 15 }), (x, digits) => {
        const [mantissa = "", power = ""] = writeNumber(x, digits).split("\u00a0×\u00a010");
        const ascii = (s: string) =>
          s
            .replaceAll("\u202f", "")
            .replace(/[−⁻]/, "-")
            .replace(/[⁰¹²³⁴-⁹]/g, (c) => String("⁰¹²³⁴⁵⁶⁷⁸⁹".indexOf(c)));
        expect(Number(`${ascii(mantissa)}e${ascii(power) || 0}`)).toBe(Number(x.toPrecision(digits)) + 0);
      }),
      { numRuns },
    );
  });

  test.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])("refuses %d", (x) => {
    expect(() => writeNumber(x)).toThrow(RangeError);
    expect(() => writePlain(x)).toThrow(RangeError);
  });
});

describe("writeQuantity", () => {
  test.each([
    [99e3, "kPa", 3, "99.0\u00a0kPa"],
    [298.15, "degC", 3, "25.0\u00a0°C"],
    [0.55, "%", 2, "55\u00a0%"],
    [Math.PI / 2, "deg", 2, "90°"],
    [2.249, "1", 4, "2.249"],
    [129e3, "kPa-g", 3, "30.0\u00a0kPa gauge"],
  ])("writes %d in %s as %s figures: %s", (value, unit, digits, text) => {
    expect(writeQuantity(value, unit, { barometer: 99e3 }, digits)).toBe(text);
  });
});

describe("writePlain", () => {
  test.each([
    [99, "99"],
    [0.74, "0.74"],
    [0.1 + 0.2, "0.3"],
    [101325, "101325"],
    [14.358736038, "14.359"],
    [-273.15, "-273.15"],
    [-0, "0"],
  ])("writes %d as %s", (x, text) => {
    expect(writePlain(x)).toBe(text);
  });

  it("reads back as the same text, and lies close to the number", () => {
    fc.assert(
      fc.property(finite, (x) => {
        const text = writePlain(x);
        expect(writePlain(Number(text))).toBe(text);
        // A number near the end of the doubles has fewer than five figures of its own.
        if (Math.abs(x) > 1e-300) expect(Math.abs(Number(text) / x - 1)).toBeLessThanOrEqual(5e-5);
      }),
      { numRuns },
    );
  });
});

describe("writeBound", () => {
  it("rounds to the side that is accepted", () => {
    expect(writeBound(1.5789377, "kg/s", {}, 6, "most")).toBe("1.57893\u00a0kg/s");
    expect(writeBound(1.5789321, "kg/s", {}, 6, "least")).toBe("1.57894\u00a0kg/s");
    expect(writeBound(223.15, "degC", {}, 6, "least")).toBe("\u221250\u00a0°C");
    expect(writeBound(223.15, "degC", {}, 6, "most")).toBe("\u221250\u00a0°C");
    expect(writeBound(0, "kPa", {}, 6, "most")).toBe("0\u00a0kPa");
  });

  it("is never past the bound by more than the last bits, and within a figure of it", () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-3, max: 9e5, noNaN: true }), (x) => {
        const read = (text: string) => Number(text.replace(/\u00a0.*|\u202f/g, ""));
        const [least, most] = (["least", "most"] as const).map((side) =>
          read(writeBound(x, "m", {}, 6, side)),
        ) as [number, number];
        expect(least).toBeGreaterThanOrEqual(x * (1 - 1e-11));
        expect(most).toBeLessThanOrEqual(x * (1 + 1e-11));
        expect(least - most).toBeLessThanOrEqual(x * 2.1e-5);
      }),
      { numRuns },
    );
  });
});
