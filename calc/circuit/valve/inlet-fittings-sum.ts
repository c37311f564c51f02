import { explicit } from "../../relation/relation.ts";

/**
 * Loss coefficient of what stands before a valve, with the change of dynamic pressure.
 *
 * @example inletFittingsSum.compute({ K_ri: 0.121, K_Bi: 0.742 }) // 0.863
 */
export const inletFittingsSum = explicit({
  id: "circuit/valve/inlet-fittings-sum",
  title: "Coefficients before a valve",
  inputs: {
    K_ri: { symbol: "K_ri", kind: "ratio" },
    K_Bi: { symbol: "K_Bi", kind: "ratio" },
  },
  result: { symbol: "K_isum", kind: "ratio" },
  expression: "K_ri + K_Bi",
  sources: [
    {
      key: "iec-60534-2-1",
      where: "combined liquid pressure recovery factor, inlet side",
      standing: "from memory",
    },
  ],
  compute: ({ K_ri, K_Bi }) => K_ri + K_Bi,
});
