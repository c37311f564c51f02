import { arrangementOf } from "../../../calc/exchanger/arrangements.ts";
import { capacityRate } from "../../../calc/exchanger/capacity-rate.ts";
import { capacityRatio } from "../../../calc/exchanger/capacity-ratio.ts";
import { conductance } from "../../../calc/exchanger/conductance.ts";
import { movingFromOnePoint } from "../../../calc/exchanger/moving-from-one-point.ts";
import { temperatureEffectiveness } from "../../../calc/exchanger/temperature-effectiveness.ts";
import { transferUnitsNeeded } from "../../../calc/exchanger/transfer-units-needed.ts";
import { type ConstantCooler, flowOfConstantCooler } from "../constant-cooler.ts";
import { subject } from "../subject.ts";

interface Given extends ConstantCooler, Record<string, number | string> {
  ma_m: number;
  mw_m: number;
  Tai_m: number;
  Tao_m: number;
  Twi_m: number;
  air_share: number;
  wall_share: number;
  na: number;
  nw: number;
}

export default subject<Given>((given, trace) => {
  const { ma_m: m_a, mw_m: m_w } = given;
  const C_a = trace.use(capacityRate, { m: m_a, c_m: given.cpa }, "air, as measured");
  const C_w = trace.use(capacityRate, { m: m_w, c_m: given.cpw }, "water, as measured");
  const R = trace.use(capacityRatio, { C_a, C_w }, "as measured");
  const P = trace.use(
    temperatureEffectiveness,
    { T_in: given.Tai_m, T_out: given.Tao_m, T_w_in: given.Twi_m },
    "as measured",
  );
  const NTU = transferUnitsNeeded(arrangementOf(given.arrangement), { P, R });
  const UA = trace.use(conductance, { NTU, C_a }, "as measured");
  const moving = movingFromOnePoint(
    { UA, m_a, m_w, s_a: given.air_share, s_wall: given.wall_share, n_a: given.na, n_w: given.nw },
    trace,
  );
  return { UA_measured: UA, eff_air_measured: P, ...flowOfConstantCooler(given, moving, trace) };
});
