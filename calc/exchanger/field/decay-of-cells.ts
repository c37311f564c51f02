import { decayArea } from "../../numerics/decay-area.ts";

/** The mean of e^(-z s) in each of the equal cells that s from 0 to 1 is cut into. */
export const decayOfCells = (z: number, cells: number): Float64Array =>
  Float64Array.from({ length: cells }, (_, i) => Math.exp((-z * i) / cells) * decayArea(z / cells, 1));
