import fc from "fast-check";
import { unit as mathjsUnit } from "mathjs";
import { describe, expect, it, test } from "vitest";
import { isUnitOf, type Kind, type KindInfo, kinds } from "../../../calc/quantity/kinds.ts";
import { type Reading, readQuantity } from "../../../calc/quantity/read.ts";
import { fromSI, toSI, unitOf, units } from "../../../calc/quantity/units.ts";
import { writePlain, writeQuantity } from "../../../calc/quantity/write.ts";

const numRuns = Number(process.env.FAST_CHECK_RUNS ?? 200);
const context = { barometer: 99e3 };
const everyKind = Object.entries<KindInfo>(kinds) as [Kind, KindInfo][];
const everyField = everyKind.flatMap(([kind, info]) => info.units.map((unit) => [kind, unit] as const));

const numberOf = (reading: Reading) => {
  if (!reading.ok) throw new Error(reading.says);
  return [reading.number, reading.unit] as const;
};
const refusal = (text: string, kind: Kind, unit: string, around: { barometer?: number } = context) => {
  const reading = readQuantity(text, kind, unit, around);
  return reading.ok ? `read as ${reading.number} ${reading.unit}` : reading.says;
};

describe("numbers", () => {
  test.each([
    ["99", 99],
    [" 99. ", 99],
    [".5", 0.5],
    ["+3", 3],
    ["-3", -3],
    ["\u22123", -3],
    ["\u20133", -3],
    ["- 3", -3],
    ["1 200", 1200],
    ["1\u202f200.5", 1200.5],
    ["12’500", 12500],
    ["1.2e3", 1200],
    ["1.2E\u22123", 0.0012],
    ["1.2×10^3", 1200],
    ["1.2 x 10^-5", 1.2e-5],
    ["1.2 × 10⁻⁵", 1.2e-5],
    ["1,200", 1200],
    ["1,200.5", 1200.5],
    ["1.200,5", 1200.5],
    ["1.200.000", 1200000],
    ["0,35", 0.35],
    ["0,350", 0.35],
    ["12,5", 12.5],
    ["-0", 0],
    ["0 ", 0],
  ])("%s is %d", (text, number) => {
    expect(numberOf(readQuantity(text, "ratio", "1"))).toEqual([number, "1"]);
  });

  test.each([
    ["1,200", "Read as 1200 kg/s."],
    ["0,35", "Read as 0.35 kg/s."],
    ["1.200.000", "Read as 1200000 kg/s."],
  ])("says how it took %s", (text, understood) => {
    expect(readQuantity(text, "massFlow", "kg/s")).toMatchObject({ understood });
  });

  it("says nothing where there is no doubt", () => {
    for (const text of ["99", "99 kPa", "1 200", "15 psi gauge"])
      expect(readQuantity(text, "pressure", "kPa", context)).not.toHaveProperty("understood");
  });

  test.each([
    "NaN",
    "Infinity",
    "-Infinity",
    "∞",
    "0x1F",
    "0b1",
    "abc",
    "1,2,3",
    "1 2",
    "1.2.3",
    "1,20,000",
    "1.2e3.4",
    ".",
    "-",
    "e5",
    "__proto__",
    "null",
    "kPa",
    "½",
  ])("%s is not a number", (text) => {
    expect(refusal(text, "ratio", "1")).toBe(
      `“${text}” is not a number. This field takes a plain number, without a unit.`,
    );
  });

  it("refuses what is empty, too long, too large or too small", () => {
    expect(refusal("  ", "massFlow", "kg/s")).toBe(
      "Nothing is entered. This field takes mass flow, in kg/s, kg/min, kg/h, g/s, lb/min or lb/h.",
    );
    expect(refusal("1".repeat(201), "ratio", "1")).toBe(
      "The text is 201 characters long. At most 200 are accepted.",
    );
    expect(numberOf(readQuantity("1".repeat(200), "ratio", "1"))[0]).toBeGreaterThan(1e199);
    expect(refusal("1e999", "ratio", "1")).toMatch(/^“1e999” is too large to compute with\. /);
    expect(refusal("-1e308", "gaugePressure", "MPa")).toMatch(/^“-1e308” is too large to compute with\. /);
    expect(refusal("1e-999", "ratio", "1")).toMatch(/^“1e-999” is too close to zero to compute with\. /);
  });
});

