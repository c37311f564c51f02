import { property } from "../relation/relation.ts";
import { secondVirialCurvature } from "./second-virial.ts";

/**
 * What pressure adds to the heat capacity of dry air, J/(kg K). T in K, p in Pa absolute.
 * Add it to fluids/heat-capacity where 0.2 to 1 % matters. From the second virial coefficient, so to about 1 MPa.
 *
 * @example heatCapacityPressureEffect.compute({ T: 300, p: 0.5e6 }) // 7.9 J/(kg K)
 */
export const heatCapacityPressureEffect = property({
  id: "fluids/heat-capacity-pressure-effect",
  title: "What pressure adds to the heat capacity of air",
  inputs: { T: { symbol: "T", kind: "temperature" }, p: { symbol: "p", kind: "pressure" } },
  result: { symbol: "Delta_c_p", kind: "specificHeat" },
  name: "Delta_c_p",
  tex: String.raw`\Delta c_p(T, p) = -T\,p\,\frac{\mathrm{d}^2 B}{\mathrm{d}T^2}`,
  sources: [
    {
      key: "lemmon-2000",
      where: "fit to the second virial coefficient of the equation of state",
      standing: "derived here",
    },
  ],
  ranges: [
    {
      input: "T",
      from: 250,
      to: 500,
      says: "The real-gas correction was fitted to temperatures within the bound; the same formula is carried on past it.",
    },
    {
      input: "p",
      from: 0,
      to: 1e6,
      says: "The real-gas correction leaves out terms that count at a pressure above the bound.",
    },
  ],
  accuracy: "0.1 % of the heat capacity to 0.6 MPa, 0.15 % to 1 MPa",
  compute: ({ T, p }) => -T * p * secondVirialCurvature(T),
});
