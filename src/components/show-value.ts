const minus = (text: string): string => text.replaceAll("-", "\u2212");

const raised = "⁰¹²³⁴⁵⁶⁷⁸⁹";
const superscript = (power: string): string =>
  power.replace(/[-\d]/g, (c) => (c === "-" ? "⁻" : (raised[Number(c)] ?? "")));

/** A number of a check as it is printed in a table: up to seven figures, a true minus, powers of ten where it is far from 1. */
export function showValue(value: number | string | null): string {
  if (value === null) return "none";
  if (typeof value === "string") return value;
  const size = Math.abs(value);
  if (value !== 0 && (size < 1e-4 || size >= 1e7)) {
    const [digits = "", power = ""] = value.toExponential(6).split("e");
    return `${minus(String(Number(digits)))}\u00a0×\u00a010${superscript(String(Number(power)))}`;
  }
  return minus(String(Number(value.toPrecision(7))));
}

/** A relative deviation, in percent or in parts per million where that reads better. */
export function showDeviation(relative: number): string {
  const size = Math.abs(relative);
  if (size === 0) return "0";
  if (size < 1e-9) return "below 0.001 ppm";
  if (size < 1e-5) return minus(`${Number((relative * 1e6).toPrecision(2))} ppm`);
  return minus(`${Number((relative * 100).toPrecision(2))} %`);
}
