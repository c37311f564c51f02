/** The mean; summed with what rounding loses carried along, since hundreds of cells are held to 1e-13. */
export function mean(profile: Float64Array): number {
  let sum = 0;
  let lost = 0;
  for (let i = 0; i < profile.length; i++) {
    const term = (profile[i] as number) - lost;
    const next = sum + term;
    lost = next - sum - term;
    sum = next;
  }
  return sum / profile.length;
}

/** The means of each `size` neighbours. */
export const meansOf = (profile: Float64Array, size: number): Float64Array =>
  size === 1
    ? profile
    : Float64Array.from({ length: profile.length / size }, (_, i) =>
        mean(profile.subarray(i * size, (i + 1) * size)),
      );

/** The means of blocks of `size` by `size` cells, of a grid that has `columns` blocks in a row. */
export function blockMeans(grid: Float64Array, size: number, columns: number): Float64Array {
  if (size === 1) return grid;
  const strips = meansOf(grid, size);
  const blocks = new Float64Array(strips.length / size);
  for (let i = 0; i < strips.length; i++) {
    const block = Math.floor(i / (columns * size)) * columns + (i % columns);
    blocks[block] = (blocks[block] as number) + (strips[i] as number) / size;
  }
  return blocks;
}
