import type { SI } from "../quantity/domain-error.ts";
import { plain, type Trace } from "../relation/trace.ts";
import { keptHumidity } from "./condensation.ts";

/**
 * Says where air is given more vapour than it can hold: what is over would be fog, and is counted as vapour. T in K, p in
 * Pa absolute, w in kg/kg; `about` names the input that gave w, `where` the place in words.
 */
export function noteFog(
  { T, p, w }: { readonly T: SI; readonly p: SI; readonly w: SI },
  about: string,
  trace: Trace,
  where = "at the inlet",
): void {
  const held = keptHumidity({ T, p, w }, plain, "");
  if (held < w)
    trace.note({
      about,
      says: `The air ${where} cannot hold so much vapour, only up to the bound. What is over would be fog or drops. Here it is counted as vapour.`,
      limit: { value: held, kind: "humidityRatio" },
    });
}
