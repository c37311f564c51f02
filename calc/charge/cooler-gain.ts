import { acceptRatio } from "../compression/accept-ratio.ts";
import { acceptCompressor, type CompressorGiven } from "../compression/compress.ts";
import { acceptCooler } from "../exchanger/cooler.ts";
import { acceptFlow } from "../fluids/accept-air.ts";
import { noteFog } from "../fluids/fog-note.ts";
import { gasConstant } from "../fluids/gas-constant.ts";
import { noteRealGas } from "../fluids/real-gas-note.ts";
import type { SI } from "../quantity/domain-error.ts";
import { type Model, plain, type Trace } from "../relation/trace.ts";
import { acceptInlet, type InletGiven } from "./accept-inlet.ts";
import { checkStage } from "./air-path.ts";
import { firstCoolerFields } from "./cooler-fields.ts";
import { breakEvenAtDensity, breakEvenAtOutlet, breakEvenAtPressure } from "./cooler-gain-break-even.ts";
import { acceptDrive, costOf, type DriveCost, type DriveGiven, loadOf } from "./cooler-gain-drive.ts";
import {
  type Compared,
  cooledEngine,
  type Engine,
  type Shared,
  sameDensity,
  sameOutlet,
  samePressure,
} from "./cooler-gain-engines.ts";
import { remarkOnDrive, remarkOnGain } from "./cooler-gain-remarks.ts";
import { airState, stageWords } from "./stage.ts";
import { timesDenser } from "./times-denser.ts";
import { refuseTurbine, remarkOnGas } from "./turbine-drive.ts";

/**
 * Air at the compressor inlet in Pa absolute, K and kg/kg (dry unless given); compressor and its ratio; the cooler by its
 * effectiveness and the water inlet in K, or by its outlet temperature in K, with its loss in Pa; the moist air in kg/s that the
 * compressor takes with the cooler fitted; and what turns the compressor.
 */
export interface CoolerGainGiven extends InletGiven, CompressorGiven, DriveGiven {
  readonly r?: SI | undefined;
  readonly cooler: "effectiveness" | "temperature";
  readonly P?: SI | undefined;
  readonly T_w_in?: SI | undefined;
  readonly T_3?: SI | undefined;
  readonly Delta_p_23?: SI | undefined;
  readonly m_a?: SI | undefined;
}

/** Of one engine: 1, K, Pa, kg/m³, W, Pa. What does not apply, or cannot be, is undefined. */
type OfEngine = "r" | "T" | "p" | "rho" | "W_c" | "W_b" | "p_T" | "p_gx";

type Costs = Readonly<Record<Compared, DriveCost | undefined>>;

/** Ratios, Pa, J/kg, W, K. What has no meaning at a state is undefined. */
export interface CoolerGainFound {
  /** Density with the cooler over that without it. */
  readonly D_outlet: SI;
  readonly D_pressure: SI | undefined;
  /** Losses at which that is 1, and at which the shaft power is the same. */
  readonly Delta_p_outlet: SI | undefined;
  readonly Delta_p_pressure: SI | undefined;
  readonly Delta_p_density: SI | undefined;
  /** Work that the cooled engine's compressor needs more, for each kilogram. */
  readonly more_pressure: SI | undefined;
  /** Shaft power that the cooler saves, and by how much its charge is colder. */
  readonly saved_density: SI | undefined;
  readonly colder_density: SI | undefined;
}

/** The comparisons, and the state of each engine. */
export type CoolerGain = CoolerGainFound & Readonly<Record<`${OfEngine}_${Compared}`, SI | undefined>>;

/**
 * What a cooler earns, against three engines without it: behind the same compressor outlet, at the same manifold pressure, and
 * at the same density of the charge. Speed and volumetric efficiency are the same in all, and so are effectiveness, compressor
 * efficiency and the exhaust temperature.
 *
 * Throws a DomainError for what cannot be. A comparison without a partner is left out, with a note that says why.
 *
 * @example
 * coolerGain({ p_1: 98e3, T_1: 298.15, r: 2.24936, efficiency: "isentropic", eta_s: 0.72, heatCapacity: "real",
 *   cooler: "effectiveness", P: 0.78, T_w_in: 298.15, Delta_p_23: 9e3, m_a: 0.24303, drive: "crankshaft", eta_b: 0.95 }).r_density // 3.0236
 */
