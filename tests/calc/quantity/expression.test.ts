import { readFileSync } from "node:fs";
import fc from "fast-check";
import { evaluate, type Unit as MathUnit } from "mathjs";
import { describe, expect, it, test } from "vitest";
import { type Kind, kinds } from "../../../calc/quantity/kinds.ts";
import { type Reading, readQuantity } from "../../../calc/quantity/read.ts";

const numRuns = Number(process.env["FAST_CHECK_RUNS"] ?? 100);
/** Dry air by hand: 287.05 J/(kg K), of the 1976 standard atmosphere; from memory. */
const massOfFlow = (V_dot: number, T: number, p: number): number => (V_dot * p) / (287.05 * T);
const context = { barometer: 99e3, massOfFlow };

const read = (text: string, kind: Kind, unit: string = kinds[kind].metric): Reading =>
  readQuantity(text, kind, unit, context);
const valueIn = (reading: Reading): number => {
  if (!reading.ok) throw new Error(reading.says);
  return reading.value;
};
const saysOf = (reading: Reading): string => (reading.ok ? `read as ${reading.value}` : reading.says);

const psi = 6894.757293168361;

describe("calculations", () => {
  test.each<[string, Kind, string, number]>([
    ["14.7 + 2", "pressure", "psi", 16.7 * psi],
    ["14.7 psi + 2 bar", "pressure", "kPa", 14.7 * psi + 2e5],
    ["(14.7 psi + 2 bar)/2", "pressure", "kPa", 7.35 * psi + 1e5],
    ["2.2*99 kPa", "pressure", "kPa", 217.8e3],
    ["99 kPa*2.2", "pressure", "kPa", 217.8e3],
    ["2.2 × 99 kPa + 3 kPa", "pressure", "kPa", 220.8e3],
    ["3/8 in", "length", "mm", 0.375 * 0.0254],
    ["1 1/2 in", "length", "mm", 1.5 * 0.0254],
    ["1 1/2 in + 3 mm", "length", "mm", 1.5 * 0.0254 + 3e-3],
    ["6 ft + 2 in", "length", "mm", 6 * 0.3048 + 2 * 0.0254],
    ["(185-32)*5/9 degC", "temperature", "degC", 85 + 273.15],
    ["5/9*(185-32) degC", "temperature", "degC", 85 + 273.15],
    ["(185 - 32)·5/9", "temperature", "degC", 85 + 273.15],
    ["80 °C − 25 °C", "temperatureDifference", "K", 55],
    ["80 °C - 25 K", "temperature", "degC", 55 + 273.15],
    ["25 °C + 10 K", "temperature", "degC", 35 + 273.15],
    ["10 K + 25 °C", "temperature", "degC", 35 + 273.15],
    ["77 °F + 18 °R", "temperature", "degF", 35 + 273.15],
    ["300 K - 20 °C", "temperatureDifference", "K", 300 - 293.15],
    ["-(5) °C", "temperature", "degC", 268.15],
    ["30 psig + 5 psi", "pressure", "kPa", 99e3 + 35 * psi],
    ["30 psi + 5 psi", "pressure", "psi-g", 99e3 + 35 * psi],
    ["30 psia - 14.7 psia", "pressureDifference", "kPa", 15.3 * psi],
    ["2 bar gauge - 1 bar gauge", "pressureDifference", "kPa", 1e5],
    ["2 bar abs - 5 kPa", "gaugePressure", "kPa", 2e5 - 5e3 - 99e3],
    ["1.5 bar + 5 kPa", "gaugePressure", "kPa", 1.55e5],
    ["10 kW / (4.186 kJ/(kg K) * 5 K)", "massFlow", "kg/s", 10 / (4.186 * 5)],
    ["0.3 kg/s * 1.005 kJ/(kg K) * (80 °C - 25 °C)", "heatFlow", "kW", 300 * 1.005 * 55],
    ["20 L / 45 s", "liquidFlow", "L/min", 0.02 / 45],
    ["12 kg / 5 min", "massFlow", "kg/s", 12 / 300],
    ["200 kPa / 99 kPa", "ratio", "1", 200 / 99],
    ["50 % * 0.8", "fraction", "1", 0.4],
    ["pi/4*(60 mm)^2", "area", "cm2", (Math.PI / 4) * 0.06 ** 2],
    ["π/4·(60 mm)²", "area", "cm2", (Math.PI / 4) * 0.06 ** 2],
    ["4 * 86 mm * pi/4 * (86 mm)^2", "volume", "L", Math.PI * 0.086 ** 3],
    ["5.9 L / 6", "volume", "L", 5.9e-3 / 6],
    ["2000/60", "rotationalSpeed", "rev/s", 2000 / 60],
    ["0.35 lb/(hp h) * 450 hp", "massFlow", "kg/s", (0.35 * 450 * 0.45359237) / 3600],
    ["450 hp × 0.35 LBS/HP-HR", "massFlow", "kg/s", (0.35 * 450 * 0.45359237) / 3600],
    ["30 inHg - 2 inHg", "pressure", "inHg", 28 * 3386.388640341],
    ["2^3", "ratio", "1", 8],
    ["2^3^2", "ratio", "1", 512],
    ["-2^2 + 5", "ratio", "1", 1],
    ["2--3", "ratio", "1", 5],
    ["2 x 3", "ratio", "1", 6],
    ["2×3", "ratio", "1", 6],
    ["1/2*10^3", "ratio", "1", 500],
    ["1/2×10³", "ratio", "1", 500],
    ["1,200/3", "ratio", "1", 400],
    ["1 200/3", "ratio", "1", 400],
    ["0,5 + 0,25", "ratio", "1", 0.75],
    ["((((1))))", "ratio", "1", 1],
    ["15 psi abs + 3 psi", "pressure", "kPa", 18 * psi],
  ])("%s as %s in %s", (text, kind, unit, value) => {
    expect(valueIn(read(text, kind, unit)) / value).toBeCloseTo(1, 10);
  });

  test.each<[string, Kind, string, string]>([
    ["14.7 psi + 2 bar", "pressure", "kPa", "Read as 301.35 kPa absolute."],
    ["3/8 in", "length", "mm", "Read as 0.375 in."],
    ["14.7+2", "pressure", "psi", "Read as 16.7 psi."],
    ["1.5 bar + 5 kPa", "gaugePressure", "kPa", "Read as 155 kPa gauge."],
    ["80 °C - 25 °C", "temperatureDifference", "K", "Read as 55 K."],
  ])("says how it took %s", (text, kind, unit, understood) => {
    expect(read(text, kind, unit)).toMatchObject({ ok: true, understood });
  });

  test.each<[string, Kind, RegExp]>([
    [
      "20 °C + 20 °C",
      "temperature",
      /^Two temperatures cannot be added\. Type what is added to one as a difference/,
    ],
    ["2 * 20 °C", "temperature", /^A temperature in °C or °F counts from a zero of its own/],
    ["80 °C / 20 °C", "ratio", /^A temperature in °C or °F counts from a zero of its own/],
    [
      "80 °C - 25 °C",
      "temperature",
      /^This comes out as a temperature difference\. This field takes temperature,/,
    ],
    [
      "80 °C - 25 K",
      "temperatureDifference",
      /^This comes out as a temperature\. This field takes temperature diff/,
    ],
    ["2 * 15 psig", "pressure", /^A gauge pressure counts from the barometer/],
    ["1 bar gauge + 1 bar gauge", "pressure", /^Two pressures that say what they count from cannot be added/],
    ["30 psia - 14.7 psia", "pressure", /^This comes out as a pressure difference\./],
    [
      "14.7 + 2 bar",
      "pressure",
      /^There is no sum of a plain number and a pressure\. Give each number its unit\./,
    ],
    ["3 kg/s + 2 kW", "massFlow", /^There is no sum of a mass flow and a power\. This field takes mass flow/],
    ["3 kg/s * 2", "power", /^This comes out as a mass flow\. This field takes power, in kW/],
    ["3 kg/s * 2 kW", "power", /^This comes out as a quantity that no field takes\./],
    ["1/0", "ratio", /^This calculation divides by zero\. This field takes a plain number/],
    ["1 kPa/(2 kPa - 2 kPa)", "ratio", /^This calculation divides by zero\./],
    ["10^400", "ratio", /^This calculation comes out too large to compute with\./],
    ["(-8)^(1/3)", "ratio", /^A power of a negative number has no value here\./],
    ["(3 mm)^0.5", "length", /^A quantity can be raised to a whole power from −4 to 4\./],
    ["2^(3 mm)", "ratio", /^A power is a plain number\./],
    ["(1+2", "ratio", /^A bracket is not closed\./],
    ["1+2)", "ratio", /^A bracket is closed that was not opened\./],
    ["7 - ", "ratio", /^A number is missing at the end\./],
    ["--3", "ratio", /^A number is wanted where “-3” stands\./],
    ["2(3)", "ratio", /^A sign such as \+ or × is missing before “\(3\)”\./],
    ["3 furlong + 2", "length", /^“furlong” is not a unit known here\./],
    ["(3 mm) in", "length", /^“in” stands behind what has a unit already\./],
    [`${"(".repeat(21)}1${")".repeat(21)}`, "ratio", /^Brackets stand in brackets more than 20 deep/],
    ["5 °C - 300 K", "temperature", /^This comes out as|below absolute zero/],
    ["20 K - 30 K", "temperature", /^−10 K is below absolute zero|below absolute zero/],
  ])("refuses %s as %s", (text, kind, says) => {
    expect(saysOf(read(text, kind, kinds[kind].metric))).toMatch(says);
  });
});

