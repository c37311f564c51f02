import { explicit } from "../../relation/relation.ts";

/**
 * Mean Nusselt number of turbulent flow over the length of a tube, from that far from its entrance.
 *
 * @example turbulentNusseltInTube.compute({ Nu: 79.42, X_ent: 1.0464 }) // 83.105
 */
export const turbulentNusseltInTube = explicit({
  id: "exchanger/film/turbulent-nusselt-in-tube",
  title: "Nusselt number of turbulent flow, with its entrance",
  inputs: {
    Nu: { symbol: "Nu", kind: "ratio" },
    X_ent: { symbol: "X_ent", kind: "ratio" },
  },
  result: { symbol: "Nu_turb", kind: "ratio" },
  expression: "Nu * X_ent",

  sources: [
    { key: "gnielinski-1976", where: "factor for the length, after Hausen", standing: "from memory" },
  ],

  compute: ({ Nu, X_ent }) => Nu * X_ent,
});
