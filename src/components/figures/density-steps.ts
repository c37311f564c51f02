import type { SI } from "../../../calc/quantity/domain-error.ts";

/** One change of the density on the path of the air: by what factor, and from where to where in kg/m³. */
export interface DensityStep {
  readonly id: "pressure" | "heating" | "cooling" | "loss" | "drying";
  readonly factor: number;
  readonly from: SI;
  readonly to: SI;
}

/** The states of a path with one compressor and a cooler, in SI. */
export interface Path {
  readonly rho_1: SI;
  readonly rho_3: SI;
  readonly p_1: SI;
  readonly p_2: SI;
  readonly p_3: SI;
  readonly T_1: SI;
  readonly T_2: SI;
  readonly T_3: SI;
}

/**
 * The density from the compressor inlet to the manifold as steps in the order of the path: pressure raised, air heated,
 * air cooled, pressure lost. What is left of the ratio of the densities is the lighter vapour that condensed. The factors
 * are those of an ideal gas and multiply to `rho_3 / rho_1`.
 */
export function densitySteps({ rho_1, rho_3, p_1, p_2, p_3, T_1, T_2, T_3 }: Path): readonly DensityStep[] {
  const dry = [
    ["pressure", p_2 / p_1],
    ["heating", T_1 / T_2],
    ["cooling", T_2 / T_3],
    ["loss", p_3 / p_2],
  ] as const;
  const drying = rho_3 / rho_1 / dry.reduce((product, [, factor]) => product * factor, 1);
  const factors = Math.abs(drying - 1) > 1e-9 ? [...dry, ["drying", drying] as const] : dry;
  let from = rho_1;
  return factors.map(([id, factor]) => {
    const step = { id, factor, from, to: from * factor };
    from = step.to;
    return step;
  });
}