describe("units", () => {
  test.each<[string, Kind, number, string]>([
    ["99.0 kPa", "pressure", 99, "kPa"],
    ["15 psig", "pressure", 15, "psi-g"],
    ["15 psi gauge", "pressure", 15, "psi-g"],
    ["15 PSI gage", "pressure", 15, "psi-g"],
    ["15 psi abs", "pressure", 15, "psi"],
    ["15 psia", "pressure", 15, "psi"],
    ["2.2 bar gauge", "pressure", 2.2, "bar-g"],
    ["2.2 barg", "pressure", 2.2, "bar-g"],
    ["2.2 bar(g)", "pressure", 2.2, "bar-g"],
    ["2.2bara", "pressure", 2.2, "bar"],
    ["29.92 inHg", "pressure", 29.92, "inHg"],
    ["29.92 in. Hg", "pressure", 29.92, "inHg"],
    ["1013 hPa", "pressure", 1013, "mbar"],
    ["0.3 MPa", "pressure", 0.3, "MPa"],
    ["0 bar gauge", "pressure", 0, "bar-g"],
    ["10 in H₂O", "pressureDifference", 10, "inH2O"],
    ["8 psi", "gaugePressure", 8, "psi"],
    ["8 psig", "gaugePressure", 8, "psi"],
    ["75 °F", "temperature", 75, "degF"],
    ["75 ºf", "temperature", 75, "degF"],
    ["75 F", "temperature", 75, "degF"],
    ["75 C", "temperature", 75, "degC"],
    ["75℃", "temperature", 75, "degC"],
    ["75 deg C", "temperature", 75, "degC"],
    ["298 K", "temperature", 298, "K"],
    ["10 °C", "temperatureDifference", 10, "K"],
    ["18 °F", "temperatureDifference", 18, "degF-d"],
    ["18 degF", "temperatureDifference", 18, "degF-d"],
    ["55 %", "fraction", 55, "%"],
    ["55%", "fraction", 55, "%"],
    ["0.3 m³/s", "volumeFlow", 0.3, "m3/s"],
    ["0.3 m^3/s", "volumeFlow", 0.3, "m3/s"],
    ["600 cfm", "volumeFlow", 600, "ft3/min"],
    ["20 gpm", "volumeFlow", 20, "gal/min"],
    ["40 lb/min", "massFlow", 40, "lb/min"],
    ["40 lbs/min", "massFlow", 40, "lb/min"],
    ["5.7 L", "volume", 5.7, "L"],
    ["1998 cc", "volume", 1998, "cm3"],
    ["350 ci", "volume", 350, "in3"],
    ["350 cu in", "volume", 350, "in3"],
    ["350 in³", "volume", 350, "in3"],
    ["6000 rpm", "rotationalSpeed", 6000, "rev/min"],
    ["6000 rev/min", "rotationalSpeed", 6000, "rev/min"],
    ["600 hp", "power", 600, "hp"],
    ["600 PS", "power", 600, "PS"],
    ["450 kW", "power", 450, "kW"],
    ["0.35 lb/hp/h", "specificFuel", 0.35, "lb/(hp h)"],
    ["0.35 LBS/HP-HR", "specificFuel", 0.35, "lb/(hp h)"],
    ["18 μPa·s", "viscosity", 18, "uPa s"],
    ["5000 feet", "altitude", 5000, "ft"],
  ])("%s as %s is %d %s, whatever the field shows", (text, kind, number, unit) => {
    for (const shown of kinds[kind].units)
      if (!unitOf(shown).gauge)
        expect(numberOf(readQuantity(text, kind, shown, context))).toEqual([number, unit]);
  });

  test.each(everyField)("a field of %s reads every spelling of %s", (kind, id) => {
    const { label, names, gauge } = unitOf(id);
    for (const name of [id, label, label.toUpperCase(), ...names]) {
      // Only the case of the first letter tells MPa from mPa, and K is what a difference in °R is counted in.
      if (!label || (name !== label && /^m(pa|w|j|bar)/i.test(name) && name[0] !== label[0])) continue;
      if (id.endsWith("-d") && name === id) continue;
      const [number, unit] = numberOf(readQuantity(`300 ${name}`, kind, id, context));
      expect([number, unit, gauge]).toEqual([300, id, unitOf(unit).gauge]);
    }
  });

  it("counts a bare unit of pressure as its field does, and says so", () => {
    expect(readQuantity("15 psi", "pressure", "kPa", context)).toMatchObject({
      unit: "psi",
      understood: "Read as 15 psi absolute.",
    });
    expect(readQuantity("15 psi", "pressure", "kPa-g", context)).toMatchObject({
      unit: "psi-g",
      understood: "Read as 15 psi gauge.",
    });
    expect(readQuantity("129 kPa abs", "gaugePressure", "kPa", context)).toMatchObject({
      value: 30e3,
      number: 30,
      unit: "kPa",
      understood: "Read as 129 kPa absolute, so 30 kPa gauge.",
    });
  });

  test.each<[string, Kind, string, string]>([
    [
      "3 furlong",
      "massFlow",
      "kg/s",
      "“furlong” is not a unit known here. This field takes mass flow, in kg/s, kg/min, kg/h, g/s, lb/min or lb/h.",
    ],
    [
      "75 °C",
      "pressure",
      "kPa",
      "°C is a unit of temperature. This field takes pressure, in kPa, kPa gauge, bar, bar gauge, psi or psi gauge.",
    ],
    [
      "15 psig",
      "temperature",
      "degC",
      "psi is a unit of pressure. This field takes temperature, in °C, °F, K or °R.",
    ],
    ["55 %", "ratio", "1", "% is a unit of fraction. This field takes a plain number, without a unit."],
    ["2 kg", "fraction", "1", "kg is a unit of mass. This field takes fraction, as a plain number or in %."],
    [
      "15 psig",
      "pressureDifference",
      "kPa",
      "“psig” says what a pressure counts from, and a difference counts from nothing. This field takes pressure " +
        "difference, in kPa, bar, psi, inHg (0 °C), inH₂O (4 °C) or mbar.",
    ],
    [
      "5 mPa",
      "gaugePressure",
      "kPa",
      "“mPa” is not a unit known here. This field takes gauge pressure, in kPa, bar, psi, inHg (0 °C), inH₂O (4 °C) " +
        "or mbar.",
    ],
  ])("refuses %s as %s", (text, kind, unit, says) => {
    expect(refusal(text, kind, unit)).toBe(says);
  });

  test.each(["__proto__", "constructor", "toString", "hasOwnProperty", "valueOf"])(
    "5 %s has no unit",
    (name) => {
      for (const [kind, unit] of everyField)
        expect(refusal(`5 ${name}`, kind, unit)).toMatch(/not a unit known here/);
    },
  );
});

