import { decayArea } from "../../numerics/decay-area.ts";
import { explicit } from "../../relation/relation.ts";
import { onTheAir } from "./on-the-air.ts";

/**
 * Temperature effectiveness (0 to 1) of one pass across with the air mixed throughout and the water unmixed; NTU and R on
 * the air.
 *
 * @example crossAirMixed.compute({ NTU: 2, R: 0.5 }) // 0.7175
 */
export const crossAirMixed = explicit({
  id: "exchanger/effectiveness/cross-air-mixed",
  title: "Effectiveness across, air mixed, water unmixed",
  ...onTheAir,
  expression: "1 - exp(-(1 - exp(-R * NTU)) / R)",
  sources: [
    {
      key: "shah-sekulic-2003",
      where: "chapter 3, table of P-NTU formulas, one fluid mixed",
      standing: "from memory",
    },
  ],
  compute: ({ NTU, R }) => -Math.expm1(-decayArea(R, NTU)),
});
