import { explicit } from "../relation/relation.ts";

/**
 * Moles of oxygen that just burn a mole of fuel to carbon dioxide and water.
 *
 * @example oxygenDemand.compute({ n_C: 1, n_H: 4, n_O: 0 }) // 2
 */
export const oxygenDemand = explicit({
  id: "engine/oxygen-demand",
  title: "Oxygen that a fuel needs",
  inputs: {
    n_C: { symbol: "n_C", kind: "ratio" },
    n_H: { symbol: "n_H", kind: "ratio" },
    n_O: { symbol: "n_O", kind: "ratio" },
  },
  result: { symbol: "n_O2", kind: "ratio" },
  expression: "n_C + n_H / 4 - n_O / 2",
  sources: [{ key: "heywood", where: "chapters 2 and 3", standing: "from memory" }],
  compute: ({ n_C, n_H, n_O }) => n_C + n_H / 4 - n_O / 2,
});
