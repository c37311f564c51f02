const digits = "⁰¹²³⁴⁵⁶⁷⁸⁹";

/**
 * A number as `writeNumber` writes it, for math mode; brackets around it stay. `numberTex("−1.5 × 10⁻⁵")` is
 * `-1.5 \times 10^{-5}`.
 */
export const numberTex = (written: string): string =>
  written
    .replace(/10([⁻⁰¹²³⁴⁵⁶⁷⁸⁹]+)/g, (_, power: string) => {
      const plain = [...power].map((c) => (c === "⁻" ? "-" : digits.indexOf(c))).join("");
      return `10^{${plain}}`;
    })
    .replaceAll("\u2212", "-")
    .replaceAll("\u202f", "\\,")
    .replaceAll("\u00a0", " ")
    .replaceAll("×", "\\times");
