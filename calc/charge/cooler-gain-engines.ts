import { pressureRatio } from "../compression/pressure-ratio.ts";
import { shaftPower } from "../compression/shaft-power.ts";
import { dryAirFlow } from "../engine/dry-air-flow.ts";
import { flowAtDensity } from "../engine/flow-at-density.ts";
import { moistAirFlow } from "../engine/moist-air-flow.ts";
import { bracketedRoot } from "../numerics/bracketed-root.ts";
import type { SI } from "../quantity/domain-error.ts";
import { plain, type Trace } from "../relation/trace.ts";
import { type AirState, type Stage, type StagePath, throughCompressor, throughStage } from "./stage.ts";

/** What all engines of the comparison share: the compressor, its inlet, and the cooler that one of them has. */
export interface Shared {
  readonly inlet: AirState;
  readonly stage: Stage;
}

/** One engine of the comparison: pressure ratio, work in J/kg, charge, moist air into the engine in kg/s, shaft power in W. */
export interface Engine {
  readonly r: SI;
  readonly Delta_h: SI;
  readonly charge: AirState;
  readonly m_charge: SI;
  readonly W_c: SI;
}

/** The engine with the cooler, and its air on the way. */
export interface Cooled extends Engine {
  readonly path: StagePath;
}

/** The search for a compressor that makes up for a missing cooler, or for a loss, ends at this ratio: no machine has it. */
export const MOST_WITHOUT_COOLER = 50;
const TOLERANCE = 1e-12;

/** The engine with the cooler, and those without it that share its compressor outlet, manifold pressure, or density. */
export type Compared = "cooled" | "outlet" | "pressure" | "density";

/** What each is called in the working. */
export const IN_WORKING: Readonly<Record<Compared, string>> = {
  cooled: "with the cooler",
  outlet: "without the cooler, same compressor outlet",
  pressure: "without the cooler, same manifold pressure",
  density: "without the cooler, same density",
};

/** The air after the compressor of the engine `where`, at the ratio r, and the work in J/kg. */
export function compressed(
  { inlet, stage }: Shared,
  r: SI,
  trace: Trace,
  where: string,
): { readonly air: AirState; readonly Delta_h: SI } {
  const name = `${where}, ${stage.words.compressor}`;
  const { before, compressed } = throughCompressor(stage.machine, inlet, r, trace, name);
  return { air: before, Delta_h: compressed.Delta_h };
}

/** The engine with its cooler, whose compressor takes m_a kg/s of moist air. A loss that leaves no pressure has no density. */
export function cooledEngine(shared: Shared, r: SI, m_a: SI, trace: Trace): Cooled {
  const { inlet, stage } = shared;
  const path = throughStage(stage, inlet, r, trace);
  const { Delta_h } = path.compressed;
  const where = IN_WORKING.cooled;
  const m_da = trace.use(dryAirFlow, { m_a, w: inlet.w }, where);
  const m_charge = trace.use(moistAirFlow, { m_da, w: path.after.w }, `${where}, engine`);
  const W_c = trace.use(shaftPower, { m_a, Delta_h }, where);
  return { r, Delta_h, path, charge: path.after, m_charge, W_c };
}

/** An engine without the cooler, at the same speed: it draws by the density of its charge, and no water has dripped off. */
function uncooled(
  cooled: Cooled,
  { r, air: charge, Delta_h }: { readonly r: SI; readonly air: AirState; readonly Delta_h: SI },
  trace: Trace,
  where: string,
): Engine {
  const flows = { m_ref: cooled.m_charge, rho: charge.rho, rho_ref: cooled.charge.rho };
  const m_charge = trace.use(flowAtDensity, flows, where);
  return { r, Delta_h, charge, m_charge, W_c: trace.use(shaftPower, { m_a: m_charge, Delta_h }, where) };
}

/** Without the cooler, behind the same compressor outlet. */
export const sameOutlet = (cooled: Cooled, trace: Trace): Engine =>
  uncooled(cooled, { ...cooled, air: cooled.path.before }, trace, IN_WORKING.outlet);

/** Without the cooler, at the pressure that the cooled engine has in its manifold; none where that is below the inlet's. */
export function samePressure(shared: Shared, cooled: Cooled, trace: Trace): Engine | undefined {
  const where = IN_WORKING.pressure;
  if (cooled.charge.p < shared.inlet.p) return undefined;
  const r = trace.use(pressureRatio, { p_out: cooled.charge.p, p_in: shared.inlet.p }, where);
  return uncooled(cooled, { r, ...compressed(shared, r, trace, where) }, trace, where);
}

/** Without the cooler, at the same density of the charge; none where no ratio from 1 to the highest gives it. */
export function sameDensity(shared: Shared, cooled: Cooled, trace: Trace): Engine | undefined {
  const missing = (r: SI) => compressed(shared, r, plain, "").air.rho - cooled.charge.rho;
  if (missing(1) > 0 || missing(MOST_WITHOUT_COOLER) < 0) return undefined;
  const r = bracketedRoot(missing, 1, MOST_WITHOUT_COOLER, { tolerance: TOLERANCE });
  const where = IN_WORKING.density;
  return uncooled(cooled, { r, ...compressed(shared, r, trace, where) }, trace, where);
}
