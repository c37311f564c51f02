import { explicit } from "../relation/relation.ts";

/**
 * Exit loss coefficient of a core, on the dynamic pressure in its passages, from the momentum factor K_d of the flow in the
 * passages and the ratio sigma of the free-flow area to the area of the face. Negative where the profile, as it evens out,
 * gives back more than the expansion takes.
 *
 * @example coreExitCoefficient.compute({ K_d: 1.2, sigma: 0.5 }) // 0.05
 */
export const coreExitCoefficient = explicit({
  id: "flow/core-exit-coefficient",
  title: "Exit loss coefficient of a core",
  inputs: {
    K_d: { symbol: "K_d", kind: "ratio" },
    sigma: { symbol: "sigma", kind: "fraction" },
  },
  result: { symbol: "K_e", kind: "ratio" },
  expression: "1 - 2 * K_d * sigma + sigma^2",
  sources: [{ key: "kays-1950", where: "exit of many equal passages", standing: "from memory" }],
  accuracy: "0.1 of the dynamic pressure",
  compute: ({ K_d, sigma }) => 1 - 2 * K_d * sigma + sigma ** 2,
});
