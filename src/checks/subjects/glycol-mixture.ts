import {
  type Glycol,
  glycolConductivities,
  glycolDensities,
  glycolFreezings,
  glycolHeatCapacities,
  glycolViscosities,
} from "../../../calc/fluids/glycol/glycol.ts";
import { subject } from "../subject.ts";

export default subject<{ glycol: Glycol; x: number; T: number }>(({ glycol, x: x_g, T }, trace) => ({
  rho: trace.use(glycolDensities[glycol], { T, x_g }, "mixture"),
  cp: trace.use(glycolHeatCapacities[glycol], { T, x_g }, "mixture"),
  mu: trace.use(glycolViscosities[glycol], { T, x_g }, "mixture"),
  k: trace.use(glycolConductivities[glycol], { T, x_g }, "mixture"),
  T_f: trace.use(glycolFreezings[glycol], { x_g }, "mixture"),
}));
