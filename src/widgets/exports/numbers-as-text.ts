import { kinds } from "../../../calc/quantity/kinds.ts";
import { unitOf } from "../../../calc/quantity/units.ts";
import { writeQuantity } from "../../../calc/quantity/write.ts";
import { isChoice } from "../../calculators/engine/calculator.ts";
import { barometerContext, type Surroundings } from "../../calculators/engine/entry.ts";
import { isShown } from "../../calculators/engine/shown.ts";
import { givenRows, resultRows, type Shown } from "./rows.ts";

/** The inputs in sight: “Boost on the gauge: 1.2 bar”. */
export const givenLines = (shown: Shown): readonly string[] =>
  givenRows(shown).map((row) => {
    if (row.is === "choice") return `${row.label}: ${row.optionLabel}`;
    if (row.is === "unusable") return `${row.label}: ${row.typed} (cannot be used)`;
    const text = writeQuantity(row.value, row.unit, barometerContext(shown.around));
    return `${row.label}: ${text}${row.isExample ? " (example value)" : ""}`;
  });

/** The barometer of the page, in the unit of the page. */
export function barometerLine(around: Surroundings): string {
  const barometer = writeQuantity(
    around.barometer.value,
    kinds.pressure[around.system],
    barometerContext(around),
  );
  return `Barometer: ${barometer}${around.barometer.isExample ? " (example value)" : ""}`;
}

/** Inputs, results, barometer and link as lines of text. */
export function numbersAsText(shown: Shown, link: string): string {
  const { calculator, around } = shown;
  const lines = [calculator.title, ...givenLines(shown), ""];
  let told: string | undefined;
  for (const { heading, label, value, unit } of resultRows(shown)) {
    if (value === undefined) continue;
    if (heading && heading !== told) lines.push(heading);
    told = heading;
    lines.push(`${label}: ${writeQuantity(value, unit, barometerContext(around))}`);
  }
  lines.push("", barometerLine(around), link);
  return lines.join("\n");
}

/** Whether a gauge or a barometer is among what is shown: then the numbers hold at one barometer only. */
const hangsOnBarometer = ({ calculator, entries }: Shown): boolean =>
  Object.entries(calculator.inputs).some(
    ([id, input]) =>
      !isChoice(input) &&
      isShown(calculator, input.when, entries.choices) &&
      unitOf(entries.fields[id]?.shown ?? "1").gauge === true,
  ) || Object.values(entries.units ?? {}).some((unit) => unitOf(unit).gauge === true);

const isBarometerAsked = ({ calculator }: Shown): boolean =>
  Object.values(calculator.inputs).some((input) => !isChoice(input) && input.barometer);

/**
 * A quick answer as one line, to be sent: what was asked, what was given, the barometer where it matters, what came out,
 * and the link that opens it again.
 */
export function answerAsText(shown: Shown, link: string): string {
  const { calculator, around } = shown;
  const given = [...givenLines(shown)];
  if (!isBarometerAsked(shown) && hangsOnBarometer(shown)) given.push(barometerLine(around));
  const found = resultRows(shown, { isQuick: true }).flatMap(({ label, value, unit }) =>
    value === undefined ? [] : [`${label}: ${writeQuantity(value, unit, barometerContext(around))}`],
  );
  // Plain spaces: the line goes into messages and notes that search for what was typed.
  const line = `${calculator.asks} ${found.join("; ")}. Given: ${given.join("; ")}.`.replaceAll(
    "\u00a0",
    " ",
  );
  return `${line} ${link}`;
}
