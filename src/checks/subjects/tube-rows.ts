import { counterCross2 } from "../../../calc/exchanger/effectiveness/counter-cross-2.ts";
import { counterCross3 } from "../../../calc/exchanger/effectiveness/counter-cross-3.ts";
import { counterCross4 } from "../../../calc/exchanger/effectiveness/counter-cross-4.ts";
import { counterCross5 } from "../../../calc/exchanger/effectiveness/counter-cross-5.ts";
import { crossFourRows } from "../../../calc/exchanger/effectiveness/cross-four-rows.ts";
import { crossOneRow } from "../../../calc/exchanger/effectiveness/cross-one-row.ts";
import { crossRows } from "../../../calc/exchanger/effectiveness/cross-rows.ts";
import { crossThreeRows } from "../../../calc/exchanger/effectiveness/cross-three-rows.ts";
import { crossTwoRows } from "../../../calc/exchanger/effectiveness/cross-two-rows.ts";
import { hotEndRatio2 } from "../../../calc/exchanger/effectiveness/hot-end-ratio-2.ts";
import { hotEndRatio3 } from "../../../calc/exchanger/effectiveness/hot-end-ratio-3.ts";
import { hotEndRatio4 } from "../../../calc/exchanger/effectiveness/hot-end-ratio-4.ts";
import { hotEndRatio5 } from "../../../calc/exchanger/effectiveness/hot-end-ratio-5.ts";
import { passShare } from "../../../calc/exchanger/effectiveness/pass-share.ts";
import { fieldEffectiveness } from "../../../calc/exchanger/field/field-effectiveness.ts";
import { layouts } from "../../../calc/exchanger/layouts.ts";
import { subject } from "../subject.ts";

interface Given extends Record<string, number> {
  rows: number;
  passes: number;
  NTU: number;
  R: number;
}

const alone = new Map([
  [1, crossOneRow],
  [2, crossTwoRows],
  [3, crossThreeRows],
  [4, crossFourRows],
]);
const inPasses = new Map([
  [2, { whole: counterCross2, ratio: hotEndRatio2 }],
  [3, { whole: counterCross3, ratio: hotEndRatio3 }],
  [4, { whole: counterCross4, ratio: hotEndRatio4 }],
  [5, { whole: counterCross5, ratio: hotEndRatio5 }],
]);

/** Rows side by side by the general formula and by their own; rows in passes as a whole, by parts, or by the field. */
export default subject<Given>(({ rows, passes, NTU, R }, trace) => {
  if (passes === 1) {
    const P = trace.use(crossRows, { NTU, R, N_r: rows }, `${rows} rows`);
    const relation = alone.get(rows);
    return relation ? { P, P_alone: trace.use(relation, { NTU, R }, `${rows} rows`) } : { P };
  }
  const formula = inPasses.get(passes);
  if (!formula) return { P: fieldEffectiveness({ ...layouts["counter-cross-5"], passes }, NTU, R) };
  const Gamma = trace.use(passShare, { NTU, N_p: passes }, "one pass");
  const xi = trace.use(formula.ratio, { Gamma, R }, "hot end");
  return { P: trace.use(formula.whole, { NTU, R }, `${passes} passes`), P_by_ratio: (1 - 1 / xi) / R };
});
