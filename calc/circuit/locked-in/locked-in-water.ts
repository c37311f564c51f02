import { boilingTemperature } from "../../fluids/water/boiling-temperature.ts";
import { compressedWaterDensity } from "../../fluids/water/compressed-water-density.ts";
import { bracketedRoot } from "../../numerics/bracketed-root.ts";
import { accept, refuse } from "../../quantity/accept.ts";
import { DomainError, type SI } from "../../quantity/domain-error.ts";
import { type Model, plain, type Trace } from "../../relation/trace.ts";
import { type LockedIn, lockedIn } from "./locked-in-pressure.ts";
import { pipeCompliance } from "./pipe-compliance.ts";
import { trappedDensity } from "./trapped-density.ts";
import { type WallMaterialId, wallMaterials } from "./wall-materials.ts";

/**
 * Fresh water between two closed valves that warms by `Delta_T` in K. The wall is of a known material or of stated expansion;
 * the vessel is rigid, a pipe of bore and wall in m, or one whose compliance in 1/Pa is known. `p_lim` is what its weakest part
 * bears, Pa absolute.
 */
export interface LockedInWaterGiven {
  readonly T_in?: SI | undefined;
  readonly Delta_T?: SI | undefined;
  readonly p_in?: SI | undefined;
  readonly p_lim?: SI | undefined;
  readonly material: WallMaterialId | "stated";
  readonly alpha_l?: SI | undefined;
  readonly E_m?: SI | undefined;
  readonly nu_m?: SI | undefined;
  readonly vessel: "rigid" | "pipe" | "stated";
  readonly d?: SI | undefined;
  readonly t_w?: SI | undefined;
  readonly chi_V?: SI | undefined;
}

/**
 * Pa, K, 1/K, 1/Pa. `Delta_T_lim` is the warming that brings the water to `p_lim`; undefined where the water boils before, or
 * stands above it already.
 */
export interface LockedInWater extends LockedIn {
  readonly T_out: SI;
  readonly alpha_l: SI;
  readonly chi_V: SI;
  readonly Delta_T_lim: SI | undefined;
}

/** Up to here in K the equations for water go. */
const WARMEST = 623.15;
/** At this part of the bore the formula for thin walls makes a pipe a sixth too stiff, against the exact one for a thick cylinder. */
const THICK = 0.1;

/**
 * Pressure of water that is locked in and warms, with the growth of its vessel from material and shape. Notes a pressure past
 * what the weakest part bears, and a wall too thick for the formula.
 *
 * Throws a DomainError for what cannot be: water that freezes or boils when it is locked in, shrinks, or passes 100 MPa.
 *
 * @example
 * lockedInWater({ T_in: 288.15, Delta_T: 10, p_in: 3e5, p_lim: 7e5, material: "steel", vessel: "pipe", d: 0.0525, t_w: 0.0039 }).Delta_p // 3.3213e6 Pa
 */
export const lockedInWater: Model<LockedInWaterGiven, LockedInWater> = (given, trace = plain) => {
  const wall = wallOf(given);
  const chi_V = complianceOf(given, wall, trace);
  const Delta_T = accept("Delta_T", "The warming", given.Delta_T, {
    kind: "temperatureDifference",
    atLeast: 0,
    atMost: WARMEST,
  });
  const T_out = (given.T_in ?? Number.NaN) + Delta_T;
  const { alpha_l } = wall;
  const asked = { T_in: given.T_in, T_out, p_in: given.p_in, alpha_l, chi_V };
  const found = atOwnField(() => lockedIn(asked, trace));
  const p_in = given.p_in as SI;
  const p_lim = accept("p_lim", "What the weakest part bears", given.p_lim, {
    kind: "pressure",
    atLeast: 1,
    atMost: 1e8,
  });
  refuse(
    p_lim <= p_in,
    "p_lim",
    "What the weakest part bears has to be above the bound, the pressure when the valves were closed.",
    { value: p_in, kind: "pressure" },
  );
  if (found.p_out > p_lim)
    trace.note({
      about: "p_out",
      says: "That is past the bound, which the weakest part bears. A relief valve has to open before, and lead where nobody stands.",
      limit: { value: p_lim, kind: "pressure" },
    });
  return {
    ...found,
    T_out,
    alpha_l,
    chi_V,
    Delta_T_lim: warmingTo(p_lim, { T_in: given.T_in as SI, p_in, alpha_l, chi_V }),
  };
};

interface Wall {
  readonly alpha_l: SI;
  readonly E_m: SI | undefined;
  readonly nu_m: SI | undefined;
}

function wallOf({ material, alpha_l, E_m, nu_m }: LockedInWaterGiven): Wall {
  if (material !== "stated") return wallMaterials[material];
  return {
    alpha_l: accept("alpha_l", "The thermal expansion of the wall", alpha_l, {
      kind: "expansivity",
      atLeast: 0,
      atMost: 3e-4,
    }),
    E_m,
    nu_m,
  };
}

function complianceOf(given: LockedInWaterGiven, wall: Wall, trace: Trace): SI {
  if (given.vessel === "rigid") return 0;
  if (given.vessel === "stated")
    return accept("chi_V", "The compliance of the vessel", given.chi_V, {
      kind: "compliance",
      atLeast: 0,
      atMost: 1e-4,
    });
  const d = accept("d", "The bore of the pipe", given.d, { kind: "length", atLeast: 1e-4, atMost: 5 });
  const t_w = accept("t_w", "The thickness of the wall", given.t_w, {
    kind: "length",
    atLeast: 1e-3 * d,
    atMost: d,
  });
  const E_m = accept("E_m", "The modulus of elasticity of the wall", wall.E_m, {
    kind: "modulus",
    atLeast: 1e8,
    atMost: 1e12,
  });
  const nu_m = accept("nu_m", "The transverse contraction of the wall", wall.nu_m, {
    kind: "ratio",
    atLeast: 0,
    atMost: 0.5,
  });
  if (t_w > THICK * d)
    trace.note({
      about: "t_w",
      says: "From the bound on the wall is thick for its bore. The formula for thin walls makes the pipe too stiff, and the pressure a little too high.",
      limit: { value: THICK * d, kind: "length" },
    });
  return trace.use(pipeCompliance, { d, t_w, E_m, nu_m }, "pipe");
}

/** What is wrong with the temperature at the end is said at the warming, which was asked for. */
function atOwnField<Out>(run: () => Out): Out {
  try {
    return run();
  } catch (error) {
    if (!(error instanceof DomainError) || error.field !== "T_out") throw error;
    throw new DomainError("Delta_T", error.message, error.limit);
  }
}

/** Found to 1e-9 K. At the pressure sought the water is denser than its vessel leaves room for, until it has warmed enough. */
function warmingTo(
  p_lim: SI,
  { T_in, p_in, alpha_l, chi_V }: { T_in: SI; p_in: SI; alpha_l: SI; chi_V: SI },
): SI | undefined {
  const rho_in = compressedWaterDensity.compute({ T: T_in, p: p_in });
  const Delta_p = p_lim - p_in;
  const excess = (Delta_T: SI) =>
    compressedWaterDensity.compute({ T: T_in + Delta_T, p: p_lim }) -
    trappedDensity.compute({ rho_in, alpha_l, Delta_T, chi_V, Delta_p });
  const boiling = p_lim < 16e6 ? boilingTemperature.compute({ p: p_lim }) : WARMEST;
  const most = Math.min(boiling, WARMEST) - T_in;
  return excess(most) > 0 ? undefined : bracketedRoot(excess, 0, most, { tolerance: 1e-9 });
}
