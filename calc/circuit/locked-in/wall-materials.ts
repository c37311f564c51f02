import type { SI } from "../../quantity/domain-error.ts";

/** Linear expansion in 1/K near room temperature, modulus of elasticity in Pa, transverse contraction over stretch. */
export interface WallMaterial {
  readonly name: string;
  readonly alpha_l: SI;
  readonly E_m: SI;
  readonly nu_m: SI;
}

/** By id, from the one that grows least with warmth. Usual alloys, rounded, from memory; one differs from the next by a few hundredths. */
export const wallMaterials = {
  steel: { name: "carbon steel", alpha_l: 12e-6, E_m: 205e9, nu_m: 0.3 },
  stainless: { name: "stainless steel, austenitic", alpha_l: 16.5e-6, E_m: 195e9, nu_m: 0.3 },
  copper: { name: "copper", alpha_l: 17e-6, E_m: 117e9, nu_m: 0.34 },
  cupronickel: { name: "copper-nickel, 10 % nickel", alpha_l: 17e-6, E_m: 135e9, nu_m: 0.34 },
  brass: { name: "brass", alpha_l: 19e-6, E_m: 105e9, nu_m: 0.34 },
  aluminium: { name: "aluminium", alpha_l: 23.5e-6, E_m: 69e9, nu_m: 0.33 },
} as const satisfies Readonly<Record<string, WallMaterial>>;

export type WallMaterialId = keyof typeof wallMaterials;
