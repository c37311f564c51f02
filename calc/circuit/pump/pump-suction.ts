import { boilingTemperature } from "../../fluids/water/boiling-temperature.ts";
import { bracketedRoot } from "../../numerics/bracketed-root.ts";
import { accept } from "../../quantity/accept.ts";
import type { SI } from "../../quantity/domain-error.ts";
import { type Model, plain, type Trace } from "../../relation/trace.ts";
import { type LiquidGiven, liquidOf } from "../liquid.ts";
import { acceptPipe, lossesOfPipe, type PipeGiven } from "../losses.ts";
import { pressureOfHead } from "./pressure-of-head.ts";
import { type Suction, suction } from "./suction.ts";
import { suctionLoss } from "./suction-loss.ts";
import { suctionPipeLoss } from "./suction-pipe-loss.ts";

/**
 * A pump, its suction pipe and strainer. The water is open to the barometer `p_0` or stands under `p_surf`, Pa absolute; the
 * pipe's loss is known, in Pa, or follows from the pipe and the flow in m³/s. Heights and heads in m.
 */
export interface PumpSuctionGiven extends LiquidGiven, PipeGiven {
  readonly surface: "open" | "closed";
  readonly p_0?: SI | undefined;
  readonly p_surf?: SI | undefined;
  readonly loss: "known" | "pipe";
  readonly Delta_p_sp?: SI | undefined;
  readonly V_w?: SI | undefined;
  readonly Delta_p_str?: SI | undefined;
  readonly h_suc?: SI | undefined;
  readonly NPSH_R?: SI | undefined;
}

/**
 * Pa, m/s, K. `Delta_p_more` is the loss that may still come before the pump starves, `T_most` the warmest water of which it has
 * enough; undefined where it starves already, and where it never does.
 */
export interface PumpSuction extends Suction {
  readonly Delta_p_sp: SI;
  readonly Delta_p_suc: SI;
  readonly c: SI | undefined;
  readonly Delta_p_more: SI | undefined;
  readonly T_most: SI | undefined;
}

/** Losses in Pa between which a clean strainer lies, and those at which it is cleaned. Common practice, no source. */
export const STRAINER = { clean: [2e3, 5e3], change: [15e3, 20e3] } as const;

const COLDEST = 273.15;
const WARMEST = 473.15;

/**
 * Suction head of a pump behind a pipe and a strainer, what is left over its need, and how much more loss or warmth it bears.
 * Notes a strainer that common practice would clean. Throws a DomainError that names what is missing, freezes or boils.
 *
 * @example
 * pumpSuction({ surface: "closed", p_surf: 98e3, loss: "known", Delta_p_sp: 4e3, Delta_p_str: 2e3, liquid: "water", T_w: 303.15,
 *   h_suc: 1.5, NPSH_R: 3 }).T_most // 354.03 K
 */
export const pumpSuction: Model<PumpSuctionGiven, PumpSuction> = (asked, trace = plain) => {
  // A loss that is known asks for no viscosity, and any will do.
  const given = asked.loss === "known" ? { ...asked, mu_w: asked.mu_w ?? 1e-3 } : asked;
  const p_surf = surfaceOf(given);
  const Delta_p_str = accept("Delta_p_str", "The loss of the strainer", given.Delta_p_str, {
    kind: "pressureDifference",
    atLeast: 0,
    atMost: 5e5,
  });
  const { Delta_p_sp, c } = pipeLoss(given, p_surf, trace);
  const Delta_p_suc = trace.use(suctionLoss, { Delta_p_sp, Delta_p_str }, "suction");
  const found = suction({ ...given, p_surf, Delta_p_suc }, trace);
  if (Delta_p_str > STRAINER.change[0])
    trace.note({
      about: "Delta_p_str",
      says: "By common practice a strainer is cleaned from about the bound on.",
      limit: { value: STRAINER.change[0], kind: "pressureDifference" },
    });
  const { Delta_NPSH } = found;
  return {
    ...found,
    Delta_p_sp,
    Delta_p_suc,
    c,
    Delta_p_more:
      Delta_NPSH === undefined || Delta_NPSH < 0
        ? undefined
        : trace.use(pressureOfHead, { rho: densityOf(given, p_surf), h: Delta_NPSH }, "margin"),
    T_most: warmest(given, p_surf, found),
  };
};

const fieldOf = ({ surface }: PumpSuctionGiven) => (surface === "open" ? "p_0" : "p_surf");

const surfaceOf = (given: PumpSuctionGiven): SI =>
  accept(
    fieldOf(given),
    given.surface === "open" ? "The barometer" : "The pressure on the water, absolute,",
    given.surface === "open" ? given.p_0 : given.p_surf,
    { kind: "pressure", atLeast: 1, atMost: 2e6 },
  );

const densityOf = (given: PumpSuctionGiven, p_surf: SI): SI =>
  liquidOf(given, p_surf, fieldOf(given), plain).rho;

function pipeLoss(given: PumpSuctionGiven, p_surf: SI, trace: Trace): { Delta_p_sp: SI; c: SI | undefined } {
  if (given.loss === "known") {
    const Delta_p_sp = accept("Delta_p_sp", "The loss of the suction pipe", given.Delta_p_sp, {
      kind: "pressureDifference",
      atLeast: 0,
      atMost: 5e5,
    });
    return { Delta_p_sp, c: undefined };
  }
  const pipe = acceptPipe(given, "", "the suction pipe");
  const V_w = accept("V_w", "The flow of the pump", given.V_w, {
    kind: "liquidFlow",
    atLeast: 0,
    atMost: 10,
  });
  const liquid = liquidOf(given, p_surf, fieldOf(given), trace);
  const { Delta_p_wall, Delta_p_other, c } = lossesOfPipe(pipe, V_w, liquid, trace, "suction pipe");
  return { Delta_p_sp: trace.use(suctionPipeLoss, { Delta_p_wall, Delta_p_other }, "suction pipe"), c };
}

/** Of fresh water the temperature at which pump and need meet, found to 1e-9 K; the loss of the pipe follows its viscosity. */
function warmest(given: PumpSuctionGiven, p_surf: SI, { Delta_NPSH }: Suction): SI | undefined {
  if (given.liquid !== "water" || Delta_NPSH === undefined) return undefined;
  const left = (T_w: SI): SI => {
    const at = { ...given, T_w };
    const { Delta_p_sp } = pipeLoss(at, p_surf, plain);
    const Delta_p_suc = suctionLoss.compute({ Delta_p_sp, Delta_p_str: given.Delta_p_str as SI });
    return suction({ ...at, p_surf, Delta_p_suc }).Delta_NPSH as SI;
  };
  const boiling = Math.min(WARMEST, boilingTemperature.compute({ p: p_surf }));
  if (!(boiling > COLDEST) || left(boiling) >= 0) return undefined;
  // Under much pressure warm water has more head than cold, until it nears boiling.
  const from = left(COLDEST) > 0 ? COLDEST : Delta_NPSH > 0 ? (given.T_w as SI) : undefined;
  return from === undefined ? undefined : bracketedRoot(left, from, boiling, { tolerance: 1e-9 });
}
