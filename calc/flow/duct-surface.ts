import type { SI } from "../quantity/domain-error.ts";

/** Roughness of a clean wall in m: common practice, no source. Hose and convoluted hose differ by a factor of three. */
export const roughnessOf = {
  drawn: 0.0015e-3,
  hose: 0.03e-3,
  steel: 0.045e-3,
  convoluted: 0.5e-3,
} as const satisfies Readonly<Record<string, SI>>;

/** A wall of the table, or one whose roughness is given. */
export type Surface = keyof typeof roughnessOf | "given";
