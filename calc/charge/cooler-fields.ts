import type { CoolerFields } from "../exchanger/cooler.ts";

/** The inputs that hold the data of the only cooler on a path, or of the first, whatever the calculator. */
export const firstCoolerFields = {
  P: "P",
  T_w_in: "T_w_in",
  T_out: "T_3",
  Delta_p: "Delta_p_23",
} as const satisfies CoolerFields;

/** Those of the cooler behind a second compressor. */
export const secondCoolerFields = {
  P: "P_45",
  T_w_in: "T_w_in_45",
  T_out: "T_5",
  Delta_p: "Delta_p_45",
} as const satisfies CoolerFields;
