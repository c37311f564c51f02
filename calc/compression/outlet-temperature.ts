import { temperatureAtEnthalpy } from "../fluids/moist-air.ts";
import { implicit } from "../relation/relation.ts";

/**
 * Temperature in K at which air of humidity ratio w has the enthalpy h_out in J/kg.
 *
 * @example outletTemperature.compute({ h_out: 127553, w: 0 }) // 399.7 K
 */
export const outletTemperature = implicit({
  id: "compression/outlet-temperature",
  title: "Temperature from the enthalpy",
  inputs: {
    h_out: { symbol: "h_out", kind: "specificEnergy" },
    w: { symbol: "w", kind: "humidityRatio" },
  },
  result: { symbol: "T_out", kind: "temperature" },
  residual: "h(T_out, w) - h_out",
  unknown: "T_out",
  sources: [
    { key: "moran-shapiro", where: "chapters 6 and 9, compression of an ideal gas", standing: "from memory" },
  ],
  compute: ({ h_out, w }) => temperatureAtEnthalpy(h_out, w),
});
