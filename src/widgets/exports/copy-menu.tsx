import type { CopyText } from "../copying.tsx";
import { frameSnippet } from "../frame-snippet.ts";
import { frameLink, pageLink } from "../page-link.ts";
import { asCsv } from "./csv.ts";
import { mark } from "./csv-text.ts";
import { fetchFormulas } from "./formulas.ts";
import { asJson } from "./json.ts";
import { numbersAsText } from "./numbers-as-text.ts";
import type { Shown } from "./rows.ts";
import { fileName, save } from "./save.ts";
import { type Worked, workingAsMarkdown, workingAsTex, workingAsText } from "./working-as-text.ts";

const workings = {
  "Working as text": workingAsText,
  "Working as TeX": workingAsTex,
  "Working as Markdown": workingAsMarkdown,
} as const;

/** The forms in which a calculator can be taken along. Without an outcome there are no numbers and no working. */
export function CopyMenu({ shown, copy }: { shown: Shown; copy: CopyText }) {
  const { calculator, outcome } = shown;
  const button = (label: string, onClick: () => void, needsOutcome = true) => (
    <button type="button" class="btn quiet" disabled={needsOutcome && !outcome} onClick={onClick}>
      {label}
    </button>
  );
  const copyWorking = (what: string, write: (worked: Worked) => string) =>
    copy(what, async () => {
      if (!outcome) throw new Error("no outcome");
      return write({ ...shown, outcome, formulas: await fetchFormulas(), link: pageLink() });
    });
  const saveAs = (ending: string, type: string, text: string) =>
    save(fileName(calculator.id, ending), type, text);
  const part = `${calculator.id}-exports`;
  return (
    <>
      <fieldset aria-labelledby={`${part}-copy`}>
        <span id={`${part}-copy`}>Copy</span>
        {button("Numbers as text", () => copy("Numbers", async () => numbersAsText(shown, pageLink())))}
        {Object.entries(workings).map(([what, write]) => button(what, () => copyWorking(what, write)))}
        {button("JSON", () => copy("JSON", async () => asJson(shown, pageLink())), false)}
        {button(
          "Frame for a course page",
          () => copy("Frame", async () => frameSnippet(calculator.title, frameLink(calculator), 600)),
          false,
        )}
      </fieldset>
      <fieldset aria-labelledby={`${part}-save`}>
        <span id={`${part}-save`}>Save as a file</span>
        {button("Save CSV", () => saveAs("csv", "text/csv", mark + asCsv(shown, pageLink())), false)}
        {button("Save JSON", () => saveAs("json", "application/json", asJson(shown, pageLink())), false)}
      </fieldset>
    </>
  );
}
