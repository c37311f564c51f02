import { explicit } from "../relation/relation.ts";

/**
 * The part of the friction factor for all regimes that leads from turbulent to laminar flow.
 *
 * @example frictionTransitionPart.compute({ Re: 1e5 }) // 1.549e-7
 */
export const frictionTransitionPart = explicit({
  id: "flow/friction-transition-part",
  title: "Friction factor for all regimes, transition",
  inputs: {
    Re: { symbol: "Re", kind: "ratio" },
  },
  result: { symbol: "Theta_l", kind: "ratio" },
  expression: "(37530 / Re)^16",
  sources: [
    { key: "churchill-1977", where: "equation for all regimes, the transition", standing: "from memory" },
  ],
  compute: ({ Re }) => (37530 / Re) ** 16,
});
