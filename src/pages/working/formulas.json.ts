import { every } from "../../components/calculators.ts";
import { formulaOf } from "../../components/formulas.ts";

/** Every formula that a calculator's working may show, as TeX: fetched when somebody copies a working. */
export function GET(): Response {
  const relations = new Map(every.flatMap((calculator) => calculator.relations.map((one) => [one.id, one])));
  return Response.json(Object.fromEntries([...relations.values()].map((one) => [one.id, formulaOf(one)])));
}
