import type { Calculator } from "../calculators/engine/calculator.ts";

const files = import.meta.glob<{ default: Calculator }>("../calculators/*.ts", { eager: true });

/** All of them. */
export const every: readonly Calculator[] = Object.values(files).map((file) => file.default);

/** The calculator with this id. Throws where src/calculators/ has none. */
export function calculator(id: string): Calculator {
  const found = files[`../calculators/${id}.ts`]?.default;
  if (!found) throw new Error(`No calculator “${id}”. Expected a file of src/calculators/ by that name.`);
  return found;
}