describe("a flow at stated conditions", () => {
  const flow = (1200 * 0.3048 ** 3) / 60;
  const mass = (flow * 14.7 * psi) / (287.05 * (60 + 459.67) * (5 / 9));

  test.each([
    "1,200 cfm at 60 degF 14.7 psi",
    "1200 cfm @ 60 °F, 14.7 psia",
    "1200 ft³/min at 14.7 psi and 60 °F",
  ])("%s is a mass flow of dry air", (text) => {
    expect(valueIn(read(text, "massFlow"))).toBeCloseTo(mass, 12);
  });

  it("says what it took", () => {
    expect(read("1,200 cfm at 60 degF 14.7 psi", "massFlow", "lb/min")).toMatchObject({
      understood: "Read as 91.619 lb/min of dry air, 1200 ft³/min at 60 °F and 14.7 psi absolute.",
    });
  });

  test.each<[string, Kind, RegExp]>([
    [
      "1200 cfm at 60 °F",
      "massFlow",
      /^“” is no quantity|no quantity with a unit\. Type such a flow as 1200 cfm at/,
    ],
    ["1200 at 60 °F 14.7 psi", "massFlow", /^“1200” is no quantity with a unit\./],
    ["1200 cfm at 60 °F 14.7 psi 3", "massFlow", /^“3” is too much here\./],
    ["1200 cfm at 60 °F 14.7 kg/s", "massFlow", /^kg\/s is a unit of mass flow\. Type such a flow as/],
    ["1200 cfm at 60 °F 14.7 psi", "volumeFlow", /^Only a mass flow can be typed as a volume flow at stated/],
    ["3 kg/s at 60 °F 14.7 psi", "massFlow", /^kg\/s is a unit of mass flow\. Type such a flow as/],
  ])("refuses %s as %s", (text, kind, says) => {
    expect(saysOf(read(text, kind))).toMatch(says);
  });
});

