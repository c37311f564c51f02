import { volumeFlow } from "../fluids/volume-flow.ts";
import { refuse } from "../quantity/accept.ts";
import { DomainError, type SI } from "../quantity/domain-error.ts";
import { atPlace } from "../relation/at-place.ts";
import { type Model, plain, type Trace } from "../relation/trace.ts";
import { densityAt, freezingOf, meanOfWater } from "./coolant.ts";
import { filmRatio } from "./film/film-ratio.ts";
import { regimeOf } from "./film/nusselt-of-flow.ts";
import { flowForCapacityRate } from "./flow-for-capacity-rate.ts";
import { calmInlet, inletsForOutlet, NO_SPAN } from "./inlets-for-outlet.ts";
import {
  acceptMovingCooler,
  type MovingCooler,
  type MovingCoolerGiven,
  type MovingState,
  movingState,
  noteMovingState,
  refuseWarmWater,
  settleMoving,
} from "./moving-cooler.ts";
import { transitionInlets } from "./transition-flows.ts";
import { acceptWaterInlet, flowOf, refuseScarceWater, type WaterGiven } from "./water-side.ts";

/** A cooler by its passages, with its own liquid as it runs; `p_w` is the pressure of the fresh water in the cell, Pa absolute. */
export type StandInByLiquidGiven = MovingCoolerGiven & WaterGiven;

/**
 * What the cooler does with its own liquid; and, behind `_cell`, with as much fresh water as has the same heat-capacity rate, so
 * warm at its inlet that the air leaves alike. K, kg/s, m³/s, W, W/K, W/(m² K). `T_3_same` is where the air would leave if that water
 * entered as cold as the liquid: missing where it would be ice. From `T_w_lam` to `T_w_turb` at its inlet the own liquid would be between
 * laminar and turbulent.
 */
export interface StandInByLiquid {
  readonly m_w: SI;
  readonly C_w: SI;
  readonly T_3: SI;
  readonly Q: SI;
  readonly T_w_out: SI;
  readonly T_wall: SI;
  readonly Re: SI;
  readonly alpha: SI;
  readonly UA_film: SI;
  readonly T_w_in_cell: SI;
  readonly m_w_cell: SI;
  readonly V_w_cell: SI;
  readonly T_w_out_cell: SI;
  readonly T_wall_cell: SI;
  readonly Re_cell: SI;
  readonly alpha_cell: SI;
  readonly UA_film_cell: SI;
  readonly r_alpha: SI;
  readonly T_3_same: SI | undefined;
  readonly Delta_T_sat: SI | undefined;
  readonly T_w_lam: SI | undefined;
  readonly T_w_turb: SI | undefined;
}

/** With passages that are known a state has all of these. */
type FilmState = MovingState & { readonly Re: SI; readonly alpha: SI };

/** What notes on the fresh water are about. */
const inCellOf = {
  Re: "Re_cell",
  T_wall: "T_wall_cell",
  T_w_out: "T_w_out_cell",
  T_w_in: "T_w_in_cell",
};

/** Both liquids meet the same air, and what fresh water is like fills pages: a working need not hold either a second time. */
const isOfEither = (where: string): boolean =>
  where.startsWith("air") || where.endsWith("at its mean temperature");

/** Changes of an outlet below this, in K, end the rounds in which flow and outlet are made to agree. */
const SETTLED = 1e-9;
const ROUNDS = 50;

/**
 * Fresh water in a cell that stands in for seawater or a mixture with glycol in the same cooler: how much flows, how warm it enters, and what
 * then still differs.
 *
 * Throws a DomainError that names water where the passages are not known, and T_w_in where no fresh water makes the air as cold
 * or as warm.
 *
 * @example
 * standInByLiquid({ arrangement: "counter-cross-2", m_a: 0.35, T_2: 458.15, coolant: "seawater", S: 0.035, m_w: 2.5, T_w_in: 295.15,
 *   UA_a_ref: 1220, m_a_ref: 0.35, n_a: 0.5, R_wall: 3e-6, water: "rectangular", a_ch: 0.08, b_ch: 0.0025, N_ch: 15, L: 0.2,
 *   N_p: 2, r_foul: 2e-4 }).T_w_in_cell // 295.34 K
 */
