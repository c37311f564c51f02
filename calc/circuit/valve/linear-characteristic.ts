import { explicit } from "../../relation/relation.ts";

/**
 * Part of its full flow coefficient that a valve with a linear characteristic has at the position x_v, 0 to 1.
 *
 * @example linearCharacteristic.compute({ x_v: 0.4 }) // 0.4
 */
export const linearCharacteristic = explicit({
  id: "circuit/valve/linear-characteristic",
  title: "Linear characteristic",
  inputs: {
    x_v: { symbol: "x_v", kind: "fraction" },
  },
  result: { symbol: "phi_v", kind: "fraction" },
  expression: "x_v",
  sources: [
    {
      key: "iec-60534-2-4",
      where: "ideal linear characteristic, without the flow of a closed valve",
      standing: "from memory",
    },
  ],
  compute: ({ x_v }) => x_v,
});
