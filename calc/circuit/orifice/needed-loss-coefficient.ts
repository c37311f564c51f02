import { explicit } from "../../relation/relation.ts";

/**
 * Loss coefficient that takes a wanted pressure in Pa from a flow of density rho in kg/m³ at the speed c in m/s.
 *
 * @example neededLossCoefficient.compute({ Delta_p: 12.4e3, rho: 2.2, c: 35 }) // 9.2022
 */
export const neededLossCoefficient = explicit({
  id: "circuit/orifice/needed-loss-coefficient",
  title: "Loss coefficient for a wanted loss",
  inputs: {
    Delta_p: { symbol: "Delta_p", kind: "pressureDifference" },
    rho: { symbol: "rho", kind: "density" },
    c: { symbol: "c", kind: "speed" },
  },
  result: { symbol: "K", kind: "ratio" },
  expression: "Delta_p / (rho * c^2 / 2)",
  working: "si",
  sources: [
    {
      key: "white-fluid-mechanics",
      where: "chapter 6, minor losses in pipes, solved for the coefficient",
      standing: "from memory",
    },
  ],
  compute: ({ Delta_p, rho, c }) => Delta_p / ((rho * c ** 2) / 2),
});