export const standInByLiquid: Model<StandInByLiquidGiven, StandInByLiquid> = (given, trace = plain) => {
  refuse(
    given.water === "power",
    "water",
    "A film that is known by a power of the flow belongs to the liquid with which it was measured. The passages are needed here.",
  );
  const target = atPlace(trace, "its own liquid");
  const cooler = acceptMovingCooler(given, trace);
  const T_w_in = acceptWaterInlet(given, cooler.coolant);
  refuseWarmWater(cooler, T_w_in + NO_SPAN);
  const m_w = flowOf(given, cooler.coolant, T_w_in, target);
  const own = movingState(cooler, { m_w, T_w_in }, target) as FilmState;
  refuseScarceWater(given, m_w, own.R);

  const cell = atPlace(trace, "fresh water", inCellOf, isOfEither);
  const inCell = acceptMovingCooler({ ...given, coolant: "water" }, plain);
  const rise = own.T_w_out - T_w_in;
  const flowAt = (T: SI, through: Trace = plain) =>
    through.use(
      flowForCapacityRate,
      { C: own.C_w, c_m: meanOfWater(inCell.coolant, T, T + rise, plain) },
      "water",
    );
  const T_w_in_cell = inletFor(inCell, own.T_3, flowAt);
  const m_w_cell = flowAt(T_w_in_cell, cell);
  const fresh = movingState(inCell, { m_w: m_w_cell, T_w_in: T_w_in_cell }, cell) as FilmState;
  const rho = densityAt(given, inCell.coolant, T_w_in_cell, cell);
  const { Delta_T_sat } = noteMovingState(inCell, T_w_in_cell, fresh, cell);
  noteRegimes(own.Re, fresh.Re, trace);
  const { from: T_w_lam, to: T_w_turb } = transitionInlets(cooler, m_w);
  return {
    m_w,
    C_w: own.C_w,
    T_3: own.T_3,
    Q: own.Q,
    T_w_out: own.T_w_out,
    T_wall: own.T_wall,
    Re: own.Re,
    alpha: own.alpha,
    UA_film: own.UA_film,
    T_w_in_cell,
    m_w_cell,
    V_w_cell: cell.use(volumeFlow, { m: m_w_cell, rho }, "water, at the inlet"),
    T_w_out_cell: fresh.T_w_out,
    T_wall_cell: fresh.T_wall,
    Re_cell: fresh.Re,
    alpha_cell: fresh.alpha,
    UA_film_cell: fresh.UA_film,
    r_alpha: trace.use(filmRatio, { alpha: fresh.alpha, alpha_ref: own.alpha }, "both liquids"),
    T_3_same: outletAtRate(inCell, own.C_w, T_w_in),
    Delta_T_sat,
    T_w_lam,
    T_w_turb,
  };
};

/** At the same duty and heat-capacity rate the fresh water warms as much, so that its flow is known for each inlet temperature. */
function inletFor(cell: MovingCooler, T_3: SI, flowAt: (T_w_in: SI) => SI): SI {
  const coldest = freezingOf(cell.coolant);
  const tooCold = (T_coldest: SI) =>
    new DomainError(
      "T_w_in",
      "With its own liquid this cooler makes the air colder than fresh water does that is about to freeze. The liquid has to be warmer; with fresh water the air comes down to the bound.",
      { value: T_coldest, kind: "temperature" },
    );
  if (T_3 <= coldest + NO_SPAN) throw tooCold(coldest);
  const { roots, lowest, highest } = inletsForOutlet(cell, { T_3, coldest, flowAt });
  if (roots.length === 0 && lowest > 0) throw tooCold(T_3 + lowest);
  if (roots.length === 0)
    throw new DomainError(
      "T_w_in",
      "No fresh water that this cooler may be given makes the air as warm as its own liquid does. With fresh water the air comes up to the bound.",
      { value: T_3 + highest, kind: "temperature" },
    );
  return calmInlet(cell, roots, flowAt);
}

/** Air outlet with fresh water of a heat-capacity rate in W/K that enters at a temperature; missing where it would be ice. */
function outletAtRate(cell: MovingCooler, C: SI, T_w_in: SI): SI | undefined {
  if (T_w_in < freezingOf(cell.coolant)) return undefined;
  let T_w_out = T_w_in + 1;
  for (let i = 0; i < ROUNDS; i++) {
    const m_w = flowForCapacityRate.compute({ C, c_m: meanOfWater(cell.coolant, T_w_in, T_w_out, plain) });
    const found = settleMoving(cell, { m_w, T_w_in });
    const moved = Math.abs(found.T_w_out - T_w_out);
    if (moved < SETTLED) return found.T_3;
    T_w_out = found.T_w_out;
  }
  return undefined;
}

function noteRegimes(Re: SI, Re_cell: SI, trace: Trace): void {
  if (regimeOf(Re) === regimeOf(Re_cell)) return;
  trace.note({
    about: "Re_cell",
    says: "The fresh water does not flow in the same way as the liquid that it stands in for: one is nearer to turbulent flow. The match holds at this flow alone, and has to be sought anew at another.",
  });
}
