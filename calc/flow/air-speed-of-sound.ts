import { explicit } from "../relation/relation.ts";

/**
 * Speed of sound in m/s in an ideal gas at a static temperature in K.
 *
 * @example airSpeedOfSound.compute({ kappa: 1.4, R_m: 287.043, T_stat: 300 }) // 347.2 m/s
 */
export const airSpeedOfSound = explicit({
  id: "flow/air-speed-of-sound",
  title: "Speed of sound in air",
  inputs: {
    kappa: { symbol: "kappa", kind: "ratio" },
    R_m: { symbol: "R_m", kind: "specificHeat" },
    T_stat: { symbol: "T_stat", kind: "temperature" },
  },
  result: { symbol: "a", kind: "speed" },
  expression: "sqrt(kappa * R_m * T_stat)",
  working: "si",
  sources: [
    { key: "shapiro-1953", where: "chapter 3, speed of sound in a perfect gas", standing: "from memory" },
  ],
  compute: ({ kappa, R_m, T_stat }) => Math.sqrt(kappa * R_m * T_stat),
});
