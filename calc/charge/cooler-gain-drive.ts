import { acceptDriveEfficiency } from "../compression/drive-efficiency.ts";
import { drivePower } from "../compression/drive-power.ts";
import { exchangePressure } from "../engine/exchange-pressure.ts";
import type { SI } from "../quantity/domain-error.ts";
import type { Trace } from "../relation/trace.ts";
import { type Compared, type Engine, IN_WORKING } from "./cooler-gain-engines.ts";
import {
  acceptTurbine,
  driveTurbine,
  type Turbine,
  type TurbineGiven,
  type TurbineLoad,
} from "./turbine-drive.ts";

/** What turns the compressor: the crankshaft through a drive of efficiency eta_b, or a turbine in the exhaust. */
export interface DriveGiven extends TurbineGiven {
  readonly drive: "crankshaft" | "exhaust";
  readonly eta_b?: SI | undefined;
}

export type Drive =
  | { readonly kind: "crankshaft"; readonly eta_b: SI }
  | { readonly kind: "exhaust"; readonly turbine: Turbine };

/** What the compressor costs: W from the crankshaft, or pressures of exhaust and gas exchange in Pa. */
export interface DriveCost {
  readonly W_b: SI | undefined;
  readonly p_T: SI | undefined;
  readonly p_gx: SI | undefined;
}

/** Checks the data of the drive that is chosen; throws a DomainError that names its field. */
export function acceptDrive(given: DriveGiven): Drive {
  if (given.drive === "exhaust") return { kind: "exhaust", turbine: acceptTurbine(given) };
  return { kind: "crankshaft", eta_b: acceptDriveEfficiency(given) };
}

const NOTHING: DriveCost = { W_b: undefined, p_T: undefined, p_gx: undefined };

/** What the turbine of an engine would have to drive. */
export const loadOf = ({ W_c, m_charge, charge }: Engine): TurbineLoad => ({
  W_c,
  m_a: m_charge,
  w: charge.w,
});

/** What it costs to drive the compressor of one engine. All is left out where the turbine cannot. */
export function costOf(drive: Drive, engine: Engine, trace: Trace, which: Compared): DriveCost {
  const load = loadOf(engine);
  const where = IN_WORKING[which];
  if (drive.kind === "crankshaft")
    return { ...NOTHING, W_b: trace.use(drivePower, { W_c: load.W_c, eta_b: drive.eta_b }, where) };
  const state = driveTurbine(drive.turbine, load, trace, { where, about: `p_T_${which}` });
  if (!state) return NOTHING;
  const p_gx = trace.use(exchangePressure, { p_m: engine.charge.p, p_T: state.p_T }, where);
  return { ...NOTHING, p_T: state.p_T, p_gx };
}
