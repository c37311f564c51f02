import { expansionRatio } from "../../../calc/compression/expansion-ratio.ts";
import { turbineIdealFall } from "../../../calc/compression/turbine-ideal-fall.ts";
import { turbineInletPressure } from "../../../calc/compression/turbine-inlet-pressure.ts";
import { turbineOutletTemperature } from "../../../calc/compression/turbine-outlet-temperature.ts";
import { turbinePower } from "../../../calc/compression/turbine-power.ts";
import { turbineWork } from "../../../calc/compression/turbine-work.ts";
import { subject } from "../subject.ts";

interface Given extends Record<string, number | string> {
  W_c: number;
  eta_m: number;
  T03: number;
  dT34: number;
  eta_t: number;
  cpg: number;
  gamma_g: number;
  p04: number;
}

/* The cycle of one kilogram a second: what the compressor asks of the turbine, and how far the turbine expands in all. */
export default subject<Given>(({ W_c, eta_m, T03, dT34, eta_t, cpg, gamma_g, p04 }, trace) => {
  const W_tc = trace.use(turbinePower, { W_c, eta_m }, "compressor turbine");
  const Delta_h_T = trace.use(turbineWork, { W_T: cpg * dT34, m_T: 1 }, "turbine");
  const theta_T = trace.use(turbineIdealFall, { Delta_h_T, eta_T: eta_t, c_p_g: cpg, T_g: T03 }, "turbine");
  const r_T = trace.use(expansionRatio, { theta_T, kappa_g: gamma_g }, "turbine");
  return {
    W_tc,
    W_t: Delta_h_T,
    ratio: r_T,
    p03: trace.use(turbineInletPressure, { r_T, p_T_out: p04 }, "turbine"),
    T04: trace.use(turbineOutletTemperature, { T_g: T03, Delta_h_T, c_p_g: cpg }, "turbine"),
  };
});
