import { constants } from "../constants.ts";
import { boreArea } from "../flow/bore-area.ts";
import { ductSpeed } from "../flow/duct-speed.ts";
import { LAMINAR_UP_TO, TURBULENT_FROM } from "../flow/flow-regimes.ts";
import { reynoldsNumber } from "../flow/reynolds-number.ts";
import { massFlow } from "../fluids/mass-flow.ts";
import { saturationOverWater } from "../fluids/saturation-over-water.ts";
import type { Points } from "../numerics/straight-lines.ts";
import { accept } from "../quantity/accept.ts";
import { DomainError, type SI } from "../quantity/domain-error.ts";
import { type Model, plain, type Trace } from "../relation/trace.ts";
import { type DrainTime, type DrainTimeGiven, drainTime } from "./drain-time.ts";
import { type LiquidGiven, liquidOf } from "./liquid.ts";
import type { CoreGiven, PipeGiven } from "./losses.ts";
import { pumpCurve } from "./pump/pump-curve.ts";
import {
  type CharacteristicGiven,
  characteristicOf,
  inOwnUnit,
  positionGiven,
} from "./valve/characteristic.ts";
import { noteTravel } from "./valve/installed.ts";
import { type WaterCircuit, type WaterCircuitGiven, waterCircuit } from "./water-circuit.ts";

/**
 * A water circuit by flat fields: fed by a pump, by a head that stays, or by a tank of area `A` in m² whose level falls from
 * h_w to h_to, m. With fresh water `T_w_out` in K is its temperature in the valve, where the cooler has warmed it.
 */
export interface PumpAndValveGiven extends LiquidGiven, CharacteristicGiven, PipeGiven, CoreGiven {
  readonly wanted: "flow" | "position";
  readonly source: "pump" | "head" | "tank";
  readonly points?: Points | undefined;
  readonly h_z?: SI | undefined;
  readonly h_w?: SI | undefined;
  readonly A?: SI | undefined;
  readonly h_to?: SI | undefined;
  readonly K_vs?: SI | undefined;
  readonly F_L?: SI | undefined;
  readonly p_out?: SI | undefined;
  readonly T_w_out?: SI | undefined;
  readonly x_v?: SI | undefined;
  readonly y_v?: SI | undefined;
  readonly V_w?: SI | undefined;
}

/**
 * That of the circuit, with the position in the unit of the table, the head of a pump in m, what the circuit takes without
 * its valve in Pa, the flows in m³/s between which the pipe turns from laminar to turbulent, and of a tank the time in s
 * until it is down and the flow at the end.
 */
export interface PumpAndValve extends WaterCircuit {
  readonly y_v: SI;
  readonly y_choked: SI | undefined;
  readonly h_P: SI | undefined;
  readonly Delta_p_take: SI;
  readonly V_laminar: SI;
  readonly V_turbulent: SI;
  readonly V_end: SI | undefined;
  readonly t: SI | undefined;
}

const ATMOSPHERE = constants.p_sl.value;

/** Speeds of water in pipes, m/s, by common practice, no source: slower air and dirt stay, faster it is loud and wears. */
const USUAL_SPEED = { least: 0.3, most: 3 } as const;

/**
 * Where a pump or a height meets pipe, core and valve, at a position of the valve or for a flow, and how long a tank lasts
 * with the valve left there. Notes what the circuit notes, a position near an end, and an unusual speed in the pipe.
 *
 * @example
 * pumpAndValve({ source: "pump", points: [[0, 30], [10 / 3600, 29], [20 / 3600, 26]], h_z: 2, liquid: "water", T_w: 298.15,
 *   L: 25, d: 0.0525, k_s: 45e-6, K: 9, Delta_p_ref: 18e3, V_ref: 12 / 3600, n_p: 2, K_vs: 25 / 3600,
 *   characteristic: "equal-percentage", R_0: 50, F_L: 0.9, wanted: "position", V_w: 9 / 3600 }).h_P // 29.19 m
 */
