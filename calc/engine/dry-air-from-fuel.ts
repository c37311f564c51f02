import { explicit } from "../relation/relation.ts";

/**
 * Dry air in kg/s that a fuel flow needs at the relative air-fuel ratio lambda.
 *
 * @example dryAirFromFuel.compute({ lambda: 0.85, AFR_st: 14.6, m_f: 0.0195833 }) // 0.24303 kg/s
 */
export const dryAirFromFuel = explicit({
  id: "engine/dry-air-from-fuel",
  title: "Dry air from fuel",
  inputs: {
    lambda: { symbol: "lambda", kind: "ratio" },
    AFR_st: { symbol: "AFR_st", kind: "ratio" },
    m_f: { symbol: "m_f", kind: "massFlow" },
  },
  result: { symbol: "m_da", kind: "massFlow" },
  expression: "lambda * AFR_st * m_f",
  sources: [{ key: "heywood", where: "chapters 2 and 3", standing: "from memory" }],
  compute: ({ lambda, AFR_st, m_f }) => lambda * AFR_st * m_f,
});
