import { type Glycol, glycols } from "../../../calc/fluids/glycol/glycol.ts";
import { subject } from "../subject.ts";

export default subject<{ glycol: Glycol; x: number; T: number }>(({ glycol, x: x_g, T }, trace) => {
  const of = glycols[glycol];
  return {
    rho: trace.use(of.density, { T, x_g }, "mixture"),
    cp: trace.use(of.heatCapacity, { T, x_g }, "mixture"),
    mu: trace.use(of.viscosity, { T, x_g }, "mixture"),
    k: trace.use(of.conductivity, { T, x_g }, "mixture"),
    T_f: trace.use(of.freezing, { x_g }, "mixture"),
  };
});
