import type { Source } from "../relation/relation.ts";

/** A fuel as atoms of carbon, hydrogen and oxygen; only their proportions matter. */
export interface Fuel {
  readonly name: string;
  readonly n_C: number;
  readonly n_H: number;
  readonly n_O: number;
  readonly source: Source;
}

const source = (where: string): Source => ({ key: "heywood", where, standing: "from memory" });

/**
 * Fuels by their formula. Petrol and diesel are mixtures; these are usual averages, rounded. Petrol with ethanol in it
 * needs less air.
 */
export const fuels = {
  petrol: { name: "petrol, CH1.85", n_C: 1, n_H: 1.85, n_O: 0, source: source("usual average of petrol") },
  diesel: {
    name: "diesel, C12H23",
    n_C: 12,
    n_H: 23,
    n_O: 0,
    source: source("usual average of diesel fuel"),
  },
  methane: { name: "methane, CH4", n_C: 1, n_H: 4, n_O: 0, source: source("chemical formula") },
  ethanol: { name: "ethanol, C2H6O", n_C: 2, n_H: 6, n_O: 1, source: source("chemical formula") },
  methanol: { name: "methanol, CH4O", n_C: 1, n_H: 4, n_O: 1, source: source("chemical formula") },
} as const satisfies Readonly<Record<string, Fuel>>;

export type FuelKey = keyof typeof fuels;
