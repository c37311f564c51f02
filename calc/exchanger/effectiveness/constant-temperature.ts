import { explicit } from "../../relation/relation.ts";
import { onTheAir } from "./on-the-air.ts";

/**
 * Temperature effectiveness (0 to 1) where the water does not warm up: plenty of it, or boiling, or melting ice. Every
 * arrangement comes to this as R goes to 0.
 *
 * @example constantTemperature.compute({ NTU: 2 }) // 0.8647
 */
export const constantTemperature = explicit({
  id: "exchanger/effectiveness/constant-temperature",
  title: "Effectiveness with water at one temperature",
  inputs: { NTU: onTheAir.inputs.NTU },
  result: onTheAir.result,
  expression: "1 - exp(-NTU)",
  sources: [
    {
      key: "shah-sekulic-2003",
      where: "chapter 3, one stream at constant temperature",
      standing: "from memory",
    },
  ],
  compute: ({ NTU }) => -Math.expm1(-NTU),
});
