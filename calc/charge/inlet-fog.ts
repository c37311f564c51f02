import { keptHumidity } from "../fluids/condensation.ts";
import { plain, type Trace } from "../relation/trace.ts";
import type { AirState } from "./stage.ts";

/** Says where air at the inlet is given more vapour than it can hold: what is over would be fog, and is counted as vapour. */
export function noteFog({ T, p, w }: AirState, trace: Trace): void {
  const held = keptHumidity({ T, p, w }, plain, "");
  if (held < w)
    trace.note({
      about: "w",
      says: "The air at the inlet cannot hold so much vapour, only up to the bound. What is over would be fog or drops. Here it is counted as vapour.",
      limit: { value: held, kind: "humidityRatio" },
    });
}
