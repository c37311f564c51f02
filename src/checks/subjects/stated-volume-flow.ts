import { density } from "../../../calc/fluids/density.ts";
import { gasConstant } from "../../../calc/fluids/gas-constant.ts";
import { massFlow } from "../../../calc/fluids/mass-flow.ts";
import { subject } from "../subject.ts";

export default subject<{ T: number; p: number; V_dot: number }>(({ T, p, V_dot }, trace) => {
  const R_m = trace.use(gasConstant, { w: 0 }, "dry air");
  const rho = trace.use(density, { p, R_m, T }, "at the stated conditions");
  return { m: trace.use(massFlow, { rho, V_dot }, "at the stated conditions") };
});
