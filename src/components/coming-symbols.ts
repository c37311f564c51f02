import type { Calculator } from "../calculators/engine/calculator.ts";

/** Symbols of fields and results that come and go with choices: the browser has no typesetter. */
export const comingSymbols = (calculator: Calculator): readonly string[] => [
  ...new Set(
    [...Object.values(calculator.inputs), ...Object.values(calculator.results)].flatMap((one) =>
      "symbol" in one && Object.keys(one.when ?? {}).length > 0 ? [one.symbol] : [],
    ),
  ),
];
