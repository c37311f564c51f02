// Makes the committed *.woff2 files beside it: node src/fonts/subset.mjs
import { readFile, writeFile } from "node:fs/promises";
import subsetFont from "subset-font";
import { ascii, slanted, upright } from "./characters.ts";

// Printable ASCII, then what prose, units and names in the list of sources need beyond it.
const latin = `${ascii}\u00a0\u2009\u202f–—‘’“”•…′″§°±²³·×÷½−µäåçéèêñóöøüßÄÖÜ`;
const greek = Array.from({ length: 0x39 }, (_, i) => String.fromCodePoint(0x391 + i)).join("");

const text = "node_modules/@fontsource-variable/stix-two-text/files/stix-two-text-";
const katex = "node_modules/katex/dist/fonts/KaTeX_";
const weights = { wght: { min: 400, max: 700 } };

const jobs = [
  { from: `${text}latin-wght-normal`, to: "stix-two-text", keep: latin, variationAxes: weights },
  { from: `${text}latin-wght-italic`, to: "stix-two-text-italic", keep: latin, variationAxes: weights },
  { from: `${text}greek-wght-italic`, to: "stix-two-text-greek-italic", keep: greek, variationAxes: weights },
  { from: `${katex}Main-Regular`, to: "KaTeX_Main-Regular", keep: upright },
  { from: `${katex}Math-Italic`, to: "KaTeX_Math-Italic", keep: slanted },
];

for (const { from, to, keep, ...options } of jobs) {
  const whole = await readFile(`${from}.woff2`);
  const subset = await subsetFont(whole, keep, { targetFormat: "woff2", ...options });
  await writeFile(new URL(`${to}.woff2`, import.meta.url), subset);
  console.log(`${to}: ${(subset.length / 1000).toFixed(1)} kB of ${(whole.length / 1000).toFixed(1)}`);
}
