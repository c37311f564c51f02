import { constantTemperature } from "../../../calc/exchanger/effectiveness/constant-temperature.ts";
import { counterflow } from "../../../calc/exchanger/effectiveness/counterflow.ts";
import { crossAirMixed } from "../../../calc/exchanger/effectiveness/cross-air-mixed.ts";
import { crossMixed } from "../../../calc/exchanger/effectiveness/cross-mixed.ts";
import { crossOneRow } from "../../../calc/exchanger/effectiveness/cross-one-row.ts";
import { crossUnmixed } from "../../../calc/exchanger/effectiveness/cross-unmixed.ts";
import { crossUnmixedApproximation } from "../../../calc/exchanger/effectiveness/cross-unmixed-approximation.ts";
import { parallelFlow } from "../../../calc/exchanger/effectiveness/parallel-flow.ts";
import { shell12 } from "../../../calc/exchanger/effectiveness/shell-1-2.ts";
import { shell14 } from "../../../calc/exchanger/effectiveness/shell-1-4.ts";
import { shell24 } from "../../../calc/exchanger/effectiveness/shell-2-4.ts";
import { shell36 } from "../../../calc/exchanger/effectiveness/shell-3-6.ts";
import { smallerEffectiveness } from "../../../calc/exchanger/smaller-effectiveness.ts";
import type { Relation } from "../../../calc/relation/relation.ts";
import { subject } from "../subject.ts";

interface Given extends Record<string, number | string> {
  kind: string;
  air: "smaller" | "larger";
  NTU_min: number;
  C_star: number;
}

const relations: Readonly<Record<string, Relation<"NTU" | "R">>> = {
  counterflow,
  "parallel flow": parallelFlow,
  "cross, both unmixed": crossUnmixed,
  "cross, both unmixed, approximation": crossUnmixedApproximation,
  "cross, both mixed": crossMixed,
  "one shell, two tube passes": shell12,
  "two shells": shell24,
  "three shells": shell36,
  "one shell, four tube passes": shell14,
};

/** The books name the stream that is mixed by its size; here the air or the water is. */
function relationOf(kind: string, air: Given["air"]): Relation<"NTU" | "R"> {
  if (kind === `cross, ${air} stream mixed`) return crossAirMixed;
  if (/^cross, \w+ stream mixed$/.test(kind)) return crossOneRow;
  const relation = relations[kind];
  if (!relation) throw new Error(`no relation for ${kind}`);
  return relation;
}

/** The effectiveness of textbooks, with either stream taken for the air. */
export default subject<Given>(({ kind, air, NTU_min, C_star }, trace) => {
  if (kind === "constant temperature")
    return { epsilon: trace.use(constantTemperature, { NTU: NTU_min }, kind) };
  const isSmaller = air === "smaller";
  const R = isSmaller ? C_star : 1 / C_star;
  const NTU = isSmaller ? NTU_min : NTU_min * C_star;
  const P = trace.use(relationOf(kind, air), { NTU, R }, kind);
  return { epsilon: trace.use(smallerEffectiveness, { P, R }, kind) };
});
