import { compressorOutlet } from "../../../calc/compression/compressor-outlet.ts";
import { constantIsentropicTemperature } from "../../../calc/compression/constant-isentropic-temperature.ts";
import { constantOutletTemperature } from "../../../calc/compression/constant-outlet-temperature.ts";
import { constantPolytropicTemperature } from "../../../calc/compression/constant-polytropic-temperature.ts";
import { constantWork } from "../../../calc/compression/constant-work.ts";
import { outletPressure } from "../../../calc/compression/outlet-pressure.ts";
import { subject } from "../subject.ts";

interface Given extends Record<string, number | string> {
  kind: "isentropic" | "polytropic";
  T1: number;
  p1: number;
  pr: number;
  eta: number;
}

/** The constants of the file's own constant-heat-capacity columns. */
const kappa = 1.4;
const c_p = 1005;

export default subject<Given>(({ kind, T1, p1, pr, eta }, trace) => {
  const p2 = trace.use(outletPressure, { r: pr, p_in: p1 }, "compressor");
  const real = compressorOutlet(
    {
      p_in: p1,
      T_in: T1,
      w: 0,
      boost: "pressure",
      p_out: p2,
      efficiency: kind,
      eta_s: eta,
      eta_p: eta,
      heatCapacity: "real",
    },
    trace,
  );
  const T_s = trace.use(constantIsentropicTemperature, { T_in: T1, r: pr, kappa }, "compressor");
  const T2_const =
    kind === "isentropic"
      ? trace.use(constantOutletTemperature, { T_in: T1, T_s, eta_s: eta }, "compressor")
      : trace.use(constantPolytropicTemperature, { T_in: T1, r: pr, kappa, eta_p: eta }, "compressor");
  return {
    p2,
    T2s: real.T_s,
    T2: real.T_out,
    w: real.Delta_h,
    eta_s: real.eta_s ?? null,
    T2_const,
    w_const: trace.use(constantWork, { c_p, T_in: T1, T_out: T2_const }, "compressor"),
  };
});
