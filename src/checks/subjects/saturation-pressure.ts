import { saturationOverIce } from "../../../calc/fluids/saturation-over-ice.ts";
import { saturationOverWater } from "../../../calc/fluids/saturation-over-water.ts";
import { subject } from "../subject.ts";

export default subject<{ T: number; over: string }>(({ T, over }, trace) => {
  const relation = over === "ice" ? saturationOverIce : saturationOverWater;
  const p = trace.use(relation, { T }, `over ${over}`);
  return { p_iapws: p, p_ashrae: p };
});
