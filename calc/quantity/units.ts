import { DomainError, type SI } from "./domain-error.ts";

export interface Unit {
  /** ASCII and permanent: links carry it. */
  readonly id: string;
  /** What a reader sees. */
  readonly label: string;
  /** What people type besides the id and the label, as `fold` in calc/quantity/unit-names.ts writes it. */
  readonly names: readonly string[];
  /** SI units in one of this unit. */
  readonly factor: number;
  /** The SI value at zero of this unit, where that is not zero: temperatures. */
  readonly offset?: SI;
  /** Counted from the barometer. */
  readonly gauge?: true;
  /** For math mode. */
  readonly tex: string;
}

/** What a conversion may need besides the number. */
export interface UnitContext {
  /** The barometer in Pa, without which gauge readings have no absolute value. */
  readonly barometer?: SI | undefined;
}

// Exact by definition (NIST SP 811, from memory), and what follows from them.
const lb = 0.45359237;
const ft = 0.3048;
const inch = ft / 12;
const mile = 5280 * ft;
const g0 = 9.80665;
const lbf = lb * g0;
const minute = 60;
const hour = 3600;
const kWh = 3.6e6;
const litre = 1e-3;
const gallon = 231 * inch ** 3;
const imperialGallon = 4.54609 * litre;
const hp = 550 * ft * lbf;
const rankine = 5 / 9;
/** The international table BTU, which makes 1 BTU/(lb °F) exactly 4186.8 J/(kg K). */
const btu = 4186.8 * lb * rankine;

// Columns of liquid are conventional: a stated density under standard gravity.
const mercury = 13595.1 * g0; // at 0 °C
const water = 1000 * g0; // nominally at 4 °C

const tex = (label: string) =>
  `\\mathrm{${label
    .replaceAll(" ", "\\ ")
    .replace(/[²³]/g, (c) => (c === "²" ? "^2" : "^3"))
    .replaceAll("₂", "_2")
    .replaceAll("%", "\\%")
    .replaceAll("·", "\\,")
    .replaceAll("°", "{}^\\circ ")
    .replaceAll("µ", "\\mu ")}}`;

/** id, label, SI units in one, what else people type (parted by spaces), SI value at zero */
type Row = readonly [id: string, label: string, factor: number, names?: string, offset?: SI];

const unit = ([id, label, factor, names, offset]: Row): Unit => ({
  id,
  label,
  factor,
  names: names?.split(" ") ?? [],
  ...(offset === undefined ? {} : { offset }),
  tex: tex(label),
});

const pressures = (
  [
    ["Pa", "Pa", 1, "pascal n/m2"],
    ["kPa", "kPa", 1e3],
    ["MPa", "MPa", 1e6],
    ["bar", "bar", 1e5],
    ["mbar", "mbar", 100, "hpa mb millibar"],
    ["psi", "psi", lbf / inch ** 2, "lbf/in2 lb/in2"],
    ["inHg", "inHg (0 °C)", mercury * inch, '"hg'],
    ["mmHg", "mmHg (0 °C)", mercury / 1000],
    ["inH2O", "inH₂O (4 °C)", water * inch, 'inwc "h2o "wc'],
    ["atm", "atm", 101325],
  ] satisfies Row[]
).map(unit);

const gauge = (u: Unit): Unit => ({
  ...u,
  id: `${u.id}-g`,
  label: `${u.label} gauge`,
  names: [],
  gauge: true,
  tex: tex(`${u.label} gauge`),
});

