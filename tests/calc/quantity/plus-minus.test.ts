import { describe, expect, test } from "vitest";
import { type Kind, kinds } from "../../../calc/quantity/kinds.ts";
import { readQuantity } from "../../../calc/quantity/read.ts";

const read = (text: string, kind: Kind, unit: string = kinds[kind].metric) =>
  readQuantity(text, kind, unit, { barometer: 99e3 });
const psi = 6894.757293168361;

describe("a reading with its uncertainty", () => {
  test.each<[string, Kind, string, number, number]>([
    ["45 ± 2 °C", "temperature", "degC", 318.15, 2],
    ["45 +/- 2", "temperature", "degC", 318.15, 2],
    ["45 °C ± 1.5 K", "temperature", "degF", 318.15, 1.5],
    ["113 °F ± 3.6 °F", "temperature", "degC", 318.15, 2],
    ["113 ± 3.6", "temperature", "degF", 318.15, 2],
    ["99 kPa ± 0.5", "pressure", "kPa", 99e3, 500],
    ["15 psig ± 0.2", "pressure", "kPa", 99e3 + 15 * psi, 0.2 * psi],
    ["15 ± 1 %", "gaugePressure", "psi", 15 * psi, 0.15 * psi],
    ["2.2 bar gauge ± 1 %", "pressure", "kPa", 319e3, 2.2e3],
    ["0.3 ± 0.01 kg/s", "massFlow", "kg/s", 0.3, 0.01],
    ["0.3 kg/s ± 2 %", "massFlow", "kg/s", 0.3, 0.006],
    ["85 % ± 2 %", "fraction", "1", 0.85, 0.02],
    ["0.85 ± 0.02", "fraction", "1", 0.85, 0.02],
    ["10 + 5 ± 1", "ratio", "1", 15, 1],
    ["20 ± 1", "temperatureDifference", "K", 20, 1],
  ])("%s as %s in %s", (text, kind, unit, value, within) => {
    const found = read(text, kind, unit);
    expect(found.ok ? "" : found.says).toBe("");
    expect(found).toMatchObject({
      value: expect.closeTo(value, 6),
      within: expect.closeTo(within, 6),
      understood: expect.stringMatching(/^Read as .+, give or take .+\.$/),
    });
  });

  test.each<[string, Kind, RegExp]>([
    ["45 ± -2", "temperature", /^An uncertainty is zero or more\.$/],
    ["45 ± two", "temperature", /^Behind ± a number is wanted, and “two” is none\.$/],
    ["45 ± 1 %", "temperature", /^Per cent of a temperature depends on where its scale begins\./],
    ["0.85 ± 2 %", "fraction", /^Type 0\.85 ± 0\.02, or 85 % ± 2 %/],
    ["45 ± 2 kPa", "temperature", /^kPa is a unit of pressure\. This field takes temperature/],
    ["45 °C ± 2 kPa", "temperature", /^kPa is a unit of pressure\./],
    ["45 ± 2 ± 1", "temperature", /^Behind|is more than|is no|“45 ± 2”|± 1/],
    ["± 2", "temperature", /^“± 2” is not a number\./],
    ["45 ±", "temperature", /^“±” is not a unit known here\./],
  ])("refuses %s as %s", (text, kind, says) => {
    const found = read(text, kind);
    expect(found.ok ? `read as ${found.value}` : found.says).toMatch(says);
  });
});
