import { explicit } from "../relation/relation.ts";

/**
 * Heat conductance in W/K of a cooler from that of its air side and that between water and wall, both in W/K, and the
 * resistances of wall and dirt in K/W.
 *
 * @example conductanceOfResistances.compute({ UA_a: 1220.33, R_wall: 3.1e-6, R_foul: 0.20202e-3, UA_film: 1309.76 }) // 559.26 W/K
 */
export const conductanceOfResistances = explicit({
  id: "exchanger/conductance-of-resistances",
  title: "Heat conductance from all resistances",
  inputs: {
    UA_a: { symbol: "UA_a", kind: "conductance" },
    R_wall: { symbol: "R_wall", kind: "thermalResistance" },
    R_foul: { symbol: "R_foul", kind: "thermalResistance" },
    UA_film: { symbol: "UA_film", kind: "conductance" },
  },
  result: { symbol: "UA", kind: "conductance" },
  expression: "1 / (1 / UA_a + R_wall + R_foul + 1 / UA_film)",

  sources: [
    { key: "shah-sekulic-2003", where: "chapter 3, thermal resistances in series", standing: "from memory" },
  ],

  compute: ({ UA_a, R_wall, R_foul, UA_film }) => 1 / (1 / UA_a + R_wall + R_foul + 1 / UA_film),
});
