import { MOST_OF_ONE } from "../compression/accept-ratio.ts";
import { acceptCompressor, type Compressor, type CompressorGiven } from "../compression/compress.ts";
import { acceptDriveEfficiency } from "../compression/drive-efficiency.ts";
import { drivePower } from "../compression/drive-power.ts";
import { totalPower } from "../compression/total-power.ts";
import { weightedPower } from "../compression/weighted-power.ts";
import { acceptCooler } from "../exchanger/cooler.ts";
import { pressureAfterLoss } from "../flow/pressure-after-loss.ts";
import { type AmbientGiven, ambientHumidity } from "../fluids/ambient-humidity.ts";
import { gasConstant } from "../fluids/gas-constant.ts";
import { noteRealGas } from "../fluids/real-gas-note.ts";
import { accept, refuse } from "../quantity/accept.ts";
import type { SI } from "../quantity/domain-error.ts";
import { type Model, plain, type Trace } from "../relation/trace.ts";
import { type BestSplit, bestSplit, type Costs, placeAt } from "./best-split.ts";
import { firstCoolerFields, secondCoolerFields } from "./cooler-fields.ts";
import { compareSplit } from "./split-comparisons.ts";
import { acceptLimits, type LimitsGiven, noteExcess } from "./split-limits.ts";
import { noteBest, noteComparisons } from "./split-notes.ts";
import { airState, stageWords } from "./stage.ts";
import { stageHeat } from "./stage-heat.ts";
import { type Pair, rangeOfFirst, type Split, splitAt, workAt } from "./two-stages.ts";

type CoolerKind = "effectiveness" | "none";
type Drive = "exhaust" | "crankshaft";

/**
 * Ambient air and the loss before the first compressor (Pa); moist air flow (kg/s); the pressure wanted behind the second
 * cooler (Pa absolute); two compressors with the same heat capacity; two coolers by temperature effectiveness, either of which
 * may be missing; what drives each compressor; limits of the hardware; and the split, which is given or sought.
 */
export interface TwoStageSplitGiven
  extends AmbientGiven,
    Pick<CompressorGiven, "heatCapacity" | "kappa" | "eta_s">,
    LimitsGiven {
  readonly Delta_p_01?: SI | undefined;
  readonly m_a?: SI | undefined;
  readonly p_m?: SI | undefined;
  readonly eta_s_2?: SI | undefined;
  readonly cooler: CoolerKind;
  readonly P?: SI | undefined;
  readonly T_w_in?: SI | undefined;
  /** The loss of the first cooler: a pressure, or the part `zeta` of the pressure before it. */
  readonly loss?: "pressure" | "part" | undefined;
  readonly Delta_p_23?: SI | undefined;
  readonly zeta?: SI | undefined;
  readonly cooler_45: CoolerKind;
  readonly P_45?: SI | undefined;
  readonly T_w_in_45?: SI | undefined;
  readonly Delta_p_45?: SI | undefined;
  readonly drive: Drive;
  readonly drive_2: Drive;
  /** Part of the power at the crankshaft that reaches the compressor. */
  readonly eta_b?: SI | undefined;
  /** Least shaft power of both, or least cost to the crankshaft, where exhaust power costs the part `chi_g`. */
  readonly least: "shaft" | "crankshaft";
  readonly chi_g?: SI | undefined;
  readonly split: "best" | "given";
  readonly r_1?: SI | undefined;
}

/** Ratios, Pa, K, W, kg/m³, kg/s. */
export interface TwoStageSplit {
  readonly r_1: SI;
  readonly r_2: SI;
  readonly p_2: SI;
  readonly p_3: SI;
  readonly p_4: SI;
  readonly T_2: SI;
  readonly T_3: SI;
  readonly T_4: SI;
  readonly T_m: SI;
  readonly rho_m: SI;
  readonly W_c1: SI;
  readonly W_c2: SI;
  readonly W_c12: SI;
  /** Taken from the crankshaft. */
  readonly W_b: SI;
  /** What the shafts cost the crankshaft; only where that is made least. */
  readonly W_x: SI | undefined;
  readonly Q: SI;
  readonly Q_45: SI;
  readonly m_c: SI;
  readonly m_c_45: SI;
  /** The best split, its work, and the splits within a hundredth of its cost. */
  readonly r_1_best: SI;
  readonly W_best: SI;
  readonly r_1_flat_from: SI;
  readonly r_1_flat_to: SI;
  /** The ratio of the first compressor beyond which the second would expand. */
  readonly r_1_end: SI;
  /** Splits that keep to the limits; only where limits are given. */
  readonly r_1_from: SI | undefined;
  readonly r_1_to: SI | undefined;
  /** Shaft power with equal ratios. */
  readonly W_equal: SI;
  /** The better compressor alone: shaft power, and temperature before the second cooler. */
  readonly W_single: SI;
  readonly T_single: SI;
  /** Both compressors at this split without the first cooler and its loss. */
  readonly W_no_cooler: SI | undefined;
  readonly T_4_no_cooler: SI | undefined;
  /** Loss of the first cooler at which its saving of work is gone, at this split. */
  readonly Delta_p_even: SI | undefined;
  /** First ratio by the rule for perfect cooling. */
  readonly r_1_rule: SI | undefined;
}

