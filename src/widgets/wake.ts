// Wakes what the build has drawn: the settings in the head at once, a calculator on its own page at once, and one inside
// a text when it comes into sight. Each page fetches only the definitions of its own calculators.
import { h, hydrate } from "preact";
import type { Calculator } from "../calculators/engine/calculator.ts";
import { CalculatorSheet } from "./calculator-sheet.tsx";
import { HeadSettings } from "./head-settings.tsx";

const definitions = import.meta.glob<{ readonly default: Calculator }>("../calculators/*.ts");

async function wakeCalculator(section: HTMLElement): Promise<void> {
  const sheet = section.querySelector("[data-sheet]");
  const definition = await definitions[`../calculators/${section.dataset["calculator"]}.ts`]?.();
  if (sheet && definition) hydrate(h(CalculatorSheet, { calculator: definition.default }), sheet);
}

const settings = document.querySelector("[data-settings]");
if (settings) hydrate(h(HeadSettings, {}), settings);

const inSight = new IntersectionObserver((entries) => {
  for (const { isIntersecting, target } of entries) {
    if (!isIntersecting) continue;
    inSight.unobserve(target);
    wakeCalculator(target as HTMLElement);
  }
});
for (const section of document.querySelectorAll<HTMLElement>("[data-calculator]")) {
  if (section.dataset["wake"] === "sight") inSight.observe(section);
  else wakeCalculator(section);
}
