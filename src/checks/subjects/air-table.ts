import { constants } from "../../../calc/constants.ts";
import { enthalpy } from "../../../calc/fluids/enthalpy.ts";
import { temperatureEntropy } from "../../../calc/fluids/temperature-entropy.ts";
import { subject } from "../subject.ts";

// The tables count enthalpy and relative pressure from a zero of their own, so ours start at their row for 300 K.
const row = { T: 300, w: 0, h: 300.19e3, p_r: 1.386, s: 1702.03 };

export default subject<{ T: number }>(({ T }, trace) => {
  const rise = (relation: typeof enthalpy | typeof temperatureEntropy) =>
    trace.use(relation, { T, w: 0 }, "dry air") - trace.use(relation, row, "dry air at 300 K");
  return {
    h: row.h + rise(enthalpy),
    s: row.s + rise(temperatureEntropy),
    p_r: row.p_r * Math.exp(rise(temperatureEntropy) / constants.R_a.value),
  };
});
