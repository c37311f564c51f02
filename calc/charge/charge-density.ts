import { compressorOutlet } from "../compression/compressor-outlet.ts";
import { densityRatio } from "../compression/density-ratio.ts";
import { pressureAfterLoss } from "../flow/pressure-after-loss.ts";
import { density } from "../fluids/density.ts";
import { gasConstant } from "../fluids/gas-constant.ts";
import { noteRealGas } from "../fluids/real-gas-note.ts";
import { accept } from "../quantity/accept.ts";
import type { SI } from "../quantity/domain-error.ts";
import { type Model, plain } from "../relation/trace.ts";

/** Compressor inlet in Pa absolute and K, its ratio and isentropic efficiency, the cooler's outlet in K and loss in Pa. */
export interface ChargeDensityGiven {
  readonly p_in: SI;
  readonly T_in: SI;
  readonly r: SI;
  readonly eta_s: SI;
  readonly T_3: SI;
  readonly Delta_p_23: SI;
}

/** Pa, K, kg/m³. The density ratios are over the compressor inlet. */
export interface ChargeDensity {
  readonly p_2: SI;
  readonly T_2: SI;
  readonly p_3: SI;
  readonly rho_1: SI;
  readonly rho_2: SI;
  readonly rho_3: SI;
  readonly D_rho: SI;
  readonly D_rho_uncooled: SI;
}

/**
 * What a litre of dry charge weighs: before the compressor, after it, and after the cooler.
 *
 * Throws a DomainError for a cooler that heats, a loss as large as the pressure, and whatever the compressor refuses.
 *
 * @example
 * chargeDensity({ p_in: 99e3, T_in: 298.15, r: 2.2, eta_s: 0.74, T_3: 323.15, Delta_p_23: 6e3 }).D_rho // 1.974
 */
export const chargeDensity: Model<ChargeDensityGiven, ChargeDensity> = (given, trace = plain) => {
  const { p_in, T_in, r, eta_s } = given;
  const compressor = compressorOutlet(
    { p_in, T_in, boost: "ratio", r, efficiency: "isentropic", eta_s, heatCapacity: "real" },
    // Its outlet is a place in between here, and no result.
    {
      ...trace,
      note: (note) => trace.note(note.about === "rho_out" ? { ...note, about: "compressor outlet" } : note),
    },
  );
  const { p_out: p_2, T_out: T_2, rho_in: rho_1, rho_out: rho_2 } = compressor;
  const T_3 = accept("T_3", "The cooler outlet temperature", given.T_3, {
    kind: "temperature",
    above: 0,
    atMost: T_2,
  });
  const Delta_p = accept("Delta_p_23", "The pressure lost in the cooler", given.Delta_p_23, {
    kind: "pressureDifference",
    atLeast: 0,
    below: p_2,
  });
  const p_3 = trace.use(pressureAfterLoss, { p_in: p_2, Delta_p }, "cooler");
  const R_m = trace.use(gasConstant, { w: 0 }, "dry air");
  const rho_3 = trace.use(density, { p: p_3, R_m, T: T_3 }, "after the cooler");
  const ends = { p_in, p_out: p_3, T_in, T_out: T_3, R_m_in: R_m, R_m_out: R_m };
  const D_rho = trace.use(densityRatio, ends, "compressor inlet to cooler outlet");
  noteRealGas({ p: p_3, T: T_3 }, "rho_3", trace);
  return { p_2, T_2, p_3, rho_1, rho_2, rho_3, D_rho, D_rho_uncooled: compressor.D_rho };
};