describe("what cannot exist", () => {
  test.each<[string, Kind, string, string]>([
    ["-300", "temperature", "degC", "−300 °C is below absolute zero. −273.15 °C and above is accepted."],
    ["-1 K", "temperature", "degC", "−1 K is below absolute zero. 0 K and above is accepted."],
    ["-460", "temperature", "degF", "−460 °F is below absolute zero. −459.67 °F and above is accepted."],
    [
      "-120 kPa gauge",
      "pressure",
      "kPa",
      "−120 kPa gauge is below a perfect vacuum: the barometer is 99 kPa. A gauge pressure above −99 kPa is accepted.",
    ],
    [
      "-120",
      "gaugePressure",
      "kPa",
      "−120 kPa gauge is below a perfect vacuum: the barometer is 99 kPa. A gauge pressure above −99 kPa is accepted.",
    ],
    [
      "-3 kPa",
      "pressure",
      "kPa",
      "−3 kPa is below a perfect vacuum. An absolute pressure above zero is accepted, or a reading from the " +
        "barometer typed as −3 kPa gauge.",
    ],
    [
      "0",
      "pressure",
      "kPa",
      "0 kPa is at a perfect vacuum. An absolute pressure above zero is accepted, or a reading from the barometer " +
        "typed as 0 kPa gauge.",
    ],
  ])("refuses %s as %s in %s", (text, kind, unit, says) => {
    expect(refusal(text, kind, unit)).toBe(says);
  });

  it("takes absolute zero itself, a vacuum reading, and negative differences", () => {
    expect(readQuantity("-273.15", "temperature", "degC")).toMatchObject({ value: 0 });
    expect(readQuantity("-459.67 °F", "temperature", "degC")).toMatchObject({ value: 0 });
    expect(readQuantity("-30 kPa gauge", "pressure", "kPa", context)).toMatchObject({ value: 69e3 });
    expect(readQuantity("-3", "pressureDifference", "kPa")).toMatchObject({ value: -3e3 });
    expect(readQuantity("-3 °C", "temperatureDifference", "K")).toMatchObject({ value: -3 });
  });

  it("asks for the barometer where a gauge reading needs it, and only there", () => {
    const says =
      "A gauge pressure counts from the barometer, and the barometer is not set. Set it, or give an absolute pressure.";
    expect(refusal("15 psig", "pressure", "kPa", {})).toBe(says);
    expect(refusal("15", "pressure", "psi-g", {})).toBe(says);
    expect(refusal("30 psia", "gaugePressure", "kPa", {})).toBe(says);
    expect(readQuantity("15 psia", "pressure", "psi-g", {}).ok).toBe(true);
    expect(readQuantity("15", "gaugePressure", "psi", {}).ok).toBe(true);
  });
});

