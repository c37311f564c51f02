import { fuelMolarMass } from "../../../calc/engine/fuel-molar-mass.ts";
import { oxygenDemand } from "../../../calc/engine/oxygen-demand.ts";
import { stoichiometricRatio } from "../../../calc/engine/stoichiometric-ratio.ts";
import { subject } from "../subject.ts";

export default subject<{ C: number; H: number; O: number }>(({ C, H, O }, trace) => {
  const atoms = { n_C: C, n_H: H, n_O: O };
  const n_O2 = trace.use(oxygenDemand, atoms, "fuel");
  const M_f = trace.use(fuelMolarMass, atoms, "fuel");
  return { AFR: trace.use(stoichiometricRatio, { n_O2, M_f }, "fuel") };
});
