import { explicit } from "../relation/relation.ts";

/**
 * Power in W that a turbine has to give for a compressor on the same shaft that takes W_c; bearings and windage keep the rest.
 *
 * @example turbinePower.compute({ W_c: 15752, eta_m: 0.97 }) // 16 239 W
 */
export const turbinePower = explicit({
  id: "compression/turbine-power",
  title: "Power of the turbine",
  inputs: {
    W_c: { symbol: "W_c", kind: "power" },
    eta_m: { symbol: "eta_m", kind: "fraction" },
  },
  result: { symbol: "W_T", kind: "power" },
  expression: "W_c / eta_m",
  sources: [
    { key: "saravanamuttoo", where: "chapter 2, turbine of a shaft power cycle", standing: "from memory" },
  ],
  compute: ({ W_c, eta_m }) => W_c / eta_m,
});
