// Makes the committed *.woff2 files beside it: node src/fonts/subset.mjs
import { readFile, writeFile } from "node:fs/promises";
import subsetFont from "subset-font";

const span = (from, to) =>
  Array.from({ length: to - from + 1 }, (_, i) => String.fromCodePoint(from + i)).join("");

// Printable ASCII, then what prose, units and names in the list of sources need beyond it.
const latin = `${span(0x20, 0x7e)}\u00a0\u2009\u202f–—‘’“”•…′″§°±²³·×÷½−µäåçéèêñóöøüßÄÖÜ`;
const greek = span(0x391, 0x3c9);

// Formulas: letters, Greek, accents that stand over letters, and the operators and relations of calculation.
const formulas = [
  [0x20, 0x7e],
  [0xa0, 0xff],
  [0x2c6, 0x2dd],
  [0x300, 0x338],
  [0x391, 0x3d6],
  [0x2010, 0x2044],
  [0x210f, 0x2118],
  [0x2190, 0x2199],
  [0x2202, 0x2299],
  [0x22c4, 0x22c6],
]
  .map(([from, to]) => span(from, to))
  .join("");

const text = "node_modules/@fontsource-variable/stix-two-text/files/stix-two-text-";
const katex = "node_modules/katex/dist/fonts/KaTeX_";
const weights = { wght: { min: 400, max: 700 } };

const jobs = [
  { from: `${text}latin-wght-normal`, to: "stix-two-text", keep: latin, variationAxes: weights },
  { from: `${text}latin-wght-italic`, to: "stix-two-text-italic", keep: latin, variationAxes: weights },
  { from: `${text}greek-wght-italic`, to: "stix-two-text-greek-italic", keep: greek, variationAxes: weights },
  { from: `${katex}Main-Regular`, to: "KaTeX_Main-Regular", keep: formulas },
  { from: `${katex}Math-Italic`, to: "KaTeX_Math-Italic", keep: formulas },
];

for (const { from, to, keep, ...options } of jobs) {
  const whole = await readFile(`${from}.woff2`);
  const subset = await subsetFont(whole, keep, { targetFormat: "woff2", ...options });
  await writeFile(new URL(`${to}.woff2`, import.meta.url), subset);
  console.log(`${to}: ${(subset.length / 1000).toFixed(1)} kB of ${(whole.length / 1000).toFixed(1)}`);
}