describe("any text in any field", () => {
  const pieces = fc.constantFrom(
    ..."0123456789.,-+−±×*/^()%°' eExX".split(""),
    "10",
    "e9",
    "⁻⁵",
    "gauge",
    "abs",
    "g",
    "a",
    "__proto__",
    "NaN",
    "Infinity",
    "\u202f",
    "\u0000",
    "\ud800",
    ...Object.values(units).flatMap((u) => [u.id, u.label, ...u.names]),
  );
  const text = fc.oneof(
    fc.string({ unit: "binary", maxLength: 220 }),
    fc.array(pieces, { maxLength: 8 }).map((parts) => parts.join("")),
    fc.tuple(fc.double(), pieces, pieces).map(([x, a, b]) => `${x}${a}${b}`),
  );

  it("gives a finite value or a sentence", () => {
    const barometer = fc.option(fc.double({ min: 3e4, max: 1.1e5, noNaN: true }), { nil: undefined });
    fc.assert(
      fc.property(text, fc.constantFrom(...everyField), barometer, (typed, [kind, unit], p) => {
        const reading = readQuantity(typed, kind, unit, { barometer: p });
        if (reading.ok) {
          expect(Number.isFinite(reading.value) && Number.isFinite(reading.number)).toBe(true);
          expect(isUnitOf(kind, reading.unit)).toBe(true);
          expect(reading.understood ?? "Read as 1.").toMatch(/^Read as .+\.$/);
          if (kind === "pressure") expect(reading.value).toBeGreaterThan(0);
          if (kind === "temperature") expect(reading.value).toBeGreaterThanOrEqual(0);
        } else {
          expect(reading.says).toMatch(/^\S.{15,400}\.$/u);
          // Quoted text aside, no sentence shows a number that is none.
          expect(reading.says.replace(/“.*?”/gsu, "")).not.toMatch(/NaN|Infinity|undefined|null/);
        }
      }),
      { numRuns: numRuns * 10 },
    );
  });

  it("takes little time for hostile text", () => {
    const start = performance.now();
    for (const piece of ["1 ", "1,", "1.", "-", " ", "1e", "×10^1", "a/", "(", "1’"])
      for (const [kind, unit] of everyField)
        readQuantity(piece.repeat(200).slice(0, 200), kind, unit, context);
    expect(performance.now() - start).toBeLessThan(5000);
  });
});

describe("reading and writing", () => {
  const sane = fc.double({ min: 1e-9, max: 1e9, noNaN: true });

  test.each(everyField)("%s in %s comes back as it was written", (kind, unit) => {
    fc.assert(
      fc.property(sane, fc.integer({ min: 1, max: 15 }), (number, digits) => {
        const value = toSI(number, unit, context);
        const shown = Number(fromSI(value, unit, context).toPrecision(digits)) + 0;
        const written = readQuantity(writeQuantity(value, unit, context, digits), kind, unit, context);
        expect(numberOf(written)).toEqual([shown, unit]);
        const plain = writePlain(number);
        expect(numberOf(readQuantity(plain, kind, unit, context))).toEqual([Number(plain), unit]);
      }),
      { numRuns: Math.ceil(numRuns / 10) },
    );
  });

  it("agrees with mathjs on the texts that both read", () => {
    const both = fc.constantFrom<[Kind, string, string]>(
      ["pressure", "kPa", "Pa"],
      ["pressure", "psi", "Pa"],
      ["pressure", "bar", "Pa"],
      ["temperature", "degC", "K"],
      ["temperature", "degF", "K"],
      ["power", "hp", "W"],
      ["power", "kW", "W"],
      ["massFlow", "kg/s", "kg/s"],
      ["density", "kg/m^3", "kg/m^3"],
      ["volume", "L", "m^3"],
      ["volume", "in^3", "m^3"],
      ["altitude", "ft", "m"],
      ["speed", "km/h", "m/s"],
      ["specificEnergy", "kJ/kg", "J/kg"],
      ["specificHeat", "kJ/(kg K)", "J/(kg K)"],
      ["specificFuel", "lb/(hp h)", "kg/J"],
    );
    fc.assert(
      fc.property(sane, both, (number, [kind, name, si]) => {
        const reading = readQuantity(`${number} ${name}`, kind, kinds[kind].si);
        const oracle = mathjsUnit(`${number} ${name}`).toNumber(si);
        expect(reading.ok && Math.abs(reading.value / oracle - 1)).toBeLessThan(1e-9);
      }),
      { numRuns },
    );
  });
});
