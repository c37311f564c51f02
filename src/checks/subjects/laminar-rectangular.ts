import { rectangularFriction } from "../../../calc/exchanger/film/rectangular-friction.ts";
import { rectangularNusselt } from "../../../calc/exchanger/film/rectangular-nusselt.ts";
import { rectangularNusseltEvenFlux } from "../../../calc/exchanger/film/rectangular-nusselt-even-flux.ts";
import { subject } from "../subject.ts";

export default subject<{ aspect: number }>(({ aspect: alpha_r }, trace) => ({
  fRe: trace.use(rectangularFriction, { alpha_r }, "channel"),
  Nu_T: trace.use(rectangularNusselt, { alpha_r }, "channel"),
  Nu_H: trace.use(rectangularNusseltEvenFlux, { alpha_r }, "channel"),
}));
