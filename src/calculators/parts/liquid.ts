import { saturationOverWater } from "../../../calc/fluids/saturation-over-water.ts";
import { atmosphericWaterDensity } from "../../../calc/fluids/water/atmospheric-water-density.ts";
import { atmosphericWaterViscosity } from "../../../calc/fluids/water/atmospheric-water-viscosity.ts";
import { compressedWaterDensity } from "../../../calc/fluids/water/compressed-water-density.ts";
import { waterViscosity } from "../../../calc/fluids/water/water-viscosity.ts";
import type { AnyRelation } from "../../../calc/relation/relation.ts";
import type { Choice, Field } from "../engine/calculator.ts";

const stated = { liquid: ["stated"] } as const;

/** The liquid in a pipe: fresh water at a temperature, or one whose properties are known. */
export const liquidInputs = {
  liquid: {
    label: "Liquid",
    options: { water: "fresh water", stated: "another, its properties are known" },
    start: "water",
    help: "",
  },
  T_w: {
    label: "Water temperature",
    symbol: "T_w",
    kind: "temperature",
    start: 298.15,
    limits: [273.15, 473.15],
    typical: [278.15, 363.15],
    help: "At the valve. Behind a cooler it is that of the outlet.",
    when: { liquid: ["water"] },
  },
  rho_w: {
    label: "Density of the liquid",
    symbol: "rho_w",
    kind: "density",
    start: 1025,
    limits: [300, 3000],
    typical: [900, 1150],
    help: "",
    when: stated,
  },
  mu_w: {
    label: "Viscosity of the liquid",
    symbol: "mu",
    kind: "viscosity",
    start: 0.00096,
    limits: [1e-7, 10],
    typical: [2e-4, 0.02],
    help: "",
    when: stated,
  },
  p_v: {
    label: "Vapour pressure of the liquid",
    symbol: "p_v",
    kind: "pressure",
    start: 3100,
    limits: [0, 2e7],
    typical: [500, 100_000],
    help: "At its temperature in the valve.",
    when: stated,
  },
  p_crit: {
    label: "Critical pressure of the liquid",
    symbol: "p_crit",
    kind: "pressure",
    start: 22_064_000,
    limits: [1e6, 1e8],
    help: "Of mixtures with much water, that of water.",
    when: stated,
  },
} as const satisfies Record<string, Field | Choice>;

export const liquidRelations: readonly AnyRelation[] = [
  atmosphericWaterDensity,
  atmosphericWaterViscosity,
  compressedWaterDensity,
  waterViscosity,
  saturationOverWater,
];
