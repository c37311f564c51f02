import type { BankSize, March } from "./march.ts";

/** Both streams unmixed: the box scheme, which takes the mean of both edges of a cell as its temperature. Second order. */
export function unmixedBank({ NTU, R, cells }: BankSize): March {
  const a = NTU / cells;
  const b = (NTU * R) / cells;
  const share = 1 / (1 + (a + b) / 2);
  const cooling = a * share;
  const heating = b * share;
  const kept = 1 - cooling;
  return (air, water, up, painted) => {
    for (let step = 0; step < cells; step++) {
      const row = up ? step : cells - 1 - step;
      const first = row * cells;
      let T = air[row] as number;
      for (let column = 0; column < cells; column++) {
        const T_w = water[column] as number;
        const gap = T - T_w;
        if (painted !== undefined) {
          painted.air[first + column] = T - (cooling / 2) * gap;
          painted.water[first + column] = T_w + (heating / 2) * gap;
        }
        water[column] = T_w + heating * gap;
        // Two operations long instead of three: each cell waits for the one before it.
        T = kept * T + cooling * T_w;
      }
      air[row] = T;
    }
  };
}
