import { explicit } from "../../relation/relation.ts";

/**
 * Loss coefficient of a short expander behind a valve, on the dynamic pressure in the valve: bores of the valve d_v and the pipe d in m.
 *
 * @example reducerOutletLoss.compute({ d_v: 0.057, d: 0.08 }) // 0.2424
 */
export const reducerOutletLoss = explicit({
  id: "circuit/valve/reducer-outlet-loss",
  title: "Loss of the expander behind a valve",
  inputs: {
    d_v: { symbol: "d_v", kind: "length" },
    d: { symbol: "d", kind: "length" },
  },
  result: { symbol: "K_ro", kind: "ratio" },
  expression: "(1 - (d_v / d)^2)^2",
  sources: [
    {
      key: "iec-60534-2-1",
      where: "velocity head coefficients of short concentric reducers",
      standing: "from memory",
    },
  ],
  compute: ({ d_v, d }) => (1 - (d_v / d) ** 2) ** 2,
});
