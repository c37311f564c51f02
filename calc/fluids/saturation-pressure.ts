import { constants } from "../constants.ts";
import { property } from "../relation/relation.ts";
import { overIce } from "./saturation-over-ice.ts";
import { CRITICAL_TEMPERATURE, saturationOverWater } from "./saturation-over-water.ts";

/**
 * Vapour pressure of water, Pa, at T in K: over ice below the triple point at 273.16 K, over liquid water from there up.
 * This is the one place that chooses. Ends at the critical point, 647.096 K.
 *
 * @example saturationPressure.compute({ T: 293.15 }) // 2339.215 Pa
 */
export const saturationPressure = property({
  id: "fluids/saturation-pressure",
  title: "Saturation pressure of water",
  inputs: { T: { symbol: "T", kind: "temperature" } },
  result: { symbol: "p_ws", kind: "pressure" },
  name: "p_ws",
  tex: String.raw`p_\mathrm{ws}(T) = \begin{cases} p_{\mathrm{ws,i}}(T) & T < T_\mathrm{t} \\ p_{\mathrm{ws},\ell}(T) & T \ge T_\mathrm{t} \end{cases}`,
  sources: [
    { key: "iapws-if97", where: "region 4, equation 30", standing: "open reference read" },
    { key: "iapws-r14-08", where: "equation 6", standing: "open reference read" },
  ],
  ranges: [
    {
      input: "T",
      from: 50,
      to: CRITICAL_TEMPERATURE,
      says: "The equations for the vapour pressure of water and ice do not hold past the bound.",
    },
  ],
  compute: ({ T }) => (T < constants.T_t.value ? overIce(T) : saturationOverWater.compute({ T })),
});
