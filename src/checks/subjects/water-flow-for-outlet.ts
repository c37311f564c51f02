import { type ConstantCooler, flowOfConstantCooler } from "../constant-cooler.ts";
import { subject } from "../subject.ts";

interface Given extends ConstantCooler, Record<string, number | string> {
  UAa: number;
  ma_ref: number;
  na: number;
  Rw: number;
  UAw: number;
  mw_ref: number;
  nw: number;
}

export default subject<Given>((given, trace) =>
  flowOfConstantCooler(
    given,
    {
      UA_a_ref: given.UAa,
      m_a_ref: given.ma_ref,
      n_a: given.na,
      R_wall: given.Rw,
      water: "power",
      UA_w_ref: given.UAw,
      m_w_ref: given.mw_ref,
      n_w: given.nw,
    },
    trace,
  ),
);
