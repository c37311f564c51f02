import type { Success } from "../../calculators/engine/evaluate.ts";
import { atRoot } from "../at-root.ts";
import { isBarometerGiven } from "./barometer-row.ts";
import type { Formulas } from "./formulas.ts";
import { barometerLine, givenLines } from "./numbers-as-text.ts";
import type { Shown } from "./rows.ts";
import { texAsText } from "./tex-as-text.ts";
import { texText } from "./tex-text.ts";
import { type WorkingStep, workingSteps } from "./working-steps.ts";

/** A calculator with an outcome, and what its working is written from. */
export interface Worked extends Shown {
  readonly outcome: Success;
  readonly formulas: Formulas;
  readonly link: string;
}

/** What stands over a step: its place, and what is done there. */
const headOf = ({ where, title }: WorkingStep): string => (where ? `${where}: ${title}` : title);

const given = (shown: Shown): readonly string[] => [
  ...givenLines(shown),
  ...(isBarometerGiven(shown) ? [] : [barometerLine(shown.around)]),
];

const stepsOf = ({ outcome, formulas, around }: Worked) => workingSteps(outcome, formulas, around);

/** The address of the page of sources, beside the page that a link leads to. */
const sourceAt = (link: string, key: string): string => new URL(atRoot(`/sources/#${key}`), link).href;

/** Every step in lines of plain text. */
export function workingAsText(worked: Worked): string {
  const { calculator, link } = worked;
  const lines = stepsOf(worked).flatMap((step, i) => [
    "",
    `${i + 1}. ${headOf(step)}`,
    `   ${texAsText(step.symbols)}`,
    ...step.numbers.map(({ part, tex }) => `   ${part ? `${part}: ` : ""}${texAsText(tex)}`),
    ...(step.also === undefined ? [] : [`   that is ${texAsText(step.also)}`]),
    `   Source: ${step.source}, ${step.standing}`,
  ]);
  return [calculator.title, "", ...given(worked), ...lines, "", link].join("\n");
}

/** Letters that would begin something in Markdown or in HTML stand for themselves. */
const plain = (text: string): string => text.replace(/[\\`*_{}[\]<>#|~$&]/g, "\\$&");

/** Every step in Markdown, with formulas as TeX between dollars. */
export function workingAsMarkdown(worked: Worked): string {
  const { calculator, link } = worked;
  const lines = stepsOf(worked).flatMap((step, i) => [
    "",
    `${i + 1}. **${plain(headOf(step))}**`,
    ...[{ tex: step.symbols, part: undefined }, ...step.numbers].flatMap(({ part, tex }) => [
      "",
      `   ${part ? `${part}: ` : ""}$${tex}$`,
    ]),
    ...(step.also === undefined ? [] : ["", `   that is $${step.also}$`]),
    "",
    `   Source: [${plain(step.source)}](${sourceAt(link, step.source)}), ${step.standing}`,
  ]);
  const list = given(worked).map((line) => `- ${plain(line)}`);
  return [`## ${plain(calculator.title)}`, "", ...list, ...lines, "", `<${link}>`].join("\n");
}

/** Every step as a piece of a LaTeX document. */
export function workingAsTex(worked: Worked): string {
  const { calculator, link } = worked;
  const items = stepsOf(worked).flatMap((step) => [
    `\\item \\textbf{${texText(headOf(step))}}`,
    `\\[ ${step.symbols} \\]`,
    ...step.numbers.map(({ part, tex }) => `\\[ ${part ? `\\text{${part}:}\\quad ` : ""}${tex} \\]`),
    ...(step.also === undefined ? [] : [`that is $${step.also}$`, ""]),
    `Source: ${texText(`${step.source}, ${step.standing}`)}`,
  ]);
  return [
    // A link holds no line break: its letters are encoded.
    `% ${link}`,
    "% \\usepackage{amsmath}",
    `\\section*{${texText(calculator.title)}}`,
    "\\begin{itemize}",
    ...given(worked).map((line) => `\\item ${texText(line)}`),
    "\\end{itemize}",
    "\\begin{enumerate}",
    ...items,
    "\\end{enumerate}",
  ].join("\n");
}
