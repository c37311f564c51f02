import { explicit } from "../../relation/relation.ts";

/**
 * Discharge coefficient of a sharp-edged orifice plate: bore ratio beta_d, Reynolds number on the pipe, place of the upstream tap L_1,
 * of the downstream one by M_2, A_Re the Reynolds term and Delta_C_D that of small pipes.
 *
 * @example dischargeCoefficient.compute({ beta_d: 0.6, Re: 1e5, L_1: 0, M_2: 0, A_Re: 0.1758, Delta_C_D: 0 }) // 0.61034
 */
export const dischargeCoefficient = explicit({
  id: "circuit/orifice/discharge-coefficient",
  title: "Discharge coefficient of an orifice plate",
  inputs: {
    beta_d: { symbol: "beta_d", kind: "ratio" },
    Re: { symbol: "Re", kind: "ratio" },
    L_1: { symbol: "L_1", kind: "ratio" },
    M_2: { symbol: "M_2", kind: "ratio" },
    A_Re: { symbol: "A_Re", kind: "ratio" },
    Delta_C_D: { symbol: "Delta_C_D", kind: "ratio" },
  },
  result: { symbol: "C_D", kind: "ratio" },
  expression:
    "0.5961 + 0.0261 * beta_d^2 - 0.216 * beta_d^8 + 0.000521 * (1000000 * beta_d / Re)^0.7 + (0.0188 + 0.0063 * A_Re) * beta_d^3.5 * (1000000 / Re)^0.3 + (0.043 + 0.08 * exp(-10 * L_1) - 0.123 * exp(-7 * L_1)) * (1 - 0.11 * A_Re) * (beta_d^4 / (1 - beta_d^4)) - 0.031 * (M_2 - 0.8 * M_2^1.1) * beta_d^1.3 + Delta_C_D",
  sources: [{ key: "iso-5167-2", where: "Reader-Harris/Gallagher equation", standing: "from memory" }],
  accuracy: "0.5 to 0.75 %, for a sharp clean edge and a long straight pipe before it",
  compute: ({ beta_d, Re, L_1, M_2, A_Re, Delta_C_D }) =>
    0.5961 +
    0.0261 * beta_d ** 2 -
    0.216 * beta_d ** 8 +
    0.000521 * ((1e6 * beta_d) / Re) ** 0.7 +
    (0.0188 + 0.0063 * A_Re) * beta_d ** 3.5 * (1e6 / Re) ** 0.3 +
    ((0.043 + 0.08 * Math.exp(-10 * L_1) - 0.123 * Math.exp(-7 * L_1)) * (1 - 0.11 * A_Re) * beta_d ** 4) /
      (1 - beta_d ** 4) -
    0.031 * (M_2 - 0.8 * M_2 ** 1.1) * beta_d ** 1.3 +
    Delta_C_D,
});
