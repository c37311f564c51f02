import { explicit } from "../relation/relation.ts";

/**
 * Total pressure over static pressure of a perfect gas.
 *
 * @example totalOverStatic.compute({ Ma: 0.3, kappa: 1.4 }) // 1.0644
 */
export const totalOverStatic = explicit({
  id: "flow/total-over-static",
  title: "Total over static pressure",
  inputs: {
    Ma: { symbol: "Ma", kind: "ratio" },
    kappa: { symbol: "kappa", kind: "ratio" },
  },
  result: { symbol: "Pi", kind: "ratio" },
  expression: "(1 + (kappa - 1) / 2 * Ma^2)^(kappa / (kappa - 1))",
  sources: [{ key: "shapiro-1953", where: "chapter 4, isentropic flow", standing: "from memory" }],
  compute: ({ Ma, kappa }) => (1 + ((kappa - 1) / 2) * Ma ** 2) ** (kappa / (kappa - 1)),
});
