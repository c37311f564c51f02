import { constants } from "../../constants.ts";
import { explicit } from "../../relation/relation.ts";

/**
 * Distance of a flange tap from the plate over the bore of the pipe, d_l in m: the hole is an inch from the face.
 *
 * @example flangeTap.compute({ d_l: 0.0865 }) // 0.29364
 */
export const flangeTap = explicit({
  id: "circuit/orifice/flange-tap",
  title: "Place of a flange tap",
  inputs: {
    d_l: { symbol: "d_l", kind: "length" },
  },
  result: { symbol: "L_1", kind: "ratio" },
  expression: "l_in / d_l",
  sources: [{ key: "iso-5167-2", where: "flange tappings", standing: "from memory" }],
  compute: ({ d_l }) => constants.l_in.value / d_l,
});
