import { kinds } from "../../calc/quantity/kinds.ts";
import { type Calculator, isChoice } from "../../src/calculators/engine/calculator.ts";
import { version } from "../../src/calculators/engine/former-examples.ts";

/** Every id and example of today that a link may carry or leave out, one a line as `public-ids.txt` lists them. */
export function publicIds(calculators: readonly Calculator[]): readonly string[] {
  const units = Object.entries(kinds).flatMap(([kind, { units }]) =>
    units.map((unit) => `unit ${kind} ${unit}`),
  );
  const ids = calculators.flatMap(({ id: of, inputs, results }) => [
    `calculator ${of}`,
    ...Object.entries(inputs).flatMap(([id, input]) => [
      ...(isChoice(input)
        ? Object.keys(input.options).map((option) => `option ${of}.${id} ${option}`)
        : [`input ${of}.${id} ${input.kind}`]),
      `example ${version} ${of}.${id} ${input.start}`,
    ]),
    ...Object.entries(results).map(([id, { kind }]) => `result ${of}.${id} ${kind}`),
  ]);
  return [...units, ...ids].sort();
}
