import { explicit } from "../relation/relation.ts";

/**
 * Flow in kg/s that the same engine at the same speed draws of air of the density rho, when it drew m_ref of air of the
 * density rho_ref; both in kg/m³, at the place to which its volumetric efficiency refers.
 *
 * @example flowAtDensity.compute({ m_ref: 0.24303, rho: 1.8935, rho_ref: 2.2891 }) // 0.20103 kg/s
 */
export const flowAtDensity = explicit({
  id: "engine/flow-at-density",
  title: "Flow at another charge density",
  inputs: {
    m_ref: { symbol: "m_ref", kind: "massFlow" },
    rho: { symbol: "rho", kind: "density" },
    rho_ref: { symbol: "rho_ref", kind: "density" },
  },
  result: { symbol: "m", kind: "massFlow" },
  expression: "m_ref * (rho / rho_ref)",
  sources: [{ key: "heywood", where: "chapter 2, volumetric efficiency", standing: "derived here" }],
  compute: ({ m_ref, rho, rho_ref }) => m_ref * (rho / rho_ref),
});
