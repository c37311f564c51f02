import { expect, test } from "vitest";
import { differenceText } from "../../../../src/widgets/hold/difference.ts";

const around = { system: "metric", barometer: { value: 1e5, isExample: true } } as const;
const says = (
  kind: Parameters<typeof differenceText>[0]["kind"],
  held: number | undefined,
  now: number | undefined,
  unit: string,
  symbol = "x",
) => differenceText({ kind, symbol }, held, now, unit, around, around).replaceAll("\u00a0", " ");

test.each([
  [says("density", 2.1, 2.31, "kg/m3"), "Held: 2.100 kg/m³. Now +0.21 kg/m³, +10 %."],
  [says("pressure", 210e3, 189e3, "kPa"), "Held: 210.0 kPa. Now −21 kPa, −10 %."],
  [says("ratio", 2, 2.5, "1"), "Held: 2.000. Now +0.5, +25 %."],
  // Nothing is so many per cent hotter than 50 °C.
  [says("temperature", 323.15, 331.05, "degC"), "Held: 50.0 °C. Now +7.9 K."],
  [says("temperature", 323.15, 313.15, "degF"), "Held: 122.0 °F. Now −18 °F."],
  [says("temperature", 323.15, 323.16, "degC"), "Held: 50.0 °C. Now +0.01 K."],
  [says("gaugePressure", 1e5, 1.1e5, "kPa"), "Held: 100.0 kPa. Now +10 kPa."],
  [says("specificEnergy", 1e5, 1.1e5, "kJ/kg", "h"), "Held: 100.0 kJ/kg. Now +10 kJ/kg."],
  [says("specificEnergy", 1e5, 1.1e5, "kJ/kg", "w_c"), "Held: 100.0 kJ/kg. Now +10 kJ/kg, +10 %."],
  [says("massFlow", 0, 0.01, "kg/s"), "Held: 0 kg/s. Now +0.01 kg/s."],
  [says("massFlow", -0.02, -0.01, "kg/s"), "Held: −0.02000 kg/s. Now +0.01 kg/s, +50 %."],
  [says("density", 2.1, 2.1 * (1 + 1e-12), "kg/m3"), "Held: the same."],
  [says("density", undefined, 2.1, "kg/m3"), "Held: none, it had no meaning there."],
  [says("density", 2.1, undefined, "kg/m3"), "Held: 2.100 kg/m³."],
  [says("density", undefined, undefined, "kg/m3"), ""],
])("%s", (text, expected) => expect(text).toBe(expected));
