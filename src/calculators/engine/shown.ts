import type { Calculator, When } from "./calculator.ts";

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
