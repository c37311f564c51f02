import { explicit } from "../../relation/relation.ts";

/**
 * Nusselt number of a flow on its way from laminar to turbulent, from those at both ends of the way. It is the least certain of
 * all: such a flow changes by itself.
 *
 * @example transitionNusselt.compute({ gamma_t: 0.41176, Nu_lam: 7.5, Nu_turb: 32 }) // 17.588
 */
export const transitionNusselt = explicit({
  id: "exchanger/film/transition-nusselt",
  title: "Nusselt number between laminar and turbulent",
  inputs: {
    gamma_t: { symbol: "gamma_t", kind: "fraction" },
    Nu_lam: { symbol: "Nu_lam", kind: "ratio" },
    Nu_turb: { symbol: "Nu_turb", kind: "ratio" },
  },
  result: { symbol: "Nu", kind: "ratio" },
  expression: "(1 - gamma_t) * Nu_lam + gamma_t * Nu_turb",

  sources: [{ key: "gnielinski-2013", where: "transition region", standing: "from memory" }],
  ranges: [
    {
      input: "gamma_t",
      from: 0,
      to: 1,
      says: "The formula is for flows on the way from laminar to turbulent, which ends at the bound.",
    },
  ],
  compute: ({ gamma_t, Nu_lam, Nu_turb }) => (1 - gamma_t) * Nu_lam + gamma_t * Nu_turb,
});
