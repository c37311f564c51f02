import { decayArea } from "../../numerics/decay-area.ts";
import { explicit } from "../../relation/relation.ts";
import { onTheAir } from "./on-the-air.ts";

/** The same as a plain function. */
export function shellEffectiveness(NTU: number, R: number): number {
  const G = Math.sqrt(1 + R * R);
  return 2 / (1 + R + (1 + Math.exp(-G * NTU)) / decayArea(G, NTU));
}

/**
 * Temperature effectiveness (0 to 1) of one shell with two tube passes (or nearly, any even number), the shell's stream
 * mixed; NTU and R on the air, on either side.
 *
 * @example shell12.compute({ NTU: 2, R: 0.5 }) // 0.6931
 */
export const shell12 = explicit({
  id: "exchanger/effectiveness/shell-1-2",
  title: "Effectiveness of one shell, two tube passes",
  ...onTheAir,
  name: "P_shell",
  expression: "2 / (1 + R + sqrt(1 + R^2) / tanh(NTU / 2 * sqrt(1 + R^2)))",
  sources: [
    { key: "bowman-1940", where: "one shell pass, two tube passes", standing: "from memory" },
    { key: "shah-sekulic-2003", where: "chapter 3, table of P-NTU formulas", standing: "from memory" },
  ],
  compute: ({ NTU, R }) => shellEffectiveness(NTU, R),
});
