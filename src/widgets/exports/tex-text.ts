const special: Readonly<Record<string, string>> = {
  "\\": "\\textbackslash{}",
  "~": "\\textasciitilde{}",
  "^": "\\textasciicircum{}",
  "<": "\\textless{}",
  ">": "\\textgreater{}",
  "\u2212": "$-$",
  "×": "$\\times$",
  "·": "$\\cdot$",
  µ: "$\\mu$",
  "°": "\\textdegree{}",
  "\u00a0": "~",
  "\u202f": "\\,",
};

const raised = "⁰¹²³⁴⁵⁶⁷⁸⁹";

/** A text of the site for the running text of a LaTeX document: what TeX would take as a command stands for itself. */
export const texText = (text: string): string =>
  text
    .replace(/[\p{Cc}\p{Cs}]/gu, " ")
    .replace(/[\\~^<>−×·µ°\u00a0\u202f]|[&%$#_{}]/g, (c) => special[c] ?? `\\${c}`)
    .replace(/[⁻⁰¹²³⁴⁵⁶⁷⁸⁹]+/g, (power) => {
      const digits = [...power].map((c) => (c === "⁻" ? "-" : raised.indexOf(c))).join("");
      return `\\textsuperscript{${digits}}`;
    })
    .replace(/[₀-₉]/g, (c) => `\\textsubscript{${c.charCodeAt(0) - 0x2080}}`);
