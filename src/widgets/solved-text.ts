import { lastBits } from "../../calc/quantity/accept.ts";
import type { SI } from "../../calc/quantity/domain-error.ts";
import { kinds } from "../../calc/quantity/kinds.ts";
import { fromSI, toSI } from "../../calc/quantity/units.ts";
import { writeBound, writeQuantity } from "../../calc/quantity/write.ts";
import type { Field, Outcome } from "../calculators/engine/calculator.ts";
import { barometerContext, type Surroundings } from "../calculators/engine/entry.ts";
import { tryModel, withLimit } from "../calculators/engine/evaluate.ts";
import type { Barrier, Best, Found, Question, Refused, Solved } from "../calculators/engine/solve.ts";
import { isAsWanted } from "../calculators/engine/want.ts";

/** What words are written for: the question, and the units in which its two quantities are shown. */
export interface Asked {
  readonly question: Question;
  readonly inputUnit: string;
  readonly resultUnit: string;
  readonly around: Surroundings;
}

/** A value that does, as it is read, and as it is typed into the field. */
export interface Offer {
  readonly value: SI;
  readonly shown: string;
  readonly typed: string;
}

export interface Told {
  /** The answer, and why it is no other. */
  readonly says: string;
  readonly offers: readonly Offer[];
  /** How closely it was looked. */
  readonly looked: string;
}

const few = ["No", "One", "Two", "Three", "Four", "Five", "Six", "Seven", "Eight", "Nine"];
const fieldOf = ({ calculator, input }: Question): Field => calculator.inputs[input] as Field;
const outcomeOf = ({ calculator, result }: Question): Outcome => calculator.results[result] as Outcome;
const quoted = (label: string): string => `“${label}”`;

const writeInput = ({ inputUnit, around }: Asked, x: SI, digits?: number): string =>
  writeQuantity(x, inputUnit, barometerContext(around), digits);

/** The shortest number that gives the result as wanted once it is typed: four figures or more. */
export function typedText({ question, inputUnit, around }: Asked, x: SI): string {
  const { calculator, given, input, result, target } = question;
  const { limits, whole } = fieldOf(question);
  if (whole) return String(x);
  const context = barometerContext(around);
  const number = fromSI(x, inputUnit, context);
  const isIn = (value: SI): boolean =>
    value >= limits[0] - lastBits(limits[0]) && value <= limits[1] + lastBits(limits[1]);
  for (let digits = 4; digits < 16; digits++) {
    const short = Number(number.toPrecision(digits));
    const value = toSI(short, inputUnit, context);
    if (isIn(value) && isAsWanted(tryModel(calculator, given, { [input]: value })?.[result], target))
      return String(short);
  }
  return String(number);
}

/** Values of the input beside each other, told apart. */
function offersOf(asked: Asked, values: readonly SI[]): readonly Offer[] {
  const all = [undefined, 6, 9].map((digits) => values.map((value) => writeInput(asked, value, digits)));
  const shown = all.find((texts) => new Set(texts).size === texts.length) ?? all[2] ?? [];
  return values.map((value, i) => ({
    value,
    shown: shown[i] ?? "",
    typed: typedText(asked, value),
  }));
}

const listed = (texts: readonly string[]): string =>
  texts.length < 2 ? (texts[0] ?? "") : `${texts.slice(0, -1).join(", ")} and ${texts.at(-1)}`;

const limitsText = ({ question, inputUnit, around }: Asked): string => {
  const [from, to] = fieldOf(question).limits;
  const context = barometerContext(around);
  return `from ${writeBound(from, inputUnit, context, 6, "least")} to ${writeBound(to, inputUnit, context, 6, "most")}`;
};

function found(asked: Asked, { roots, stretches }: Found): Pick<Told, "says" | "offers"> {
  const offers = offersOf(asked, roots);
  const one = roots.length === 1;
  const count = few[roots.length] ?? String(roots.length);
  const single = `${count} value${one ? " does" : "s do"}: ${listed(offers.map(({ shown }) => shown))}.`;
  const spans = stretches.map(
    ({ from, to }) =>
      `Every value looked at from ${writeInput(asked, from)} to ${writeInput(asked, to)} does.`,
  );
  return { says: [...(roots.length > 0 ? [single] : []), ...spans].join(" "), offers };
}

function barrierText(barrier: Barrier, stays: Best["stays"], around: Surroundings): string {
  if (stays === "jumps" && (barrier.at === "turn" || barrier.at === "limit"))
    return "It jumps from one side of what is wanted to the other.";
  switch (barrier.at) {
    case "turn":
      return stays === "below" ? "It is lower on both sides of that." : "It is higher on both sides of that.";
    case "limit":
      return "The field takes no value beyond that.";
    case "refusal":
      return `Beyond that: ${withLimit(barrier.says, barrier.limit, around)}`;
    case "no value":
      return "Beyond that the result has no meaning.";
    case "whole":
      return "Only whole numbers are taken.";
  }
}

function best(asked: Asked, { value, at, stays, barrier }: Best): string {
  const { question, resultUnit, around } = asked;
  const context = barometerContext(around);
  const near = [undefined, 6, 9].map((digits) => writeQuantity(value, resultUnit, context, digits));
  // A near miss is not to look like what was wanted.
  const wanted = [undefined, 6, 9].map((digits) =>
    writeQuantity(question.target, resultUnit, context, digits),
  );
  const reached = near.find((text, i) => text !== wanted[i]) ?? near[2];
  const most = {
    below: "The most that is reached is",
    above: "The least that is reached is",
    jumps: "The nearest is",
  };
  return `No value ${limitsText(asked)} does. ${most[stays]} ${reached}, at ${writeInput(asked, at)}. ${barrierText(barrier, stays, around)}`;
}

function refused({ question, around }: Asked, { why, refusal }: Refused): string {
  const [result, input] = [outcomeOf(question), fieldOf(question)].map(({ label }) => quoted(label));
  switch (why) {
    case "not asked":
      return `With the choices made, ${result} and ${input} are not both shown, so nothing can be found.`;
    case "target":
      return "What is wanted is no number.";
    case "no influence":
      return `${result} does not depend on ${input}, as the other fields stand. Another field has to be chosen.`;
    case "nothing":
      return [
        `As the other fields stand, no value of ${input} gives a result.`,
        ...(refusal ? [withLimit(refusal.says, refusal.limit, around)] : []),
      ].join(" ");
  }
}

/** The answer in words. */
export function tell(asked: Asked, solved: Solved): Told {
  if (solved.kind === "refused") return { says: refused(asked, solved), offers: [], looked: "" };
  const looked = fieldOf(asked.question).whole
    ? `Looked at every whole number ${limitsText(asked)}.`
    : `Looked at ${solved.points} values ${limitsText(asked)}. Two answers between neighbours of these can be missed.`;
  if (solved.kind === "best") return { says: best(asked, solved), offers: [], looked };
  return { ...found(asked, solved), looked };
}

/** The unit in which a wanted result is first asked for. */
export const unitOfWanted = ({ kind }: Outcome, around: Surroundings): string => kinds[kind][around.system];
