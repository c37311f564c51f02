/** Where a march writes the mean temperatures of the cells of a bank, row by row from its bottom. */
export interface Painted {
  readonly air: Float64Array;
  readonly water: Float64Array;
}

/**
 * Takes both streams through one bank. `air` holds the air from the bottom of the bank to its top, `water` the channels in
 * the order in which the air meets them, a single one where they are mixed. They come as the streams enter and are left as
 * the streams leave; `up` is the way of the water.
 */
export type March = (air: Float64Array, water: Float64Array, up: boolean, painted?: Painted) => void;

/** A bank of its own: transfer units, ratio of heat-capacity rates, and cells each way. */
export interface BankSize {
  readonly NTU: number;
  readonly R: number;
  readonly cells: number;
}
