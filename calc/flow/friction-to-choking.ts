import { explicit } from "../relation/relation.ts";
import { criticalSpeedRatio } from "./critical-speed-ratio.ts";

/** Friction number that a stream of Mach number Ma takes until it chokes; zero at the speed of sound. */
export const frictionNumberToChoking = (Ma: number, kappa: number): number =>
  (1 - Ma ** 2) / (kappa * Ma ** 2) +
  ((kappa + 1) / kappa) * Math.log(criticalSpeedRatio.compute({ Ma, kappa }));

/**
 * A friction number straightened: nearly proportional to the Mach number of the stream that chokes after it, and 1 at the speed
 * of sound, where the number itself grows without end as the stream slows. For searches.
 */
export const straightened = (friction: number): number => 1 / Math.sqrt(1 + Math.max(friction, 0));

/**
 * How large a friction number, f L/d, a stream of Mach number Ma takes in a pipe of one bore, without heat, until it reaches the
 * speed of sound.
 *
 * @example frictionToChoking.compute({ Ma: 0.3, kappa: 1.4 }) // 5.299
 */
export const frictionToChoking = explicit({
  id: "flow/friction-to-choking",
  title: "Friction number to choking",
  inputs: {
    Ma: { symbol: "Ma", kind: "ratio" },
    kappa: { symbol: "kappa", kind: "ratio" },
  },
  result: { symbol: "Lambda_star", kind: "ratio" },
  expression: "(1 - Ma^2) / (kappa * Ma^2) + (kappa + 1) / kappa * log(chi(Ma, kappa))",
  name: "Lambda_star",
  sources: [
    { key: "shapiro-1953", where: "chapter 6, adiabatic flow with friction", standing: "from memory" },
  ],
  compute: ({ Ma, kappa }) => frictionNumberToChoking(Ma, kappa),
});
