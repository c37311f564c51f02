import { boilingTemperature } from "../fluids/water/boiling-temperature.ts";
import { accept, refuse } from "../quantity/accept.ts";
import type { SI } from "../quantity/domain-error.ts";
import { type Model, plain, type Trace } from "../relation/trace.ts";
import { type AirGiven, noteDew } from "./air-side.ts";
import type { Arrangement } from "./arrangement.ts";
import { arrangementOf } from "./arrangements.ts";
import type { Coolant } from "./coolant.ts";
import { dutyOfRate } from "./duty-of-rate.ts";
import { temperatureField } from "./field/temperature-field.ts";
import { type MeanDifference, meanDifferenceOf } from "./mean-difference.ts";
import { acceptInlets, oneRound, settleOutlets } from "./outlets.ts";
import { firstPeak, reach } from "./reach.ts";
import { onSmallerStream, type SmallerStream } from "./smaller-stream.ts";
import { transferUnits } from "./transfer-units.ts";
import { LARGEST_UNITS } from "./transfer-units-needed.ts";
import { marginToBoiling, refuseScarceWater, type WaterGiven } from "./water-side.ts";

/** The cooler by its arrangement's id and its heat conductance in W/K, and both streams at their inlets. */
export interface RateCoolerGiven extends AirGiven, WaterGiven {
  readonly arrangement: string;
  readonly UA?: SI | undefined;
}

/**
 * K, W, W/K. `P_most` is the most that the arrangement reaches at this R. `UA_most` is the conductance from which on more
 * makes it worse, where there is one.
 */
export interface RatedCooler extends SmallerStream, MeanDifference {
  readonly T_3: SI;
  readonly T_w_out: SI;
  readonly Q: SI;
  readonly P: SI;
  readonly R: SI;
  readonly NTU: SI;
  readonly C_a: SI;
  readonly C_w: SI;
  readonly P_most: SI;
  readonly UA_most: SI | undefined;
  readonly Delta_T_sat: SI | undefined;
}

/**
 * What a cooler of known conductance makes of two streams: both outlets, the duty, and the effectiveness in each form.
 *
 * Heat capacities are means between inlet and outlet, so they are repeated until the outlets stand still. Water may also
 * warm the air. Throws a DomainError for what cannot be; notes what leaves a source's range, boils or condenses.
 *
 * @example
 * rateCooler({ arrangement: "counter-cross-2", UA: 560, m_a: 0.35, T_2: 458.15,
 *   coolant: "water", m_w: 0.9, T_w_in: 295.15 }).T_3 // 331.9 K
 */
export const rateCooler: Model<RateCoolerGiven, RatedCooler> = (given, trace = plain) => {
  const arrangement = arrangementOf(given.arrangement);
  const UA = accept("UA", "The heat conductance of the cooler", given.UA, {
    kind: "conductance",
    above: 0,
    atMost: 1e7,
  });
  const inlets = acceptInlets(given, trace);
  const { air, coolant, m_w, T_w_in } = inlets;

  const effectiveness = (through: Trace) => (C_a: SI, R: SI) => {
    const NTU = through.use(transferUnits, { UA, C_a }, "cooler");
    refuseScarceWater(given, m_w, R);
    refuse(
      NTU * Math.max(1, R) > LARGEST_UNITS,
      "UA",
      "No cooler is so large for these flows. It may be as much as the bound.",
      { value: (LARGEST_UNITS * C_a) / Math.max(1, R), kind: "conductance" },
    );
    return through.use(arrangement.effectiveness, { NTU, R }, arrangement.name);
  };
  const settled = settleOutlets(inlets, effectiveness(plain));
  const { T_3, T_w_out, C_a, C_w, R, P } = oneRound(inlets, settled, effectiveness(trace), trace);
  const NTU = transferUnits.compute({ UA, C_a });
  const Q = trace.use(dutyOfRate, { C: C_a, T_in: air.T_2, T_out: T_3 }, "cooler");

  const peak = firstPeak(arrangement, R);
  const UA_most = peak && peak.NTU * C_a;
  if (peak && UA_most !== undefined && NTU > peak.NTU && P < peak.P)
    trace.note({
      about: "UA",
      says: "With these flows this arrangement is past its best: more area makes its effectiveness fall. The best is at the bound.",
      limit: { value: UA_most, kind: "conductance" },
    });
  if (trace !== plain)
    noteHottestChannel(arrangement, { NTU, R, T_2: air.T_2, T_w_in, T_w_out }, coolant, trace);
  noteDew(air, { T_3, T_w_in }, trace);
  return {
    T_3,
    T_w_out,
    Q,
    P,
    R,
    NTU,
    C_a,
    C_w,
    ...onSmallerStream({ P, R, NTU }, trace),
    ...meanDifferenceOf({ T_2: air.T_2, T_3, T_w_in, T_w_out, P, R, NTU }, trace),
    P_most: reach(arrangement, R, peak).P,
    UA_most,
    Delta_T_sat: marginToBoiling(coolant, { T_w_in, T_w_out }, trace),
  };
};

interface Inside {
  readonly NTU: SI;
  readonly R: SI;
  readonly T_2: SI;
  readonly T_w_in: SI;
  readonly T_w_out: SI;
}

/** Cells each way in which the hottest channel is sought: it comes out a little cooler than it is. */
const CELLS = 32;

/** A note where one of many channels would boil while the water that leaves, on average, would not. */
function noteHottestChannel(arrangement: Arrangement, inside: Inside, coolant: Coolant, trace: Trace): void {
  const { layout } = arrangement;
  const isOneStream = layout.kind === "along" || layout.kind === "shell" || layout.rows === 1;
  if (coolant.kind === "stated" || isOneStream) return;
  const { NTU, R, T_2, T_w_in, T_w_out } = inside;
  const T_sat = boilingTemperature.compute({ p: coolant.p_w });
  if (T_w_out >= T_sat || Math.max(T_2, T_w_in) < T_sat) return;
  const { banks } = temperatureField(layout, NTU, R, CELLS);
  const hottest =
    T_w_in + (T_2 - T_w_in) * Math.max(...banks.map(({ waterCells }) => Math.max(...waterCells)));
  if (hottest < T_sat) return;
  trace.note({
    about: "T_w_out",
    says: "On average the water leaves below boiling. But its channels do not mix, and the one that meets the hottest air would boil: as a liquid it would come to the bound.",
    limit: { value: hottest, kind: "temperature" },
  });
}
