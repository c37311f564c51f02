// Wakes what the build has drawn: the settings in the head at once, a calculator on its own page at once, and one inside
// a text when it comes into sight. Each page fetches only the definitions of its own calculators.
import { type ComponentChild, h, hydrate } from "preact";
import type { Calculator } from "../calculators/engine/calculator.ts";
import { HeadSettings } from "./head-settings.tsx";

const definitions = import.meta.glob<{ readonly default: Calculator }>("../calculators/*.ts");

type Control = HTMLInputElement | HTMLSelectElement;

const isRadio = (control: Control): control is HTMLInputElement => control.type === "radio";

const isChanged = (control: Control): boolean => {
  if (isRadio(control)) return control.checked && !control.defaultChecked;
  return control instanceof HTMLInputElement
    ? control.value !== control.defaultValue
    : [...control.options].some((option) => option.selected !== option.defaultSelected);
};

/** Wakes a drawn part; what was typed or chosen before it woke is typed again. */
function wakePart(part: ComponentChild, root: Element): void {
  const early = [...root.querySelectorAll<Control>("input, select")]
    .filter(isChanged)
    .map((control) => [control, control.value] as const);
  hydrate(part, root);
  for (const [control, value] of early) {
    if (isRadio(control)) control.checked = true;
    else control.value = value;
    const isTyped = control instanceof HTMLInputElement && !isRadio(control);
    control.dispatchEvent(new Event(isTyped ? "input" : "change", { bubbles: true }));
  }
}

/** Says that a part of the page could not be fetched: what is drawn there would not answer. */
function tellOfFailure(section: Element): void {
  const note = document.createElement("p");
  note.className = "aside note";
  note.setAttribute("role", "alert");
  note.textContent =
    "This calculator could not be fetched in full, so the example stands still. Load the page again.";
  section.prepend(note);
}

/** What draws a calculator in its section: fetched beside the definition, since pages without calculators need none. */
async function sheetFor({ dataset, classList }: HTMLElement): Promise<(of: Calculator) => ComponentChild> {
  const { title, view } = dataset;
  if (view === undefined) {
    const { CalculatorSheet } = await import("./calculator-sheet.tsx");
    return (calculator) => h(CalculatorSheet, { calculator, ...(title && { title }) });
  }
  const Sheet = classList.contains("quick")
    ? (await import("./quick-sheet.tsx")).QuickSheet
    : (await import("./view-sheet.tsx")).ViewSheet;
  return (calculator) => h(Sheet, { calculator, view: JSON.parse(view) });
}

async function wakeCalculator(section: HTMLElement): Promise<void> {
  const root = section.querySelector("[data-sheet]");
  try {
    const [definition, sheet] = await Promise.all([
      definitions[`../calculators/${section.dataset["calculator"]}.ts`]?.(),
      sheetFor(section),
    ]);
    if (root && definition) wakePart(sheet(definition.default), root);
  } catch {
    tellOfFailure(section);
  }
}

const settings = document.querySelector("[data-settings]");
if (settings) wakePart(h(HeadSettings, {}), settings);

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
