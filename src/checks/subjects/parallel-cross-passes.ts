import { parallelCross3 } from "../../../calc/exchanger/effectiveness/parallel-cross-3.ts";
import { parallelCross4 } from "../../../calc/exchanger/effectiveness/parallel-cross-4.ts";
import { parallelCross5 } from "../../../calc/exchanger/effectiveness/parallel-cross-5.ts";
import { subject } from "../subject.ts";

const relations = new Map([
  [3, parallelCross3],
  [4, parallelCross4],
  [5, parallelCross5],
]);

export default subject<{ passes: number; NTU: number; R: number }>(({ passes, NTU, R }, trace) => {
  const relation = relations.get(passes);
  if (!relation) throw new Error(`no relation for ${passes} passes with the air`);
  return { P: trace.use(relation, { NTU, R }, `${passes} passes`) };
});
