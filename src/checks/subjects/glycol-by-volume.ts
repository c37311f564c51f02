import { type Glycol, massFractionOf } from "../../../calc/fluids/glycol/glycol.ts";
import { subject } from "../subject.ts";

export default subject<{ glycol: Glycol; phi: number }>(({ glycol, phi }, trace) => ({
  x: massFractionOf(glycol, phi, trace),
}));