// What the reference library reads otherwise than a practitioner means it, or not at all.
describe("what mathjs misreads is read here as it is meant", () => {
  test.each<[text: string, kind: Kind, value: number, mathjs: "misread" | "unread"]>([
    ["75 F", "temperature", (75 + 459.67) / 1.8, "misread"],
    ["75 C", "temperature", 348.15, "misread"],
    ["1200 PS", "power", 1200 * 735.49875, "misread"],
    ["75 degC - 25 degC", "temperatureDifference", 50, "misread"],
    ["75 °F", "temperature", (75 + 459.67) / 1.8, "unread"],
    ["1,200", "ratio", 1200, "unread"],
    ["0,35", "ratio", 0.35, "unread"],
    ["−3", "altitude", -3, "unread"],
    ["2×3", "ratio", 6, "unread"],
    ["0.3 m³/s", "volumeFlow", 0.3, "unread"],
    ["30 inHg", "pressure", 30 * 3386.388640341, "unread"],
    ["10 inH2O", "pressureDifference", 2490.8891, "unread"],
    ["15 psig", "pressure", 99e3 + 15 * psi, "unread"],
    ["6000 rpm", "rotationalSpeed", 100, "unread"],
    ["1200 cfm", "volumeFlow", (1200 * 0.3048 ** 3) / 60, "unread"],
    ["18 gal/min", "liquidFlow", 18 * 6.30901964e-5, "unread"],
    ["60 mph", "speed", 26.8224, "unread"],
    ["600 bhp", "power", 600 * 745.6998715822702, "unread"],
    ["18 cP", "viscosity", 0.018, "unread"],
    ["350 ci", "volume", 350 * 0.0254 ** 3, "unread"],
    ["1/2 in + 3/8 in", "length", 0.875 * 0.0254, "misread"],
  ])("%s", (text, kind, value, fate) => {
    const own = readQuantity(text, kind, kinds[kind].si, context);
    expect(valueIn(own) / value).toBeCloseTo(1, 6);
    const oracle = (): number => {
      const found: number | MathUnit = evaluate(text);
      return typeof found === "number" ? found : found.toNumber(kinds[kind].si);
    };
    let theirs: number | undefined;
    try {
      theirs = oracle();
    } catch {
      theirs = undefined;
    }
    if (fate === "unread") expect(theirs).toBeUndefined();
    else expect(theirs === undefined || Math.abs(theirs / value - 1) > 1e-3).toBe(true);
  });

  it("20 °C and 20 °C are refused, of which mathjs makes 40 °C", () => {
    expect(evaluate("20 degC + 20 degC").toNumber("degC")).toBeCloseTo(40, 9);
    expect(read("20 degC + 20 degC", "temperature").ok).toBe(false);
  });
});