/** The highest ratio of both compressors together that is looked at. */
const MOST_OF_BOTH = 25;
/**
 * How two compressors in series share the pressure: the split of least work within the hardware's limits, or a given one,
 * and what it is worth against other splits, against one compressor, and against no cooler in between.
 *
 * The search is a scan of the whole range with a closer search round the lowest point. Throws a DomainError for what cannot
 * be: a pressure below the inlet's, a split at which a compressor would expand, limits that no split keeps to.
 *
 * @example
 * twoStageSplit({ p_0: 100e3, T_0: 298.15, humidity: "dry", m_a: 0.62, p_m: 420e3, heatCapacity: "real", eta_s: 0.6,
 *   eta_s_2: 0.76, cooler: "effectiveness", P: 0.8, T_w_in: 303.15, Delta_p_23: 6e3, cooler_45: "effectiveness", P_45: 0.85,
 *   T_w_in_45: 303.15, Delta_p_45: 7e3, drive: "crankshaft", drive_2: "exhaust", eta_b: 0.95, least: "shaft",
 *   split: "best" }).r_1 // 1.3644
 */
export const twoStageSplit: Model<TwoStageSplitGiven, TwoStageSplit> = (given, trace = plain) => {
  const pair = acceptPair(given, trace);
  const costs = costsOf(given);
  const limits = acceptLimits(given);
  const best = searched(pair, costs, limits, given.split === "given");
  const r_1 = given.split === "given" ? acceptRatio(given.r_1, best) : best.r_1;
  if (given.split === "best")
    noteBest(best, { pair, costs, limits, what: given.least === "shaft" ? "work" : "cost" }, trace);

  const split = splitAt(pair, r_1, trace);
  const place = placeAt(pair, costs, r_1);
  noteExcess(limits, place, trace);
  const { first, second, m_da, W_c1, W_c2 } = split;
  const W_c12 = trace.use(totalPower, { W_c1, W_c2 }, "both compressors");
  const heat1 = stageHeat({ ...pair.first, words: stageWords.first }, first, { m_a: pair.m_a, m_da }, trace);
  const heat2 = stageHeat(
    { ...pair.second, words: stageWords.second },
    second,
    { m_a: split.m_2, m_da },
    trace,
  );
  noteRealGas(second.before, "T_4", trace);
  noteRealGas(second.after, "rho_m", trace);
  const comparisons = compareSplit(pair, split, r_1, trace);
  noteComparisons(comparisons, { W_c12, isCooled: pair.first.cooler.kind !== "none" }, trace);

  return {
    r_1,
    r_2: split.r_2,
    p_2: first.before.p,
    p_3: first.after.p,
    p_4: second.before.p,
    T_2: split.T_2,
    T_3: split.T_3,
    T_4: split.T_4,
    T_m: second.after.T,
    rho_m: second.after.rho,
    W_c1,
    W_c2,
    W_c12,
    W_b: crankshaftPower(given, costs, split, trace),
    W_x:
      given.least === "crankshaft"
        ? trace.use(weightedPower, { chi_1: costs.chi_1, W_c1, chi_2: costs.chi_2, W_c2 }, "both compressors")
        : undefined,
    Q: heat1.Q,
    Q_45: heat2.Q,
    m_c: heat1.m_c,
    m_c_45: heat2.m_c,
    r_1_best: best.r_1,
    W_best: workAt(pair, best.r_1),
    r_1_flat_from: best.flat.from,
    r_1_flat_to: best.flat.to,
    r_1_end: best.range.to,
    r_1_from: limits.length ? best.allowed?.from : undefined,
    r_1_to: limits.length ? best.allowed?.to : undefined,
    ...comparisons,
  };
};