export const pumpAndValve: Model<PumpAndValveGiven, PumpAndValve> = (given, trace = plain) => {
  const { wanted, source, points = [], h_z, h_w, K_vs, F_L, V_w, p_out = ATMOSPHERE } = given;
  const { liquid, T_w, rho_w, mu_w, p_v, p_crit, characteristic, R_0, table } = given;
  const { L, d, k_s, K, Delta_p_ref, V_ref, n_p } = given;
  const valve = characteristicOf(given);
  const x_v = wanted === "flow" ? positionGiven(given, valve) : undefined;
  const circuit = {
    ...{ liquid, T_w, rho_w, mu_w, p_v, p_crit },
    ...{ characteristic, R_0, table, K_vs, F_L, p_out, x_v },
    pipe: { L, d, k_s, K },
    core: { Delta_p_ref, V_ref, n_p },
    p_v_hot: vapourPressureInValve(given, trace),
  };
  const driven: WaterCircuitGiven =
    source === "pump"
      ? { ...circuit, wanted, V_w, source, points, h_z }
      : { ...circuit, wanted, V_w, source: "head", h_w };
  const found = atFieldsOfThis(() => waterCircuit(driven, trace));
  const about = characteristic === "table" ? "y_v" : "x_v";
  noteTravel(found.x_v, valve.ends, about, trace);
  noteSpeed(found, trace);
  const drained = atFieldsOfThis(() =>
    drainedBy({ ...given, circuit: { ...circuit, x_v: found.x_v } }, found, trace),
  );
  const { x_choked } = found;
  const flowAtReynolds = reynoldsFlow(given, p_out, { d, V_ref } as Through);
  return {
    ...found,
    y_v: inOwnUnit(valve, found.x_v),
    y_choked: x_choked === undefined ? undefined : inOwnUnit(valve, x_choked),
    h_P: source === "pump" ? pumpCurve({ points }).head(found.V_w) : undefined,
    Delta_p_take: found.Delta_p_z + found.Delta_p_rest,
    V_laminar: flowAtReynolds(LAMINAR_UP_TO),
    V_turbulent: flowAtReynolds(TURBULENT_FROM),
    V_end: drained?.V_to,
    t: drained?.t,
  };
};

function drainedBy(
  { source, A, h_w, h_to, circuit }: PumpAndValveGiven & Pick<DrainTimeGiven, "circuit">,
  { V_w }: WaterCircuit,
  trace: Trace,
): DrainTime | undefined {
  if (source !== "tank") return undefined;
  if (V_w > 0) return drainTime({ A, h_from: h_w, h_to, circuit });
  trace.note({ about: "t_d", says: "The valve is shut, and the tank stays as full as it is." });
  return undefined;
}

function vapourPressureInValve({ liquid, T_w_out }: PumpAndValveGiven, trace: Trace): SI | undefined {
  if (liquid !== "water" || T_w_out === undefined) return undefined;
  const T = accept("T_w_out", "The temperature of the water in the valve", T_w_out, {
    kind: "temperature",
    atLeast: 273.15,
    atMost: 473.15,
  });
  return trace.use(saturationOverWater, { T }, "water in the valve");
}

/** The circuit knows the vapour pressure in the valve, and here its temperature is given. */
function atFieldsOfThis<Out>(run: () => Out): Out {
  try {
    return run();
  } catch (error) {
    if (!(error instanceof DomainError) || error.field !== "p_v_hot") throw error;
    throw new DomainError("T_w_out", error.message, error.limit);
  }
}

function noteSpeed({ V_w, c }: WaterCircuit, trace: Trace): void {
  if (V_w === 0 || (c >= USUAL_SPEED.least && c <= USUAL_SPEED.most)) return;
  const isSlow = c < USUAL_SPEED.least;
  trace.note({
    about: "c_w",
    says: isSlow
      ? "So slow, below the bound, air and dirt stay in the pipe, by common practice. A narrower pipe would carry them on."
      : "So fast, above the bound, the pipe is loud and wears, and a valve shut in haste hammers, by common practice. A wider pipe is usual.",
    limit: { value: isSlow ? USUAL_SPEED.least : USUAL_SPEED.most, kind: "speed" },
  });
}

/** m³/s in the pipe at a Reynolds number, which grows as the flow. */
function reynoldsFlow(given: LiquidGiven, p_out: SI, { d, V_ref: V_w }: Through): (Re: SI) => SI {
  const { rho, mu } = liquidOf(given, p_out, "p_out", plain);
  const c = ductSpeed.compute({
    m_a: massFlow.compute({ rho, V_dot: V_w }),
    rho,
    A: boreArea.compute({ d }),
  });
  return (Re) => (V_w * Re) / reynoldsNumber.compute({ rho, c, d, mu });
}

/** A bore, and any flow through it. */
interface Through {
  readonly d: SI;
  readonly V_ref: SI;
}
