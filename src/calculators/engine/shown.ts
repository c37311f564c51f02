import { type Calculator, type Field, isChoice, type Outcome, type When } from "./calculator.ts";

/** The choices among what is given: numbers are left out. */
export const choicesOf = (given: Readonly<Record<string, unknown>>): Readonly<Record<string, string>> =>
  Object.fromEntries(
    Object.entries(given).filter((one): one is [string, string] => typeof one[1] === "string"),
  );

/** Whether something with this condition is shown, given the choices made. A hidden choice decides nothing. */
export function isShown(
  calculator: Calculator,
  when: When | undefined,
  choices: Readonly<Record<string, string>>,
): boolean {
  return Object.entries(when ?? {}).every(
    ([choice, options]) =>
      options.includes(choices[choice] ?? "") &&
      isShown(calculator, calculator.inputs[choice]?.when, choices),
  );
}

/** The answer: the first result in sight with the choices made, by its id. Those that stand in the picture alone do not count. */
export const answerOf = (
  calculator: Calculator,
  choices: Readonly<Record<string, string>>,
): readonly [id: string, result: Outcome] | undefined =>
  Object.entries(calculator.results).find(
    ([, result]) => !result.inPicture && isShown(calculator, result.when, choices),
  );

/** The results that are listed with the choices made: those that stand in the picture alone are not. */
export const listedResults = (calculator: Calculator, choices: Readonly<Record<string, string>>) =>
  Object.entries(calculator.results).filter(
    ([, { inPicture, when }]) => !inPicture && isShown(calculator, when, choices),
  );

/** The numbers in sight with the choices made. */
export const numbersInSight = (calculator: Calculator, choices: Readonly<Record<string, string>>) =>
  Object.entries(calculator.inputs).filter(
    (entry): entry is [string, Field] => !isChoice(entry[1]) && isShown(calculator, entry[1].when, choices),
  );

/** Those that may be sought: without the barometer, which is measured. */
export const freeInputs = (calculator: Calculator, choices: Readonly<Record<string, string>>) =>
  numbersInSight(calculator, choices).filter(([, { barometer }]) => !barometer);
