/** Coefficients c_ij of powers i of the temperature and j of the mass fraction, each counted from a base. */
export interface MixturePolynomial {
  /** K. */
  readonly T_base: number;
  readonly x_base: number;
  readonly c: readonly (readonly number[])[];
}

/** The sum at T in K and a mass fraction x of glycol. */
export function mixturePolynomial({ T_base, x_base, c }: MixturePolynomial, T: number, x: number): number {
  const Y = T - T_base;
  const X = x - x_base;
  return c.reduceRight((sum, row) => sum * Y + row.reduceRight((inner, one) => inner * X + one, 0), 0);
}

const OF_MIXTURES =
  "in water are known within the bounds of their measurements only, and this is past the bound.";

/** The span of mass fraction, and that of temperature in K, in which properties were measured. */
export const mixtureRanges = (glycol: string) =>
  [
    { input: "x_g", from: 0, to: 0.6, says: `Mixtures of ${glycol} ${OF_MIXTURES}` },
    { input: "T", from: 233.15, to: 373.15, says: `Properties of ${glycol} ${OF_MIXTURES}` },
  ] as const;
