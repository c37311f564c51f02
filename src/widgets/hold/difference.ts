import type { SI } from "../../../calc/quantity/domain-error.ts";
import { fromSI, unitOf } from "../../../calc/quantity/units.ts";
import { trimZeros, writeIn, writeNumber } from "../../../calc/quantity/write.ts";
import type { Outcome } from "../../calculators/engine/calculator.ts";
import { barometerContext, type Surroundings } from "../../calculators/engine/entry.ts";
import { unitLabel } from "../unit-label.ts";

/** Kinds that count from a zero somebody chose, where a part of the number says nothing. */
const chosenZero = new Set(["temperature", "gaugePressure", "altitude"]);
/** Symbols of enthalpy and entropy, whose zeros are chosen too. */
const chosenSymbols = new Set(["h", "s"]);

/** The unit of a difference of two numbers in a unit: on a scale of temperature its degrees. */
const differenceUnit: Readonly<Record<string, string>> = { degC: "K", degF: "degF-d", degR: "degF-d" };

const withSign = (x: number, written: string): string => (x > 0 ? `+${written}` : written);

/** So near that only the last bits of the arithmetic differ. */
const isSame = (a: SI, b: SI): boolean => Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b));

/**
 * What a result was and how it differs now, in words: “Held: 2.100 kg/m³. Now +0.21 kg/m³, +10 %.” The difference has
 * three figures, or the tenth of a degree, and a part only where the zero of the quantity is a true one.
 */
export function differenceText(
  { kind, symbol }: Pick<Outcome, "kind" | "symbol">,
  held: SI | undefined,
  now: SI | undefined,
  unit: string,
  heldAround: Surroundings,
  around: Surroundings,
): string {
  const label = (id: string) => (unitLabel(id) ? `\u00a0${unitLabel(id)}` : "");
  const written = (x: SI, at: Surroundings) => writeIn(x, unit, barometerContext(at)) + label(unit);
  if (held === undefined) return now === undefined ? "" : "Held: none, it had no meaning there.";
  const was = `Held: ${written(held, heldAround)}.`;
  if (now === undefined) return was;
  const [a, b] = [
    fromSI(held, unit, barometerContext(heldAround)),
    fromSI(now, unit, barometerContext(around)),
  ];
  if (isSame(a, b)) return "Held: the same.";
  const isScale = unitOf(unit).offset !== undefined || differenceUnit[unit] !== undefined;
  const tenths = (Math.abs(b - a) < 0.05 ? writeNumber(b - a, 1) : trimZeros((b - a).toFixed(1))).replace(
    "-",
    "−",
  );
  const by = withSign(b - a, isScale ? tenths : trimZeros(writeNumber(b - a, 3)));
  const hasPart = !chosenZero.has(kind) && !chosenSymbols.has(symbol) && held !== 0;
  const part = (now - held) / Math.abs(held);
  const inPart = hasPart ? `, ${withSign(part, trimZeros(writeNumber(100 * part, 3)))}\u00a0%` : "";
  return `${was} Now ${by}${label(differenceUnit[unit] ?? unit)}${inPart}.`;
}