export const coolerGain: Model<CoolerGainGiven, CoolerGain> = (given, trace = plain) => {
  const shared = acceptShared(given, trace);
  const r = acceptRatio(given.r);
  const m_a = acceptFlow("m_a", "The air flow", given.m_a);
  const drive = acceptDrive(given);
  const cooled = cooledEngine(shared, r, m_a, trace);
  checkStage(shared.stage.cooler, firstCoolerFields, cooled.path);
  noteFog(shared.inlet, "w", trace);

  const outlet = sameOutlet(cooled, trace);
  const pressure = samePressure(shared, cooled, trace);
  const density = sameDensity(shared, cooled, trace);
  const over = (other: Engine, where: string) => timesDenser(cooled.charge, other.charge, trace, where);
  const found: CoolerGainFound = {
    D_outlet: over(outlet, "same compressor outlet"),
    D_pressure: pressure && over(pressure, "same manifold pressure"),
    Delta_p_outlet: breakEvenAtOutlet(cooled, trace),
    Delta_p_pressure:
      pressure && shared.stage.cooler.kind === "effectiveness"
        ? breakEvenAtPressure(shared, cooled, pressure, trace)
        : undefined,
    Delta_p_density: density && breakEvenAtDensity(shared, density, trace),
    more_pressure: pressure && cooled.Delta_h - pressure.Delta_h,
    saved_density: density && density.W_c - cooled.W_c,
    colder_density: density && density.charge.T - cooled.charge.T,
  };

  const engines = { cooled, outlet, pressure, density };
  // The working has the first of four that go the same way, and what there is to say of all.
  const quiet: Trace = { use: plain.use, note: (note) => trace.note(note) };
  const costs: Costs = {
    cooled: costOf(drive, cooled, trace, "cooled"),
    outlet: costOf(drive, outlet, quiet, "outlet"),
    pressure: pressure && costOf(drive, pressure, quiet, "pressure"),
    density: density && costOf(drive, density, quiet, "density"),
  };
  if (drive.kind === "exhaust") {
    if (costs.cooled?.p_T === undefined) refuseTurbine(drive.turbine, loadOf(cooled), "eta_T");
    remarkOnGas(drive.turbine, trace);
  }
  remarkOnGain({ shared, engines, found }, trace);
  remarkOnDrive(drive, engines, costs, trace);
  noteRealGas({ p: cooled.charge.p, T: cooled.charge.T }, "rho_cooled", trace);
  return { ...found, ...states(engines, costs) };
};

function acceptShared(given: CoolerGainGiven, trace: Trace): Shared {
  const { p, T, w } = acceptInlet(given);
  const cooler = acceptCooler(
    { cooler: given.cooler, P: given.P, T_w_in: given.T_w_in, T_out: given.T_3, Delta_p: given.Delta_p_23 },
    firstCoolerFields,
  );
  const R_m = trace.use(gasConstant, { w }, "compressor inlet");
  return {
    inlet: airState({ p, T, w, R_m }, trace, "compressor inlet"),
    stage: { machine: acceptCompressor(given), cooler, words: stageWords.only },
  };
}

/** All engines and what drives them, flat. */
function states(
  engines: Readonly<Record<Compared, Engine | undefined>>,
  costs: Costs,
): Readonly<Record<`${OfEngine}_${Compared}`, SI | undefined>> {
  const rows = (["cooled", "outlet", "pressure", "density"] as const).flatMap((which) => {
    const { r, charge, W_c } = engines[which] ?? {};
    const { W_b, p_T, p_gx } = costs[which] ?? {};
    const { T, p, rho } = charge ?? {};
    const values: Readonly<Record<OfEngine, SI | undefined>> = { r, T, p, rho, W_c, W_b, p_T, p_gx };
    return Object.entries(values).map(([what, value]) => [`${what}_${which}`, value] as const);
  });
  return Object.fromEntries(rows) as Record<`${OfEngine}_${Compared}`, SI | undefined>;
}
