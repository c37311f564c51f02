import { linearFixedPoint } from "../../numerics/linear-fixed-point.ts";
import type { March, Painted } from "./march.ts";
import { airMixedBank, bothMixedBank, oneChannelBank } from "./mixed-bank.ts";
import type { Plan } from "./plan.ts";
import { mean } from "./profile.ts";
import { unmixedBank } from "./unmixed-bank.ts";

/** Of the span between the entering air and the entering water. */
const SETTLED = 1e-13;

export interface Circulation {
  /** From the bottom to the top of the face. */
  readonly airOut: Float64Array;
  readonly effectiveness: number;
  /** The mean of all that leaves. */
  readonly waterOut: number;
}

function marchOf({ NTU, R, channels, air }: Plan, cells: number): March {
  const size = { NTU, R, cells };
  if (channels === "one") return air === "mixed" ? bothMixedBank(size) : oneChannelBank(size);
  return air === "mixed" ? airMixedBank(size) : unmixedBank(size);
}

/** The water that left one bank, as it enters the next. */
function turned(leaving: Float64Array, turn: Plan["turn"], entering: Float64Array): void {
  if (turn === "mixed") entering.fill(mean(leaving));
  else entering.set(leaving);
  if (turn === "inverted") entering.reverse();
}

/**
 * Sends air at 1 and water at 0 through all banks, each of `cells` by `cells`. Where a bank takes its water from one that
 * the air meets later, that water is found such that it comes out as it went in. `painted` takes the cells of each bank.
 */
export function circulate(plan: Plan, cells: number, painted?: readonly Painted[]): Circulation {
  const { banks, stripes, turn } = plan;
  const march = marchOf(plan, cells);
  const channels = plan.channels === "one" ? 1 : cells;
  const airOut = new Float64Array(stripes * cells);
  const waters = banks.map(() => new Float64Array(channels));
  /** Banks whose water is not known yet when the air comes to them. */
  const open = banks.flatMap(({ waterFrom = -1 }, i) =>
    waterFrom > i ? [{ bank: i, from: waterFrom }] : [],
  );

  const sweep = (unknown: Float64Array, paint: boolean) => {
    airOut.fill(1);
    for (const [i, { waterFrom, waterRuns, stripe }] of banks.entries()) {
      const water = waters[i] as Float64Array;
      const place = open.findIndex(({ bank }) => bank === i);
      if (place >= 0) water.set(unknown.subarray(place * channels, (place + 1) * channels));
      else if (waterFrom === undefined) water.fill(0);
      else turned(waters[waterFrom] as Float64Array, turn, water);
      const air = airOut.subarray(stripe * cells, (stripe + 1) * cells);
      if (plan.air === "remixed") air.fill(mean(air));
      march(air, water, waterRuns === "up", paint ? painted?.[i] : undefined);
    }
  };
  const entering = linearFixedPoint(
    (u, to) => {
      sweep(u, false);
      for (const [place, { from }] of open.entries())
        turned(waters[from] as Float64Array, turn, to.subarray(place * channels, (place + 1) * channels));
    },
    open.length * channels,
    { tolerance: SETTLED },
  );
  sweep(entering, true);

  const outlets = waters.filter((_, i) => banks.every(({ waterFrom }) => waterFrom !== i));
  return {
    airOut,
    effectiveness: 1 - mean(airOut),
    waterOut: outlets.reduce((sum, water) => sum + mean(water), 0) / outlets.length,
  };
}
