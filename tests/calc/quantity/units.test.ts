import katex from "katex";
import { unit as mathjsUnit } from "mathjs";
import { describe, expect, it, test } from "vitest";
import { DomainError } from "../../../calc/quantity/domain-error.ts";
import { defaultUnit, isUnitOf, type Kind, type KindInfo, kinds } from "../../../calc/quantity/kinds.ts";
import { fromSI, toSI, unitOf, units } from "../../../calc/quantity/units.ts";

const everyKind = Object.entries<KindInfo>(kinds) as [Kind, KindInfo][];

/** How mathjs spells our units and the SI unit beside them. What it does not know is listed in `unknownToMathjs`. */
const mathjsNames: Record<string, readonly [name: string, si: string]> = {
  Pa: ["Pa", "Pa"],
  kPa: ["kPa", "Pa"],
  MPa: ["MPa", "Pa"],
  GPa: ["GPa", "Pa"],
  bar: ["bar", "Pa"],
  mbar: ["mbar", "Pa"],
  psi: ["psi", "Pa"],
  atm: ["atm", "Pa"],
  "kg/m3": ["kg/m^3", "kg/m^3"],
  "kg/L": ["kg/L", "kg/m^3"],
  "g/L": ["g/L", "kg/m^3"],
  "lb/ft3": ["lbm/ft^3", "kg/m^3"],
  "m3/kg": ["m^3/kg", "m^3/kg"],
  "L/kg": ["L/kg", "m^3/kg"],
  "ft3/lb": ["ft^3/lbm", "m^3/kg"],
  "kg/s": ["kg/s", "kg/s"],
  "kg/min": ["kg/minute", "kg/s"],
  "kg/h": ["kg/hour", "kg/s"],
  "g/s": ["g/s", "kg/s"],
  "lb/s": ["lbm/s", "kg/s"],
  "lb/min": ["lbm/minute", "kg/s"],
  "lb/h": ["lbm/hour", "kg/s"],
  "m3/s": ["m^3/s", "m^3/s"],
  "m3/min": ["m^3/minute", "m^3/s"],
  "m3/h": ["m^3/hour", "m^3/s"],
  "L/s": ["L/s", "m^3/s"],
  "L/min": ["L/minute", "m^3/s"],
  "L/h": ["L/hour", "m^3/s"],
  "ft3/min": ["ft^3/minute", "m^3/s"],
  m3: ["m^3", "m^3"],
  L: ["L", "m^3"],
  cm3: ["cm^3", "m^3"],
  in3: ["in^3", "m^3"],
  ft3: ["ft^3", "m^3"],
  "g/kg": ["g/kg", "kg/kg"],
  "kg/kg": ["kg/kg", "kg/kg"],
  "lb/lb": ["lbm/lbm", "kg/kg"],
  "gr/lb": ["grain/lbm", "kg/kg"],
  W: ["W", "W"],
  kW: ["kW", "W"],
  MW: ["MW", "W"],
  hp: ["hp", "W"],
  "BTU/min": ["BTU/minute", "W"],
  "BTU/h": ["BTU/hour", "W"],
  "J/kg": ["J/kg", "J/kg"],
  "kJ/kg": ["kJ/kg", "J/kg"],
  "MJ/kg": ["MJ/kg", "J/kg"],
  "BTU/lb": ["BTU/lbm", "J/kg"],
  "J/(kg K)": ["J/(kg K)", "J/(kg K)"],
  "kJ/(kg K)": ["kJ/(kg K)", "J/(kg K)"],
  "BTU/(lb degF)": ["BTU/(lbm degR)", "J/(kg K)"],
  "W/K": ["W/K", "W/K"],
  "kW/K": ["kW/K", "W/K"],
  "BTU/(min degF)": ["BTU/(minute degR)", "W/K"],
  "BTU/(h degF)": ["BTU/(hour degR)", "W/K"],
  "W/(m2 K)": ["W/(m^2 K)", "W/(m^2 K)"],
  "kW/(m2 K)": ["kW/(m^2 K)", "W/(m^2 K)"],
  "BTU/(h ft2 degF)": ["BTU/(hour ft^2 degR)", "W/(m^2 K)"],
  "K/W": ["K/W", "K/W"],
  "K/kW": ["K/kW", "K/W"],
  "h degF/BTU": ["hour degR/BTU", "K/W"],
  "m2 K/W": ["m^2 K/W", "m^2 K/W"],
  "m2 K/kW": ["m^2 K/kW", "m^2 K/W"],
  "h ft2 degF/BTU": ["hour ft^2 degR/BTU", "m^2 K/W"],
  "ft lbf/(lb degR)": ["ft lbf/(lbm degR)", "J/(kg K)"],
  "rad/s": ["rad/s", "cycle/s"],
  "rev/s": ["cycle/s", "cycle/s"],
  "rev/min": ["cycle/minute", "cycle/s"],
  "kg/J": ["kg/J", "kg/J"],
  "kg/kJ": ["kg/kJ", "kg/J"],
  "g/MJ": ["g/MJ", "kg/J"],
  "g/kWh": ["g/(kW hour)", "kg/J"],
  "kg/kWh": ["kg/(kW hour)", "kg/J"],
  "lb/(hp h)": ["lbm/(hp hour)", "kg/J"],
  m: ["m", "m"],
  cm: ["cm", "m"],
  mm: ["mm", "m"],
  in: ["inch", "m"],
  m2: ["m^2", "m^2"],
  cm2: ["cm^2", "m^2"],
  mm2: ["mm^2", "m^2"],
  in2: ["inch^2", "m^2"],
  ft2: ["ft^2", "m^2"],
  rad: ["rad", "rad"],
  deg: ["deg", "rad"],
  N: ["N", "N"],
  kN: ["kN", "N"],
  lbf: ["lbf", "N"],
  "N m": ["N m", "N m"],
  "kN m": ["kN m", "N m"],
  "lbf ft": ["lbf ft", "N m"],
  "kg/(m2 s)": ["kg/(m^2 s)", "kg/(m^2 s)"],
  "lb/(ft2 s)": ["lbm/(ft^2 s)", "kg/(m^2 s)"],
  "lb/(ft2 h)": ["lbm/(ft^2 hour)", "kg/(m^2 s)"],
  kg: ["kg", "kg"],
  g: ["g", "kg"],
  lb: ["lbm", "kg"],
  s: ["s", "s"],
  min: ["minute", "s"],
  h: ["hour", "s"],
  J: ["J", "J"],
  kJ: ["kJ", "J"],
  MJ: ["MJ", "J"],
  kWh: ["kW hour", "J"],
  BTU: ["BTU", "J"],
  km: ["km", "m"],
  ft: ["ft", "m"],
  "m/s": ["m/s", "m/s"],
  "km/h": ["km/hour", "m/s"],
  "ft/s": ["ft/s", "m/s"],
  "ft/min": ["ft/minute", "m/s"],
  "mi/h": ["mi/hour", "m/s"],
  "Pa s": ["Pa s", "Pa s"],
  "mPa s": ["mPa s", "Pa s"],
  "uPa s": ["uPa s", "Pa s"],
  "lb/(ft h)": ["lbm/(ft hour)", "Pa s"],
  "lb/(ft s)": ["lbm/(ft s)", "Pa s"],
  "W/(m K)": ["W/(m K)", "W/(m K)"],
  "mW/(m K)": ["mW/(m K)", "W/(m K)"],
  "BTU/(h ft degF)": ["BTU/(hour ft degR)", "W/(m K)"],
  "kg/mol": ["kg/mol", "kg/mol"],
  "g/mol": ["g/mol", "kg/mol"],
  "kg/kmol": ["kg/kmol", "kg/mol"],
  "per K": ["K^-1", "K^-1"],
  "per Pa": ["Pa^-1", "Pa^-1"],
  "per kPa": ["kPa^-1", "Pa^-1"],
  "per MPa": ["MPa^-1", "Pa^-1"],
  "per GPa": ["GPa^-1", "Pa^-1"],
  "um/(m K)": ["um/(m K)", "K^-1"],
  "uin/(in degF)": ["um/(m degR)", "K^-1"],
};

