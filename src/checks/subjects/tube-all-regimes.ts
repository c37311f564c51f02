import { nusseltOfFlow } from "../../../calc/exchanger/film/nusselt-of-flow.ts";
import { subject } from "../subject.ts";

export default subject<{ Re: number; Pr: number; d_over_L: number; Nu_d: number }>(
  ({ Re, Pr, d_over_L, Nu_d }, trace) => ({
    Nu: nusseltOfFlow({ Re, Pr, Nu_d, D_h: d_over_L, L: 1 }, trace).Nu,
  }),
);