const others = (
  [
    ["inH2O-60F", "inH₂O (60 °F)", 248.84],
    ["mmH2O", "mmH₂O (4 °C)", water / 1000],

    ["K", "K", 1, "kelvin"],
    ["degC", "°C", 1, "celsius", 273.15],
    ["degF", "°F", rankine, "fahrenheit", 459.67 * rankine],
    ["degR", "°R", rankine, "rankine"],
    ["degF-d", "°F", rankine],

    ["kg/m3", "kg/m³", 1],
    ["kg/L", "kg/L", 1e3, "g/cm3 g/cc g/ml"],
    ["g/L", "g/L", 1],
    ["lb/ft3", "lb/ft³", lb / ft ** 3, "lb/cuft"],
    ["m3/kg", "m³/kg", 1],
    ["L/kg", "L/kg", litre],
    ["ft3/lb", "ft³/lb", ft ** 3 / lb, "cuft/lb"],

    ["kg/s", "kg/s", 1],
    ["kg/min", "kg/min", 1 / minute],
    ["kg/h", "kg/h", 1 / hour],
    ["g/s", "g/s", 1e-3],
    ["lb/s", "lb/s", lb],
    ["lb/min", "lb/min", lb / minute],
    ["lb/h", "lb/h", lb / hour, "pph"],

    ["m3/s", "m³/s", 1],
    ["m3/min", "m³/min", 1 / minute],
    ["m3/h", "m³/h", 1 / hour],
    ["L/s", "L/s", litre, "lps"],
    ["L/min", "L/min", litre / minute, "lpm"],
    ["ft3/min", "ft³/min", ft ** 3 / minute, "cfm cuft/min"],
    ["L/h", "L/h", litre / hour, "lph"],
    ["gal/min", "US gal/min", gallon / minute, "gpm"],
    ["gal/h", "US gal/h", gallon / hour, "gph"],
    ["impgal/min", "imp. gal/min", imperialGallon / minute],

    ["m3", "m³", 1],
    ["L", "L", litre, "litre liter litres liters"],
    ["cm3", "cm³", 1e-6, "cc ml ccm"],
    ["in3", "in³", inch ** 3, "ci cid cuin"],
    ["ft3", "ft³", ft ** 3, "cuft"],
    ["gal", "US gal", gallon],
    ["impgal", "imp. gal", imperialGallon],

    ["1", "", 1],
    ["%", "%", 0.01, "percent pct"],
    ["kg/kg", "kg/kg", 1],
    ["g/kg", "g/kg", 1e-3],
    ["lb/lb", "lb/lb", 1],
    ["gr/lb", "gr/lb", 1 / 7000, "grains/lb grain/lb"],

    ["W", "W", 1, "watt"],
    ["kW", "kW", 1e3],
    ["MW", "MW", 1e6],
    ["hp", "hp", hp, "bhp"],
    ["PS", "PS", 75 * g0, "metrichp cv"],
    ["BTU/min", "BTU/min", btu / minute],
    ["BTU/h", "BTU/h", btu / hour],

    ["J/kg", "J/kg", 1],
    ["kJ/kg", "kJ/kg", 1e3, "j/g"],
    ["MJ/kg", "MJ/kg", 1e6],
    ["BTU/lb", "BTU/lb", btu / lb],
    ["J/(kg K)", "J/(kg·K)", 1, "j/kg/k"],
    ["kJ/(kg K)", "kJ/(kg·K)", 1e3, "kj/kg/k j/gk"],
    ["BTU/(lb degF)", "BTU/(lb·°F)", btu / lb / rankine, "btu/lb/f btu/lbr"],
    ["ft lbf/(lb degR)", "ft·lbf/(lb·°R)", (ft * lbf) / lb / rankine, "ftlbf/lb/r ftlb/lbr"],

    ["kg", "kg", 1, "kilogram kilograms"],
    ["g", "g", 1e-3, "gram grams"],
    ["lb", "lb", lb, "pound pounds"],

    ["s", "s", 1, "second seconds"],
    ["min", "min", minute, "minute minutes"],
    ["h", "h", hour, "hours"],

    ["J", "J", 1],
    ["kJ", "kJ", 1e3],
    ["MJ", "MJ", 1e6],
    ["kWh", "kWh", kWh],
    ["BTU", "BTU", btu],

    ["rev/s", "rev/s", 1, "rps"],
    ["rev/min", "rev/min", 1 / minute, "rpm r/min"],
    ["rad/s", "rad/s", 1 / (2 * Math.PI)],

    ["kg/J", "kg/J", 1],
    ["kg/kJ", "kg/kJ", 1e-3],
    ["g/MJ", "g/MJ", 1e-9],
    ["g/kWh", "g/kWh", 1e-3 / kWh, "g/kw/h"],
    ["kg/kWh", "kg/kWh", 1 / kWh, "kg/kw/h"],
    ["lb/(hp h)", "lb/(hp·h)", lb / (hp * hour), "lb/hp/h lb/bhph"],

    ["m", "m", 1, "metre meter metres meters"],
    ["cm", "cm", 1e-2, "centimetre centimeter"],
    ["mm", "mm", 1e-3, "millimetre millimeter"],
    ["in", "in", inch, '"'],
    ["km", "km", 1e3],
    ["ft", "ft", ft, "'"],

    ["m/s", "m/s", 1],
    ["km/h", "km/h", 1 / 3.6, "kmh kph"],
    ["ft/s", "ft/s", ft, "fps"],
    ["ft/min", "ft/min", ft / minute, "fpm"],
    ["mi/h", "mi/h", mile / hour, "mph"],

    ["Pa s", "Pa·s", 1],
    ["mPa s", "mPa·s", 1e-3],
    ["uPa s", "µPa·s", 1e-6],
    ["cP", "cP", 1e-3],
    ["lb/(ft h)", "lb/(ft·h)", lb / (ft * hour), "lb/ft/h"],
    ["lb/(ft s)", "lb/(ft·s)", lb / ft, "lb/ft/s"],

    ["W/(m K)", "W/(m·K)", 1, "w/m/k"],
    ["mW/(m K)", "mW/(m·K)", 1e-3, "mw/m/k"],
    ["BTU/(h ft degF)", "BTU/(h·ft·°F)", btu / (hour * ft * rankine), "btu/h/ft/f btu/hrftf"],

    ["W/K", "W/K", 1, "w/c w/degc"],
    ["kW/K", "kW/K", 1e3, "kw/c kw/degc"],
    ["BTU/(min degF)", "BTU/(min·°F)", btu / (minute * rankine), "btu/min/f"],
    ["BTU/(h degF)", "BTU/(h·°F)", btu / (hour * rankine), "btu/h/f btu/hrf"],

    ["W/(m2 K)", "W/(m²·K)", 1, "w/m2/k w/m2/c"],
    ["kW/(m2 K)", "kW/(m²·K)", 1e3, "kw/m2/k kw/m2/c"],
    ["BTU/(h ft2 degF)", "BTU/(h·ft²·°F)", btu / (hour * ft ** 2 * rankine), "btu/h/ft2/f btu/hrft2f"],

    ["K/W", "K/W", 1, "c/w"],
    ["K/kW", "K/kW", 1e-3, "c/kw"],
    ["h degF/BTU", "h·°F/BTU", (hour * rankine) / btu, "hrf/btu"],

    ["m2 K/W", "m²·K/W", 1, "m2c/w"],
    ["m2 K/kW", "m²·K/kW", 1e-3, "m2c/kw"],
    ["h ft2 degF/BTU", "h·ft²·°F/BTU", (hour * ft ** 2 * rankine) / btu, "hrft2f/btu"],

    ["m2", "m²", 1, "sqm"],
    ["cm2", "cm²", 1e-4, "sqcm"],
    ["mm2", "mm²", 1e-6, "sqmm"],
    ["in2", "in²", inch ** 2, "sqin"],
    ["ft2", "ft²", ft ** 2, "sqft"],

    ["rad", "rad", 1, "radian radians"],
    ["deg", "°", Math.PI / 180, "degree degrees"],

    ["N", "N", 1, "newton"],
    ["kN", "kN", 1e3],
    ["lbf", "lbf", lbf],
    ["N m", "N·m", 1],
    ["kN m", "kN·m", 1e3],
    ["lbf ft", "lbf·ft", lbf * ft, "ftlbf lbft ftlb"],

    ["kg/(m2 s)", "kg/(m²·s)", 1, "kg/m2/s kg/m2s kg/sm2"],
    ["lb/(ft2 s)", "lb/(ft²·s)", lb / ft ** 2, "lb/ft2/s"],
    ["lb/(ft2 h)", "lb/(ft²·h)", lb / (ft ** 2 * hour), "lb/ft2/h"],

    ["kg/mol", "kg/mol", 1],
    ["g/mol", "g/mol", 1e-3],
    ["kg/kmol", "kg/kmol", 1e-3],
    ["lb/lbmol", "lb/lbmol", 1e-3],

    // The standard's own figure, three digits; 1 US gal/min at 1 psi comes to 0.86498.
    ["Cv", "Cv", 0.865 / hour],

    ["per K", "per K", 1],
    ["um/(m K)", "µm/(m·K)", 1e-6, "um/m/k"],
    ["uin/(in degF)", "µin/(in·°F)", 1e-6 / rankine, "uin/in/f"],

    ["GPa", "GPa", 1e9],
    ["Mpsi", "Mpsi", (1e6 * lbf) / inch ** 2],

    ["per Pa", "per Pa", 1],
    ["per kPa", "per kPa", 1e-3],
    ["per MPa", "per MPa", 1e-6],
    ["per GPa", "per GPa", 1e-9],
  ] satisfies Row[]
).map(unit);

