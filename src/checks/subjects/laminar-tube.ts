import { developingNusselt } from "../../../calc/exchanger/film/developing-nusselt.ts";
import { exactLaminarNusselt } from "../../../calc/exchanger/film/exact-laminar-nusselt.ts";
import { graetzNumber } from "../../../calc/exchanger/film/graetz-number.ts";
import { hausenNusselt } from "../../../calc/exchanger/film/hausen-nusselt.ts";
import { siederTateNusselt } from "../../../calc/exchanger/film/sieder-tate-nusselt.ts";
import { subject } from "../subject.ts";

export default subject<{ Re: number; Pr: number; L: number; D: number }>(({ Re, Pr, L, D }, trace) => {
  const Gz = trace.use(graetzNumber, { Re, Pr, D_h: D, L }, "tube");
  return {
    Gz,
    Nu_exact: trace.use(exactLaminarNusselt, { Gz }, "tube"),
    Nu_hausen: trace.use(hausenNusselt, { Gz }, "tube"),
    Nu_sieder_tate: trace.use(siederTateNusselt, { Gz }, "tube"),
    Nu_developing: trace.use(developingNusselt, { Gz, Pr }, "tube"),
  };
});
