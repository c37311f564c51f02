import { explicit } from "../relation/relation.ts";

/**
 * Power in W that a compressor takes from the crankshaft through a belt or gears of efficiency eta_b (above 0 to 1).
 *
 * @example beltPower.compute({ W_c: 28734, eta_b: 0.95 }) // 30246 W
 */
export const beltPower = explicit({
  id: "compression/belt-power",
  title: "Power from the crankshaft",
  inputs: {
    W_c: { symbol: "W_c", kind: "power" },
    eta_b: { symbol: "eta_b", kind: "fraction" },
  },
  result: { symbol: "W_b", kind: "power" },
  expression: "W_c / eta_b",
  sources: [{ key: "moran-shapiro", where: "chapter 6, efficiency", standing: "from memory" }],
  compute: ({ W_c, eta_b }) => W_c / eta_b,
});