/** Every unit, by its id. The record has no prototype, so that `constructor` from a damaged link is no unit. */
export const units: Readonly<Record<string, Unit>> = Object.assign(
  Object.create(null),
  Object.fromEntries([...pressures, ...pressures.map(gauge), ...others].map((u) => [u.id, u])),
);

/** The unit with this id; throws where the project names a unit that does not exist. */
export function unitOf(id: string): Unit {
  const unit = units[id];
  if (!unit) throw new Error(`no unit has the id ${JSON.stringify(id)}`);
  return unit;
}

const barometerFor = (unit: Unit, context: UnitContext): SI => {
  if (!unit.gauge) return 0;
  if (context.barometer === undefined)
    throw new DomainError(
      "barometer",
      "A gauge pressure counts from the barometer, and the barometer is not set. Set it, or give an absolute pressure.",
    );
  return context.barometer;
};

/**
 * The number `value` of a unit, in the SI unit of its kind. Units of temperature count from their own zero (75 °F is
 * 297.04 K) and gauge units from the barometer; throws `DomainError` at the field `barometer` where a gauge unit comes
 * without one. `toSI(14.5, "psi")` is 99 974 Pa.
 */
export function toSI(value: number, id: string, context: UnitContext = {}): SI {
  const unit = unitOf(id);
  return value * unit.factor + (unit.offset ?? 0) + barometerFor(unit, context);
}

/** The number that shows an SI value in a unit: `toSI` backwards, with the same failure. */
export function fromSI(value: SI, id: string, context: UnitContext = {}): number {
  const unit = unitOf(id);
  return (value - (unit.offset ?? 0) - barometerFor(unit, context)) / unit.factor;
}
