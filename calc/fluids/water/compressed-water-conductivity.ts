import { property } from "../../relation/relation.ts";
import { compressedWaterRanges } from "./compressed-water-ranges.ts";
import { criticalConductivity } from "./critical-conductivity.ts";
import { constantVolumeHeatCapacity } from "./phase.ts";
import { regionOne } from "./region-one.ts";
import { waterConductivity } from "./water-conductivity.ts";
import { waterViscosity } from "./water-viscosity.ts";

/**
 * Thermal conductivity of liquid water, W/(m K): T in K, p in Pa absolute. 273.15 to 623.15 K, to 100 MPa. With the part
 * that grows near the critical point, in the release's form for industrial use; density and heat capacities are those
 * of region 1. Source: IAPWS R15-11.
 *
 * @example compressedWaterConductivity.compute({ T: 363.15, p: 3e5 }) // 0.6729090607 W/(m K)
 */
export const compressedWaterConductivity = property({
  id: "fluids/water/compressed-water-conductivity",
  title: "Thermal conductivity of water under pressure",
  inputs: { T: { symbol: "T", kind: "temperature" }, p: { symbol: "p", kind: "pressure" } },
  result: { symbol: "k", kind: "conductivity" },
  name: "k_if97",
  tex: String.raw`\begin{gathered} k(T, p) = k(T, \rho) + \bar\lambda_2\ \frac{\mathrm{mW}}{\mathrm{m\,K}} \\ \bar\lambda_2 = 177.8514\;\frac{\bar\rho\,\bar T\,\bar c_p}{\bar\mu}\,Z(y) \\ y = 0.325 \left(\frac{\Delta\bar\chi}{0.06}\right)^{0.63/1.239} \\ \Delta\bar\chi = \bar\rho \left(\zeta(T, \rho) - \zeta(T_\mathrm{R}, \rho)\,\frac{T_\mathrm{R}}{T}\right) \\ \zeta = \frac{p_\mathrm{c}}{\rho_\mathrm{c}} \left(\frac{\partial\rho}{\partial p}\right)_T, \quad T_\mathrm{R} = 1.5\,T_\mathrm{c} \end{gathered}`,
  sources: [
    { key: "iapws-r15-11", where: "equations 15 to 25, table 6", standing: "open reference read" },
    { key: "iapws-if97", where: "region 1, table 3", standing: "open reference read" },
  ],
  ranges: compressedWaterRanges,
  accuracy: "1.5 %",
  compute: ({ T, p }) => {
    const v = regionOne.v(T, p);
    const rho = 1 / v;
    const c_p = regionOne.cp(T, p);
    const kappa = c_p / constantVolumeHeatCapacity(regionOne, T, p);
    const rhoByP = -regionOne.vByP(T, p) / (v * v);
    const mu = waterViscosity.compute({ T, rho });
    return waterConductivity.compute({ T, rho }) + criticalConductivity({ T, rho, c_p, kappa, rhoByP, mu });
  },
});