/** Units that mathjs lacks, or has on other footing; NIST SP 811 Appendix B gives the value where there is one. */
const unknownToMathjs: Record<string, readonly [value: number, relative: number, source: string]> = {
  inHg: [3386.389, 1e-6, "NIST SP 811 B.8, inch of mercury, conventional; from memory"],
  mmHg: [133.3224, 1e-6, "NIST SP 811 B.8, millimeter of mercury, conventional; from memory"],
  inH2O: [249.0889, 1e-6, "NIST SP 811 B.8, inch of water, conventional; from memory"],
  "inH2O-60F": [248.84, 1e-5, "NIST SP 811 B.8, inch of water (60 °F); from memory"],
  Mpsi: [6.894757293168e9, 1e-12, "NIST SP 811 B.8, pound-force per square inch; from memory"],
  mmH2O: [9.80665, 1e-9, "NIST SP 811 B.8, millimeter of water, conventional; from memory"],
  "gal/min": [6.30901964e-5, 1e-8, "231 in³, NIST Handbook 44 Appendix C; from memory"],
  "gal/h": [1.0515032733e-6, 1e-8, "231 in³, NIST Handbook 44 Appendix C; from memory"],
  "impgal/min": [7.57682e-5, 1e-6, "4.54609 L, Weights and Measures Act 1985; from memory"],
  gal: [3.785411784e-3, 1e-12, "231 in³, NIST Handbook 44 Appendix C; from memory"],
  impgal: [4.54609e-3, 1e-12, "4.54609 L, Weights and Measures Act 1985; from memory"],
  PS: [735.49875, 1e-12, "75 kgf·m/s, DIN 66036; from memory"],
  cP: [1e-3, 1e-12, "NIST SP 811 B.8, centipoise; from memory"],
  "%": [0.01, 0, "by definition"],
  "1": [1, 0, "by definition"],
  "degF-d": [5 / 9, 1e-15, "NIST SP 811 B.8, degree Fahrenheit (interval); from memory"],
  Cv: [0.865 / 3600, 1e-12, "IEC 60534-2-1, numerical constant N1; from memory"],
  "lb/lbmol": [1e-3, 1e-12, "by definition: the pound-mole is as many pounds as the mole is grams"],
};

