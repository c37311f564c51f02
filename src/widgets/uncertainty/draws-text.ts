import type { Fault, Validation } from "../../../calc/uncertainty/validation.ts";
import { writeDifference } from "./written.ts";

const because: Readonly<Record<Fault, string>> = {
  lost: "Some of what the fields may be has no result: the ± reach past what is possible or accepted, and what lies beyond is cut off.",
  bent: "Over the width of the ± the result is bent or meets a bound, and one slope does not follow it.",
  shape: "The errors do not come to a bell: one field with limits that are all alike decides, or few do.",
};

/** Whether the first order is good enough, as the draws show, in words. */
export function toldValidation({ apart, tolerance, isGood, fault }: Validation, unit: string): string {
  const ends = `The ends of the two intervals lie ${writeDifference(apart, unit)} apart or less`;
  if (isGood)
    return `The first order is good enough here. ${ends}; ${writeDifference(tolerance, unit, 1)} is what u to one figure allows, beside what chance does to so many draws.`;
  return `The first order is not good enough here: take the interval of the draws. ${fault ? because[fault] : ""} ${ends}, and ${writeDifference(tolerance, unit, 1)} is what u to one figure allows.`;
}

/** A seed, or the sentence that says why it is none. */
export function readSeed(text: string): { readonly seed: number } | { readonly says: string } {
  const trimmed = text.trim();
  if (/^\d{1,9}$/.test(trimmed)) return { seed: Number(trimmed) };
  return { says: "A seed is a whole number from 0 to 999999999." };
}
