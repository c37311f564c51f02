// Makes the committed *.woff2 files beside it: node src/fonts/subset.mjs
import { readFile, writeFile } from "node:fs/promises";
import subsetFont from "subset-font";

const files = "node_modules/@fontsource-variable/stix-two-text/files";

const span = (from, to) =>
  Array.from({ length: to - from + 1 }, (_, i) => String.fromCodePoint(from + i)).join("");

// Printable ASCII, then what prose, units and names in the list of sources need beyond it.
const latin = `${span(0x20, 0x7e)}\u00a0\u2009\u202f–—‘’“”•…′″§°±²³·×÷½−µäåçéèêñóöøüßÄÖÜ`;
const greek = span(0x391, 0x3c9);

const jobs = [
  { from: "latin-wght-normal", to: "stix-two-text", text: latin },
  { from: "latin-wght-italic", to: "stix-two-text-italic", text: latin },
  { from: "greek-wght-italic", to: "stix-two-text-greek-italic", text: greek },
];

for (const { from, to, text } of jobs) {
  const whole = await readFile(`${files}/stix-two-text-${from}.woff2`);
  const subset = await subsetFont(whole, text, {
    targetFormat: "woff2",
    variationAxes: { wght: { min: 400, max: 700 } },
  });
  await writeFile(new URL(`${to}.woff2`, import.meta.url), subset);
  console.log(`${to}: ${(subset.length / 1000).toFixed(1)} kB`);
}
