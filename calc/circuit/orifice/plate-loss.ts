import { explicit } from "../../relation/relation.ts";

/**
 * Loss coefficient of an orifice plate, on the dynamic pressure in the pipe: what is lost for good, less than the taps show.
 *
 * @example plateLoss.compute({ beta_d: 0.6, C_D: 0.6 }) // 11.789
 */
export const plateLoss = explicit({
  id: "circuit/orifice/plate-loss",
  title: "Lasting loss of an orifice plate",
  inputs: {
    beta_d: { symbol: "beta_d", kind: "ratio" },
    C_D: { symbol: "C_D", kind: "ratio" },
  },
  result: { symbol: "K", kind: "ratio" },
  expression: "(sqrt(1 - beta_d^4 * (1 - C_D^2)) / (C_D * beta_d^2) - 1)^2",
  sources: [{ key: "iso-5167-2", where: "pressure loss coefficient", standing: "from memory" }],
  compute: ({ beta_d, C_D }) => (Math.sqrt(1 - beta_d ** 4 * (1 - C_D ** 2)) / (C_D * beta_d ** 2) - 1) ** 2,
});
