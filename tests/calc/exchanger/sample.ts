import fc from "fast-check";
import { arrangements } from "../../../calc/exchanger/arrangements.ts";

/** Those with a formula: they are fast, and good to the last digits. */
export const withFormula = arrangements.filter(({ effectiveness }) => effectiveness.form !== "numerical");
/** Those that are found from the field: right to about ten digits, and slower than a closed form. */
export const fromField = arrangements.filter(({ effectiveness }) => effectiveness.form === "numerical");

/** For every property: how often it is tried. */
export const runs = { numRuns: Number(process.env["FAST_CHECK_RUNS"] ?? 100) };

const spread = (min: number, max: number) =>
  fc.double({ min: Math.log(min), max: Math.log(max), noNaN: true }).map(Math.exp);

/** Transfer units, from next to none on. */
export const someNTU = fc.oneof(spread(1e-6, 60), fc.double({ min: 0.1, max: 8, noNaN: true }));
/** Ratios of the capacity rates, those around 0 and 1 among them. */
export const someR = fc.oneof(
  fc.double({ min: 0, max: 10, noNaN: true }),
  spread(1e-9, 1),
  spread(1e-16, 1e-3).map((d) => 1 + d),
  spread(1e-16, 1e-3).map((d) => 1 - d),
  fc.constantFrom(0, 0.5, 1, 2),
);
