import { explicit } from "../../relation/relation.ts";

/**
 * Heat in W that a stream exchanges with a core of one temperature for each kelvin between its inlet and the metal: C in W/K is
 * what it carries, UA_side in W/K the conductance between both. Never more than C.
 *
 * @example wallExchange.compute({ C: 304.2, UA_side: 900 }) // 288.4 W/K
 */
export const wallExchange = explicit({
  id: "exchanger/response/wall-exchange",
  title: "Heat between a stream and a core of one temperature",
  inputs: {
    C: { symbol: "C", kind: "capacityRate" },
    UA_side: { symbol: "UA_side", kind: "conductance" },
  },
  result: { symbol: "E_side", kind: "capacityRate" },
  expression: "C * (1 - exp(-UA_side / C))",
  sources: [
    {
      key: "shah-sekulic-2003",
      where: "chapter 3, one stream that keeps its temperature",
      standing: "from memory",
    },
  ],
  compute: ({ C, UA_side }) => -C * Math.expm1(-UA_side / C),
});