function acceptPair(given: TwoStageSplitGiven, trace: Trace): Pair {
  const { w } = ambientHumidity(given, trace);
  const Delta_p_01 = accept("Delta_p_01", "The loss before the first compressor", given.Delta_p_01 ?? 0, {
    kind: "pressureDifference",
    atLeast: 0,
    below: given.p_0,
  });
  const m_a = accept("m_a", "The air flow", given.m_a, { kind: "massFlow", above: 0, atMost: 1000 });
  const R_m = trace.use(gasConstant, { w }, "ambient air");
  const where = `${stageWords.first.compressor} inlet`;
  const p_1 = trace.use(pressureAfterLoss, { p_in: given.p_0, Delta_p: Delta_p_01 }, where);
  const inlet = airState({ p: p_1, T: given.T_0, w, R_m }, trace, where);
  const { cooler, P, T_w_in } = given;
  const isPart = given.loss === "part";
  const loss = isPart ? { Delta_p: 0, zeta: given.zeta ?? Number.NaN } : { Delta_p: given.Delta_p_23 };
  const after = { P: given.P_45, T_w_in: given.T_w_in_45, Delta_p: given.Delta_p_45 };
  const coolers = [
    acceptCooler({ cooler, P, T_w_in, ...loss }, { ...firstCoolerFields, zeta: "zeta" }),
    acceptCooler({ cooler: given.cooler_45, ...after }, secondCoolerFields),
  ] as const;
  const machines = [machineOf(given, "eta_s"), machineOf(given, "eta_s_2")] as const;

  const p_m = accept("p_m", "The wanted pressure, absolute,", given.p_m, {
    kind: "pressure",
    above: 0,
    atMost: MOST_OF_BOTH * p_1,
  });
  const pair: Pair = {
    inlet,
    m_a,
    p_m,
    first: { machine: machines[0], cooler: coolers[0] },
    second: { machine: machines[1], cooler: coolers[1] },
  };
  const { from, to } = rangeOfFirst(pair, MOST_OF_ONE);
  const lossAfter = coolers[1].kind === "none" ? 0 : coolers[1].Delta_p;
  refuse(
    p_m + lossAfter < p_1,
    "p_m",
    "The wanted pressure is below what the compressors get, and compressors do not expand. It may be as low as the bound.",
    { value: p_1 - lossAfter, kind: "pressure" },
  );
  refuse(
    !(from < to),
    "p_m",
    "Hardly any pressure is wanted, so there is nothing to divide. It has to be above the bound.",
    { value: p_1 - lossAfter, kind: "pressure" },
  );
  return pair;
}

const machineOf = (given: TwoStageSplitGiven, field: "eta_s" | "eta_s_2"): Compressor =>
  acceptCompressor(
    { efficiency: "isentropic", eta_s: given[field], heatCapacity: given.heatCapacity, kappa: given.kappa },
    { eta_s: field, eta_p: field },
  );

/** What a watt of each shaft costs, and which part of a watt the crankshaft gives for it. */
function costsOf(given: TwoStageSplitGiven): Costs {
  const isBelt = given.drive === "crankshaft" || given.drive_2 === "crankshaft";
  const eta_b = isBelt ? acceptDriveEfficiency(given) : 1;
  const ofDrive = (drive: Drive): SI => (drive === "crankshaft" ? 1 / eta_b : 0);
  const [belt_1, belt_2] = [ofDrive(given.drive), ofDrive(given.drive_2)];
  if (given.least === "shaft") return { chi_1: 1, chi_2: 1, belt_1, belt_2 };
  const chi_g = accept("chi_g", "The cost of exhaust power", given.chi_g, {
    kind: "fraction",
    atLeast: 0.01,
    atMost: 2,
  });
  return { chi_1: belt_1 || chi_g, chi_2: belt_2 || chi_g, belt_1, belt_2 };
}

let last: { readonly key: string; readonly best: BestSplit } | undefined;

/** The search, kept for the next call: a chart draws many splits of one pair. */
function searched(...search: Parameters<typeof bestSplit>): BestSplit {
  const key = JSON.stringify(search);
  if (last?.key !== key) last = { key, best: bestSplit(...search) };
  return last.best;
}

function acceptRatio(given: SI | undefined, { range }: BestSplit): SI {
  const r_1 = accept("r_1", "The ratio of the first compressor", given, { kind: "ratio", atLeast: 1 });
  refuse(
    r_1 < range.from,
    "r_1",
    "So little pressure is left behind the first cooler that the second compressor cannot make up for it. The ratio may be as low as the bound.",
    { value: range.from, kind: "ratio" },
  );
  refuse(
    r_1 > range.to,
    "r_1",
    "With so much in the first stage the second compressor would have to expand the air, and compressors do not. The ratio may be as high as the bound.",
    { value: range.to, kind: "ratio" },
  );
  return r_1;
}

function crankshaftPower(given: TwoStageSplitGiven, costs: Costs, split: Split, trace: Trace): SI {
  const { belt_1, belt_2 } = costs;
  const eta_b = given.eta_b as SI;
  const of = (W_c: SI, compressor: string) => trace.use(drivePower, { W_c, eta_b }, compressor);
  return (
    (belt_1 ? of(split.W_c1, stageWords.first.compressor) : 0) +
    (belt_2 ? of(split.W_c2, stageWords.second.compressor) : 0)
  );
}
