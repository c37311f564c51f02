import { refuse } from "../../quantity/accept.ts";
import type { Range } from "../../relation/relation.ts";
import { CRITICAL_TEMPERATURE, saturationOverWater } from "../saturation-over-water.ts";

/** The span in which the equations for steam were checked. */
export const steamRanges: readonly Range[] = [
  {
    input: "T",
    from: 273.15,
    to: 1073.15,
    says: "The equations for steam do not hold at a temperature past the bound.",
  },
  {
    input: "p",
    from: 1,
    to: 30e6,
    says: "The equations for steam were not checked at a pressure past the bound.",
  },
];

/** Where the saturation curve ends as the limit of steam and the boundary with region 3 begins, K. */
const SATURATION_TO = 623.15;
/** Saturated steam is steam: what rounding puts past the curve is not refused. */
const ROUNDING = 1 + 1e-9;

/** The highest pressure, Pa, of what the equations call steam at T in K. Equation 5 above 623.15 K. */
export function steamLimit(T: number): number {
  if (T <= SATURATION_TO) return saturationOverWater.compute({ T });
  return 1e6 * (348.05185628969 + T * (-1.1671859879975 + T * 1.0192970039326e-3));
}

/** Throws a DomainError for p where there is no steam at T in K and p in Pa. */
export function refuseWater(T: number, p: number): void {
  const limit = steamLimit(T);
  refuse(
    !(p <= limit * ROUNDING),
    "p",
    T < CRITICAL_TEMPERATURE
      ? "Steam of this temperature turns into water at the bound. A lower pressure is needed."
      : "The equations for steam of this temperature end at the bound. A lower pressure is needed.",
    { value: limit, kind: "pressure" },
  );
}
