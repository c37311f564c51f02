import { constants } from "../../constants.ts";
import { refuse } from "../../quantity/accept.ts";
import { implicit } from "../../relation/relation.ts";
import { ifNinetySevenTemperature } from "../saturation-over-water.ts";
import { critical } from "./water-constants.ts";

const TRIPLE = constants.p_t.value;

/**
 * Temperature in K at which water boils under the pressure `p`, Pa absolute, from the triple point at 611.657 Pa to the
 * critical point at 22.064 MPa. Throws a DomainError for p outside, where water does not boil.
 *
 * @example boilingTemperature.compute({ p: 3e5 }) // 406.6754 K
 */
export const boilingTemperature = implicit({
  id: "fluids/water/boiling-temperature",
  title: "Boiling temperature of water",
  inputs: { p: { symbol: "p", kind: "pressure" } },
  result: { symbol: "T_sat", kind: "temperature" },
  residual: "p_ws_l(T_sat) - p",
  unknown: "T_sat",
  sources: [{ key: "iapws-if97", where: "region 4, equation 31", standing: "open reference read" }],
  ranges: [
    {
      input: "p",
      from: TRIPLE,
      to: critical.p,
      says: "Water boils only at a pressure between its triple point and its critical point, and this is past the bound.",
    },
  ],
  accuracy: "0.025 % of the pressure",
  compute: ({ p }) => {
    refuse(!(p >= TRIPLE), "p", "At a pressure below the bound water freezes before it boils.", {
      value: TRIPLE,
      kind: "pressure",
    });
    refuse(
      p > critical.p,
      "p",
      "Above its critical pressure, the bound, water does not boil: it thins out without a step.",
      { value: critical.p, kind: "pressure" },
    );
    return ifNinetySevenTemperature(p);
  },
});