const temperatures = ["K", "degC", "degF", "degR"];

describe("the table of units", () => {
  const scaled = Object.values(units).filter((u) => !u.gauge && !temperatures.includes(u.id));

  test.each(scaled)("$id is as large as an outside source has it", ({ id, factor }) => {
    const known = mathjsNames[id];
    const [value, relative] = known
      ? [mathjsUnit(1, known[0]).toNumber(known[1]), 1e-9]
      : (unknownToMathjs[id] ?? [Number.NaN, 0]);
    expect(Math.abs(factor / value - 1)).toBeLessThanOrEqual(relative);
  });

  test.each([
    ["psi", (0.45359237 * 9.80665) / 0.0254 ** 2],
    ["hp", 745.6998715822702],
    ["BTU/lb", 2326],
    ["BTU/(lb degF)", 4186.8],
    ["gr/lb", 1 / 7000],
    ["km/h", 1000 / 3600],
    ["mi/h", 0.44704],
    ["lb/min", 0.45359237 / 60],
    ["in3", 1.6387064e-5],
    ["ft3", 0.028316846592],
  ])("%s follows from its definition (NIST SP 811, from memory)", (id, value) => {
    expect(Math.abs(unitOf(id).factor / value - 1)).toBeLessThan(4e-16 * 4);
  });

  test.each([
    // Fixed points of the scales: ITS-90 and the definitions of the degrees, from memory.
    ["degC", 0, 273.15],
    ["degC", -273.15, 0],
    ["degF", 32, 273.15],
    ["degF", 212, 373.15],
    ["degF", -40, 233.15],
    ["degF", -459.67, 0],
    ["degR", 491.67, 273.15],
    ["K", 298.15, 298.15],
  ])("%s: %f is %f K", (id, number, kelvin) => {
    expect(toSI(number, id)).toBeCloseTo(kelvin, 10);
    expect(fromSI(kelvin, id)).toBeCloseTo(number, 10);
  });

  test.each(["degC", "degF", "degR", "K"])("%s agrees with mathjs along the scale", (id) => {
    for (let number = -200; number <= 2000; number += 37)
      expect(toSI(number, id)).toBeCloseTo(mathjsUnit(number, id).toNumber("K"), 9);
  });

  it("counts gauge units from the barometer and refuses them without one", () => {
    expect(toSI(15, "psi-g", { barometer: 99e3 })).toBeCloseTo(99e3 + toSI(15, "psi"), 9);
    expect(fromSI(99e3, "inHg-g", { barometer: 99e3 })).toBe(0);
    for (const convert of [toSI, fromSI]) {
      expect(() => convert(15, "psi-g")).toThrow(DomainError);
      expect(() => convert(15, "psi-g", {})).toThrow(/barometer is not set/);
    }
  });

  it("has no unit by the name of a property of every object", () => {
    for (const id of ["__proto__", "constructor", "toString", "hasOwnProperty"]) {
      expect(units[id]).toBeUndefined();
      expect(() => unitOf(id)).toThrow(/no unit/);
    }
  });

  it("has ids in ASCII, and TeX that KaTeX sets", () => {
    for (const { id, tex } of Object.values(units)) {
      expect(id).toMatch(/^[\x20-\x7e]+$/);
      expect(() => katex.renderToString(tex, { strict: "error" })).not.toThrow();
    }
  });
});

describe("kinds", () => {
  test.each(everyKind)("%s names units that exist, and offers its defaults", (kind, info) => {
    for (const id of [info.si, info.kilo, info.metric, info.us, ...info.units]) unitOf(id);
    expect(info.units).toContain(defaultUnit(kind, "metric"));
    expect(info.units).toContain(defaultUnit(kind, "us"));
    expect(new Set(info.units).size).toBe(info.units.length);
    expect(unitOf(info.si)).toMatchObject({ factor: 1 });
    expect(unitOf(info.si).offset ?? 0).toBe(0);
  });

  it("uses every unit, and offers gauge units for absolute pressure only", () => {
    const offered = new Set(everyKind.flatMap(([, info]) => info.units));
    expect(Object.keys(units).filter((id) => !offered.has(id))).toEqual([]);
    const gauge = Object.values(units).filter((u) => u.gauge);
    for (const [kind] of everyKind)
      for (const { id } of gauge) expect(isUnitOf(kind, id)).toBe(kind === "pressure");
  });
});
