import { constants } from "../../constants.ts";
import { explicit } from "../../relation/relation.ts";

/**
 * Net positive suction head that a pump has, in m: pressure on the water that is drawn and vapour pressure in Pa absolute, loss in the
 * suction pipe in Pa, density in kg/m³, height of the pump above the water in m, below zero where the water stands higher.
 *
 * @example suctionHead.compute({ p_surf: 98e3, p_v: 4247, Delta_p: 6000, rho: 995.65, h_suc: 1.5 }) // 7.4874 m
 */
export const suctionHead = explicit({
  id: "circuit/pump/suction-head",
  title: "Suction head that a pump has",
  inputs: {
    p_surf: { symbol: "p_surf", kind: "pressure" },
    p_v: { symbol: "p_v", kind: "pressure" },
    Delta_p: { symbol: "Delta_p_suc", kind: "pressureDifference" },
    rho: { symbol: "rho", kind: "density" },
    h_suc: { symbol: "h_suc", kind: "head" },
  },
  result: { symbol: "NPSH_A", kind: "head" },
  expression: "(p_surf - p_v - Delta_p) / (rho * g_0) - h_suc",
  working: "si",
  sources: [
    { key: "white-fluid-mechanics", where: "chapter 11, net positive suction head", standing: "from memory" },
  ],
  compute: ({ p_surf, p_v, Delta_p, rho, h_suc }) =>
    (p_surf - p_v - Delta_p) / (rho * constants.g_0.value) - h_suc,
});
