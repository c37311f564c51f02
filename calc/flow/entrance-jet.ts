import { explicit } from "../relation/relation.ts";

/**
 * How much faster the air is where its jet is narrowest, behind the entrance to a pipe from a large space, than in the pipe. R_l
 * is the radius of the lip over the bore: 0 is a sharp edge, and past 1 a larger radius changes nothing.
 *
 * @example entranceJet.compute({ R_l: 0.1 }) // 1.3026
 */
export const entranceJet = explicit({
  id: "flow/entrance-jet",
  title: "Jet behind an entrance",
  inputs: {
    R_l: { symbol: "R_l", kind: "ratio" },
  },
  result: { symbol: "lambda_j", kind: "ratio" },
  expression: "1 + 0.622 * (1 - 0.3 * sqrt(min(R_l, 1)) - 0.7 * min(R_l, 1))^4",
  sources: [
    { key: "fluids", where: "fittings, rounded entrance", standing: "open reference read" },
    { key: "rennels-hudson-2012", where: "rounded entrance", standing: "from memory" },
  ],
  compute: ({ R_l }) => 1 + 0.622 * (1 - 0.3 * Math.sqrt(Math.min(R_l, 1)) - 0.7 * Math.min(R_l, 1)) ** 4,
});
