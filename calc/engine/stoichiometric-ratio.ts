import { constants } from "../constants.ts";
import { explicit } from "../relation/relation.ts";

const M_a = constants.M_a.value;
const x_O2 = constants.x_O2.value;

/**
 * Mass of dry air that just burns a mass of fuel: n_O2 moles of oxygen for a mole of fuel of molar mass M_f in kg/mol.
 *
 * @example stoichiometricRatio.compute({ n_O2: 2, M_f: 0.01604276 }) // 17.24 for methane
 */
export const stoichiometricRatio = explicit({
  id: "engine/stoichiometric-ratio",
  title: "Stoichiometric air-fuel ratio",
  inputs: {
    n_O2: { symbol: "n_O2", kind: "ratio" },
    M_f: { symbol: "M_f", kind: "molarMass" },
  },
  result: { symbol: "AFR_st", kind: "ratio" },
  expression: "n_O2 * M_a / (x_O2 * M_f)",
  sources: [{ key: "heywood", where: "chapters 2 and 3", standing: "from memory" }],
  compute: ({ n_O2, M_f }) => (n_O2 * M_a) / (x_O2 * M_f),
});
