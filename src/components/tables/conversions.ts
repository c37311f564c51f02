import { type KindInfo, kinds } from "../../../calc/quantity/kinds.ts";
import { unitOf } from "../../../calc/quantity/units.ts";
import {
  type Body,
  type Column,
  pointsOf,
  type ReferenceTable,
  roundNumbers,
  sheetOf,
} from "../reference-table.ts";
import { capitalised } from "../sentence.ts";

/** To so many figures both page and file give a factor. */
const FIGURES = 12;
/** More than the last bits of a product of exact numbers. */
const LAST_BITS = 1e-15;

/** Conventional, to the figures that standards print: the density of water at that temperature is in it. */
const printed = new Set(["inH2O-60F"]);

/** Whether the figures that are printed are all that a factor has. */
export const isExact = (id: string): boolean => {
  const { factor } = unitOf(id);
  return !printed.has(id) && Math.abs(Number(factor.toPrecision(FIGURES)) / factor - 1) < LAST_BITS;
};

/** Kinds with factors to convert by: a temperature has a zero of its own, and a plain number no unit. */
const withFactors = Object.entries<KindInfo>(kinds)
  .filter(([kind, { si }]) => kind !== "temperature" && si !== "1")
  .map(([, info]) => info);

const bodies: readonly Body[] = [...Map.groupBy(withFactors, ({ si }) => si)].map(([si, alike]) => {
  const names = alike.map(({ name }) => name).join(", ");
  const ids = [...new Set(alike.flatMap(({ units }) => units))].filter(
    (id) => id !== si && !unitOf(id).gauge,
  );
  return {
    title: `${capitalised(names)}, in ${unitOf(si).label}`,
    rows: ids.map((id) => {
      const { label, factor } = unitOf(id);
      return [label, factor, isExact(id) ? "exact" : printed.has(id) ? "convention" : "rounded", 1 / factor];
    }),
  };
});

const columns: readonly Column[] = [
  { words: "Unit" },
  { words: "One of it in the SI unit", unit: "1", digits: { upTo: FIGURES } },
  { words: "The figures are" },
  { words: "One SI unit in it", unit: "1", digits: { upTo: 7 } },
];

const scales = ["degC", "degF", "K", "degR"] as const;
const drawn = roundNumbers("degC", -40, [10, 200]);

export default {
  id: "conversions",
  order: 90,
  title: "Unit conversions",
  lead: "Every unit that this reference reads and writes, by kind, with its factor to the SI unit and whether that is exact.",
  synonyms: [
    "convert units",
    "conversion factors",
    "psi to bar",
    "Fahrenheit to Celsius",
    "cfm",
    "horsepower",
    "metric",
  ],
  chart: {
    title: "Degrees Fahrenheit against degrees Celsius",
    caption: "The two scales meet at −40.",
    x: { label: "temperature", unit: "°C", from: -40, to: 200 },
    y: { label: "temperature", unit: "°F", from: -50, to: 400 },
    curves: [{ label: "°F", points: pointsOf(drawn, ["degC", "degF"], (T) => T) }],
  },
  sheets: [
    { id: "factors", title: "Factors", columns, bodies },
    sheetOf({
      id: "temperatures",
      title: "Temperatures",
      rows: roundNumbers("degC", -40, [10, 200], [50, 300]),
      columns: scales.map((unit) => ({
        words: "Temperature",
        unit,
        digits: { decimals: unit === "degF" || unit === "degC" ? 0 : 2 },
        of: (T: number) => T,
      })),
    }),
  ],
  says: [
    "Multiply by the factor to come from a unit to the SI unit, and divide by it to go back. Exact means that the figures here are all there are, since the units are defined by them; rounded means that more figures follow; a convention is a number that standards print, with a measured density in it.",
    "A gauge pressure is counted from the barometer: convert it, then add the barometer. A temperature on one of the two everyday scales has its own zero, so only differences have a factor. One BTU is the international table one, and a column of mercury or water has the density and gravity that its name implies.",
    "A horsepower is the mechanical one. Units of rotation count turns.",
  ],
  caution:
    "A gallon, a ton and a horsepower are not the same everywhere. Ask which one is meant before you convert it.",
  relations: [],
  sources: [
    { key: "nist-sp811", where: "factors for units, appendix B", standing: "from memory" },
    { key: "bipm-si-2019", where: "units accepted for use with the SI", standing: "from memory" },
  ],
  numbers: ["unit-converter"],
  lessons: ["pressures"],
} satisfies ReferenceTable as ReferenceTable;
