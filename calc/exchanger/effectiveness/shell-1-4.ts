import { decayArea } from "../../numerics/decay-area.ts";
import { implicit } from "../../relation/relation.ts";
import { onTheAir } from "./on-the-air.ts";

/**
 * Temperature effectiveness (0 to 1) of one shell with four tube passes, exact, with the air in the shell and mixed there;
 * NTU and R on the air. Falls again where NTU is large.
 *
 * @example shell14.compute({ NTU: 2, R: 0.75 }) // 0.6176
 */
export const shell14 = implicit({
  id: "exchanger/effectiveness/shell-1-4",
  title: "Effectiveness of one shell, four tube passes",
  ...onTheAir,
  residual: "4 / P - (2 * (1 + R) + sqrt(4 + R^2) / tanh(NTU / 4 * sqrt(4 + R^2)) + R * tanh(R * NTU / 4))",
  unknown: "P",
  sources: [
    { key: "shah-sekulic-2003", where: "chapter 3, table of P-NTU formulas", standing: "from memory" },
  ],
  compute: ({ NTU, R }) => {
    const D = Math.sqrt(4 + R * R);
    const counter = (1 + Math.exp((-D * NTU) / 2)) / decayArea(D, NTU / 2);
    const mixing = R === 0 ? 0 : R * Math.tanh((R * NTU) / 4);
    return 4 / (2 * (1 + R) + counter + mixing);
  },
});