describe("10,000 random calculations agree with mathjs", () => {
  /** A calculation as it is typed here, and as mathjs takes it. */
  interface Both {
    readonly own: string;
    readonly oracle: string;
  }
  const both = (own: string, oracle: string = own): Both => ({ own, oracle });
  const digits = fc.oneof(
    fc.integer({ min: 1, max: 999 }).map(String),
    fc.double({ min: 0.01, max: 500, noNaN: true }).map((x) => x.toPrecision(5)),
    fc.double({ min: 1e-3, max: 1e3, noNaN: true }).map((x) => x.toExponential(3)),
  );
  const operator = fc.constantFrom("+", "-", "*", "/", " + ", " - ", " * ", " / ");
  const joined = (part: fc.Arbitrary<Both>, sign: fc.Arbitrary<string>): fc.Arbitrary<Both> =>
    fc.tuple(part, sign, part).map(([a, s, b]) => both(`${a.own}${s}${b.own}`, `${a.oracle}${s}${b.oracle}`));
  const bracketed = (part: fc.Arbitrary<Both>): fc.Arbitrary<Both> =>
    part.map(({ own, oracle }) => both(`(${own})`, `(${oracle})`));

  const { plain } = fc.letrec<{ plain: Both; atom: Both }>((tie) => ({
    atom: fc.oneof(
      { depthSize: "small" },
      digits.map((text) => both(text)),
      fc.constant(both("pi")),
      fc.constant(both("π", "pi")),
      bracketed(tie("plain")),
      bracketed(tie("plain")).map(({ own, oracle }) => both(`-${own}`, `-${oracle}`)),
      fc
        .tuple(digits, fc.integer({ min: -3, max: 3 }))
        .map(([base, power]) => both(`${base}^${power}`, `${base}^(${power})`)),
    ),
    plain: fc.oneof({ depthSize: "small" }, tie("atom"), joined(tie("plain"), operator)),
  }));

  const expectSame = (own: number, oracle: number) => {
    const scale = Math.max(Math.abs(oracle), 1e-200);
    expect(Math.abs(own - oracle) / scale).toBeLessThan(1e-9);
  };
  /** Where terms cancel the last bits of a unit decide, and nothing can be told from them. */
  const isWellConditioned = (x: number): boolean =>
    Number.isFinite(x) && Math.abs(x) > 1e-9 && Math.abs(x) < 1e200;

  it("of plain numbers", () => {
    fc.assert(
      fc.property(plain, ({ own, oracle }) => {
        fc.pre(own.length <= 200);
        const expected: number = evaluate(oracle);
        fc.pre(typeof expected === "number" && isWellConditioned(expected));
        const found = readQuantity(own, "ratio", "1");
        // A number that begins with a sign of its own twice is refused here.
        if (!found.ok) expect(found.says).toMatch(/^A number is wanted where “[-+]/);
        else expectSame(found.value, expected);
      }),
      { numRuns: Math.max(5000, numRuns * 10) },
    );
  });

  const families: readonly (readonly [Kind, readonly (readonly [string, string])[]])[] = [
    [
      "pressureDifference",
      [
        ["kPa", "kPa"],
        ["bar", "bar"],
        ["psi", "psi"],
        ["Pa", "Pa"],
        ["mbar", "mbar"],
      ],
    ],
    [
      "power",
      [
        ["kW", "kW"],
        ["W", "W"],
        ["hp", "hp"],
        ["MW", "MW"],
      ],
    ],
    [
      "massFlow",
      [
        ["kg/s", "(kg/s)"],
        ["kg/h", "(kg/hour)"],
        ["lb/min", "(lbm/minute)"],
        ["g/s", "(g/s)"],
      ],
    ],
    [
      "length",
      [
        ["mm", "mm"],
        ["in", "inch"],
        ["ft", "ft"],
        ["m", "m"],
      ],
    ],
    [
      "volume",
      [
        ["L", "L"],
        ["in³", "in^3"],
        ["ft3", "ft^3"],
        ["cc", "cm^3"],
      ],
    ],
    [
      "temperatureDifference",
      [
        ["K", "K"],
        ["°R", "degR"],
      ],
    ],
    [
      "specificFuel",
      [
        ["g/kWh", "(g/(kW hour))"],
        ["lb/(hp h)", "(lbm/(hp hour))"],
        ["LB/HP-HR", "(lbm/(hp hour))"],
      ],
    ],
  ];
  const withUnits = fc.constantFrom(...families).chain(([kind, names]) => {
    const quantity = fc
      .tuple(digits, fc.constantFrom(...names))
      .map(([number, [own, oracle]]) => both(`${number} ${own}`, `(${number} * ${oracle})`));
    const scaled = fc.oneof(
      quantity,
      fc.tuple(digits, bracketed(quantity)).map(([k, q]) => both(`${k}*${q.own}`, `${k}*${q.oracle}`)),
      fc.tuple(quantity, digits).map(([q, k]) => both(`${q.own} / ${k}`, `${q.oracle} / ${k}`)),
      fc
        .tuple(quantity, quantity, quantity)
        .map(([a, b, c]) =>
          both(`${a.own} * ${b.own} / (${c.own})`, `${a.oracle} * ${b.oracle} / ${c.oracle}`),
        ),
    );
    return fc.tuple(scaled, fc.constantFrom("+", "-"), scaled).map(([a, sign, b]) => ({
      kind,
      own: `${a.own} ${sign} ${b.own}`,
      oracle: `${a.oracle} ${sign} ${b.oracle}`,
      // Where terms cancel, their last bits are what is left.
      size: `${a.oracle} + ${b.oracle}`,
    }));
  });

  it("of quantities", () => {
    fc.assert(
      fc.property(withUnits, ({ kind, own, oracle, size }) => {
        const { si } = kinds[kind];
        const inSI = (text: string): number => (evaluate(text) as MathUnit).toNumber(si);
        const found = valueIn(readQuantity(own, kind, si));
        expect(Math.abs(found - inSI(oracle))).toBeLessThan(1e-9 * inSI(size));
      }),
      { numRuns: Math.max(5000, numRuns * 10) },
    );
  });
});

it("no part of mathjs stands in what reads quantities", () => {
  for (const file of ["read", "expression", "amount", "calculation"])
    expect(readFileSync(`calc/quantity/${file}.ts`, "utf8")).not.toMatch(/mathjs/);
});
