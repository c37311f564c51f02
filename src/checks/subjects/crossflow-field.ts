import { counterCross2 } from "../../../calc/exchanger/effectiveness/counter-cross-2.ts";
import { counterCross2Remixed } from "../../../calc/exchanger/effectiveness/counter-cross-2-remixed.ts";
import { counterCross2Rows } from "../../../calc/exchanger/effectiveness/counter-cross-2-rows.ts";
import { counterCross2RowsIdentical } from "../../../calc/exchanger/effectiveness/counter-cross-2-rows-identical.ts";
import { counterCross2RowsInverted } from "../../../calc/exchanger/effectiveness/counter-cross-2-rows-inverted.ts";
import { crossOneRow } from "../../../calc/exchanger/effectiveness/cross-one-row.ts";
import { crossUnmixed } from "../../../calc/exchanger/effectiveness/cross-unmixed.ts";
import { parallelCross2 } from "../../../calc/exchanger/effectiveness/parallel-cross-2.ts";
import { parallelCross2Remixed } from "../../../calc/exchanger/effectiveness/parallel-cross-2-remixed.ts";
import { parallelCross2Rows } from "../../../calc/exchanger/effectiveness/parallel-cross-2-rows.ts";
import { parallelCross2RowsIdentical } from "../../../calc/exchanger/effectiveness/parallel-cross-2-rows-identical.ts";
import { parallelCross2RowsInverted } from "../../../calc/exchanger/effectiveness/parallel-cross-2-rows-inverted.ts";
import { fieldEffectiveness } from "../../../calc/exchanger/field/field-effectiveness.ts";
import type { Across } from "../../../calc/exchanger/layout.ts";
import type { Relation } from "../../../calc/relation/relation.ts";
import { subject } from "../subject.ts";

export interface Given extends Record<string, number | string> {
  config: string;
  air: "unmixed" | "remixed";
  NTU: number;
  Cr: number;
  cmin: "through" | "two_pass";
}

/** Layouts that have a relation of their own, by the air and the words of the file. */
const relations: Readonly<Record<string, Relation<"NTU" | "R">>> = {
  "unmixed single_unmixed": crossUnmixed,
  "unmixed single_tube_mixed": crossOneRow,
  "unmixed counter_tube_unmixed_turn_mixed": counterCross2Rows,
  "unmixed counter_tube_unmixed_turn_identical": counterCross2RowsIdentical,
  "unmixed counter_tube_unmixed_turn_inverted": counterCross2RowsInverted,
  "unmixed counter_tube_mixed": counterCross2,
  "unmixed parallel_tube_unmixed_turn_mixed": parallelCross2Rows,
  "unmixed parallel_tube_unmixed_turn_identical": parallelCross2RowsIdentical,
  "unmixed parallel_tube_unmixed_turn_inverted": parallelCross2RowsInverted,
  "unmixed parallel_tube_mixed": parallelCross2,
  "remixed counter_tube_unmixed_turn_mixed": counterCross2Remixed,
  "remixed parallel_tube_unmixed_turn_mixed": parallelCross2Remixed,
};

/** How the streams lie, for the field: of some of these nothing else is known. */
export const layoutOf = ({ config, air }: Pick<Given, "config" | "air">): Across => ({
  kind: "across",
  passes: config.startsWith("single") ? 1 : 2,
  order: config.startsWith("counter") ? "counter" : "parallel",
  rows: config.endsWith("tube_mixed") ? 1 : "many",
  air,
  turn: config.endsWith("identical") ? "identical" : config.endsWith("inverted") ? "inverted" : "mixed",
  next: "back",
});

/** The transfer units and the ratio, of the fluid of smaller capacity rate in the file, counted on the air. */
export const onTheAirOf = ({ NTU, Cr, cmin }: Pick<Given, "NTU" | "Cr" | "cmin">) =>
  cmin === "through" ? { NTU, R: Cr } : { NTU: NTU * Cr, R: 1 / Cr };

/** Two passes of water across the air, on the fluid of smaller capacity rate; the air goes through once. */
export default subject<Given>((given, trace) => {
  const { config, air } = given;
  const onTheAir = onTheAirOf(given);
  const relation = relations[`${air} ${config}`];
  const P = relation
    ? trace.use(relation, onTheAir, config)
    : fieldEffectiveness(layoutOf(given), onTheAir.NTU, onTheAir.R);
  return { eff: given.cmin === "through" ? P : P * onTheAir.R };
});
