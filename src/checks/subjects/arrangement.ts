import { arrangementOf } from "../../../calc/exchanger/arrangements.ts";
import { subject } from "../subject.ts";

interface Given extends Record<string, number | string> {
  arrangement: string;
  NTU: number;
  R: number;
}

/** Any arrangement by its id, on the air. */
export default subject<Given>(({ arrangement, NTU, R }, trace) => ({
  P: trace.use(arrangementOf(arrangement).effectiveness, { NTU, R }, arrangement),
}));
