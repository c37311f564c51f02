import { bracketedRoot } from "../numerics/bracketed-root.ts";
import { refuse } from "../quantity/accept.ts";
import { implicit } from "../relation/relation.ts";
import { frictionNumberToChoking, straightened } from "./friction-to-choking.ts";

function subsonicMach(left: number, kappa: number): number {
  refuse(
    !(left >= 0),
    "Lambda_left",
    "The stream would have to be faster than sound. The friction number that is left has to be at least the bound.",
    { value: 0, kind: "ratio" },
  );
  // The logarithm takes off less than this leaves, for every heat-capacity ratio that a gas has.
  const slowest = 0.5 / Math.sqrt(kappa * left + 1);
  const beyond = (Ma: number) => straightened(frictionNumberToChoking(Ma, kappa)) - straightened(left);
  return bracketedRoot(beyond, slowest, 1, { tolerance: Number.EPSILON * slowest });
}

/**
 * Mach number, below 1, of a stream that takes a friction number Lambda_left until it chokes. Throws a DomainError naming it where
 * it is below zero: no such stream is there.
 *
 * @example machFromFrictionToChoking.compute({ Lambda_left: 3.712, kappa: 1.4 }) // 0.34128
 */
export const machFromFrictionToChoking = implicit({
  id: "flow/mach-from-friction-to-choking",
  title: "Mach number from the friction number left",
  inputs: {
    Lambda_left: { symbol: "Lambda_star_end", kind: "ratio" },
    kappa: { symbol: "kappa", kind: "ratio" },
  },
  result: { symbol: "Ma_end", kind: "ratio" },
  residual: "Lambda_star(Ma, kappa) - Lambda_left",
  unknown: "Ma",
  sources: [
    { key: "shapiro-1953", where: "chapter 6, adiabatic flow with friction", standing: "from memory" },
  ],
  compute: ({ Lambda_left, kappa }) => subsonicMach(Lambda_left, kappa),
});
