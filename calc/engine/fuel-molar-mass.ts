import { constants } from "../constants.ts";
import { explicit } from "../relation/relation.ts";

const M_C = constants.M_C.value;
const M_H = constants.M_H.value;
const M_O = constants.M_O.value;

/**
 * Molar mass in kg/mol of a fuel with n_C atoms of carbon, n_H of hydrogen and n_O of oxygen.
 *
 * @example fuelMolarMass.compute({ n_C: 1, n_H: 4, n_O: 0 }) // 0.01604 kg/mol
 */
export const fuelMolarMass = explicit({
  id: "engine/fuel-molar-mass",
  title: "Molar mass of a fuel",
  inputs: {
    n_C: { symbol: "n_C", kind: "ratio" },
    n_H: { symbol: "n_H", kind: "ratio" },
    n_O: { symbol: "n_O", kind: "ratio" },
  },
  result: { symbol: "M_f", kind: "molarMass" },
  expression: "n_C * M_C + n_H * M_H + n_O * M_O",
  sources: [{ key: "heywood", where: "chapters 2 and 3", standing: "from memory" }],
  compute: ({ n_C, n_H, n_O }) => n_C * M_C + n_H * M_H + n_O * M_O,
});
