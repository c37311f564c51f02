import { explicit } from "../../relation/relation.ts";

/**
 * Time constant in s of a core: M_core kg of metal with the heat capacity c_core in J/(kg K), between streams that exchange E_a and
 * E_w in W/K with it. Water that stands in the core is not counted.
 *
 * @example timeConstant.compute({ M_core: 6, c_core: 900, E_a: 288.4, E_w: 0 }) // 18.72 s
 */
export const timeConstant = explicit({
  id: "exchanger/response/time-constant",
  title: "Time constant of a core",
  inputs: {
    M_core: { symbol: "M_core", kind: "mass" },
    c_core: { symbol: "c_core", kind: "specificHeat" },
    E_a: { symbol: "E_a", kind: "capacityRate" },
    E_w: { symbol: "E_w", kind: "capacityRate" },
  },
  result: { symbol: "tau", kind: "duration" },
  expression: "M_core * c_core / (E_a + E_w)",
  sources: [{ key: "incropera-dewitt", where: "chapter 5, lumped capacitance", standing: "derived here" }],
  accuracy: "metal of one temperature throughout; a core that is cold at one end may take a third longer",
  compute: ({ M_core, c_core, E_a, E_w }) => (M_core * c_core) / (E_a + E_w),
});
