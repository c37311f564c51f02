import type { SI } from "../../../calc/quantity/domain-error.ts";
import { type BoundSide, writeBound } from "../../../calc/quantity/write.ts";
import type { Field } from "./calculator.ts";
import { barometerContext, type Entry, type Surroundings } from "./entry.ts";
import type { Message } from "./evaluate.ts";

/** What there is to say of the uncertainty typed behind ±: that it is left out, absurd, or goes past what is accepted. */
export function withinMessages(
  { limits, whole }: Field,
  { shown }: Entry,
  { value, within = 0 }: { readonly value: SI; readonly within?: SI },
  around: Surroundings,
): readonly Message[] {
  if (within === 0) return [];
  const outside = (says: string): readonly Message[] => [{ tone: "outside", says }];
  if (whole) return outside("This is counted, so it is exact. What stands behind ± is left out.");
  const [least, most] = limits;
  if (least >= 0 && within > Math.abs(value))
    return outside("The uncertainty is larger than the value. Is its unit right? The number is kept.");
  if (value - within >= least && value + within <= most) return [];
  const write = (x: SI, side: BoundSide) => writeBound(x, shown, barometerContext(around), 6, side);
  return outside(
    `With its ± this goes past what is accepted. Draws outside ${write(least, "least")} to ${write(most, "most")} are left out.`,
  );
}
