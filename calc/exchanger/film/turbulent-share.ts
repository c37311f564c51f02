import { LAMINAR_UP_TO, TURBULENT_FROM } from "../../flow/flow-regimes.ts";
import { explicit } from "../../relation/relation.ts";

/**
 * How far a flow between the laminar limit and the turbulent one is on its way, 0 to 1, from its Reynolds number.
 *
 * @example turbulentShare.compute({ Re: 3000 }) // 0.4118
 */
export const turbulentShare = explicit({
  id: "exchanger/film/turbulent-share",
  title: "How far a flow has become turbulent",
  inputs: {
    Re: { symbol: "Re", kind: "ratio" },
  },
  result: { symbol: "gamma_t", kind: "fraction" },
  expression: "(Re - 2300) / 1700",

  sources: [{ key: "gnielinski-2013", where: "transition region", standing: "from memory" }],

  compute: ({ Re }) => (Re - LAMINAR_UP_TO) / (TURBULENT_FROM - LAMINAR_UP_TO),
});
