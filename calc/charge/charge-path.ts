import { gaugePressure } from "../atmosphere/gauge-pressure.ts";
import { acceptCompressor, type CompressorGiven } from "../compression/compress.ts";
import { shaftPower } from "../compression/shaft-power.ts";
import { totalPower } from "../compression/total-power.ts";
import { airFlow } from "../engine/air-flow.ts";
import { acceptEngine, acceptFuel, type EngineGiven } from "../engine/cycle.ts";
import { dryAirFlow } from "../engine/dry-air-flow.ts";
import { fuelFlowFromAir } from "../engine/fuel-flow-from-air.ts";
import { moistAirFlow } from "../engine/moist-air-flow.ts";
import { neededDensity } from "../engine/needed-density.ts";
import { powerFromFuel } from "../engine/power-from-fuel.ts";
import { acceptCooler, type CoolerGiven } from "../exchanger/cooler.ts";
import { type AmbientGiven, ambientHumidity } from "../fluids/ambient-humidity.ts";
import { dewPointOfCharge } from "../fluids/dew-point-at-pressure.ts";
import { noteRealGas } from "../fluids/real-gas-note.ts";
import { accept } from "../quantity/accept.ts";
import type { SI } from "../quantity/domain-error.ts";
import { type Model, plain, type Trace } from "../relation/trace.ts";
import { type AirPath, checkPath, follow, type PathStage, type Site } from "./air-path.ts";
import { firstCoolerFields, secondCoolerFields } from "./cooler-fields.ts";
import { acceptWish, ratiosFor, type WishGiven } from "./path-wish.ts";
import { type AirState, type StagePath, stageWords } from "./stage.ts";
import { stageHeat } from "./stage-heat.ts";
import { stageWater } from "./stage-water.ts";
import { timesDenser } from "./times-denser.ts";

/**
 * Ambient air, the loss before the compressor (Pa), what is wanted, one compressor and cooler or two in series, engine, and
 * fuel where the power is wanted. The second stage's own data end in `_2` (compressor) and `_45` (cooler); both
 * compressors share the kind of efficiency and the heat capacity. `Delta_T_w` in K is how far a cooler's water may warm.
 */
export interface ChargePathGiven extends AmbientGiven, CompressorGiven, EngineGiven, WishGiven {
  readonly Delta_p_01?: SI | undefined;
  readonly stages?: "one" | "two" | undefined;
  readonly cooler: CoolerGiven["cooler"];
  readonly P?: SI | undefined;
  readonly T_w_in?: SI | undefined;
  readonly T_3?: SI | undefined;
  readonly Delta_p_23?: SI | undefined;
  readonly Delta_T_w?: SI | undefined;
  readonly eta_s_2?: SI | undefined;
  readonly eta_p_2?: SI | undefined;
  readonly cooler_45?: CoolerGiven["cooler"] | undefined;
  readonly P_45?: SI | undefined;
  readonly T_w_in_45?: SI | undefined;
  readonly T_5?: SI | undefined;
  readonly Delta_p_45?: SI | undefined;
  readonly Delta_T_w_45?: SI | undefined;
}

type Quantities = "p" | "T" | "rho" | "w";

/** Pa absolute, K, kg/m³, kg/kg, J/kg, kg/s, W. Stations 4 and 5 only with two stages. What does not apply is undefined. */
export type ChargePath = Readonly<Record<`${Quantities}_${"0" | "1" | "2" | "3" | "m"}`, SI>> &
  Readonly<Partial<Record<`${Quantities}_${"4" | "5"}`, SI>>> & {
    readonly r: SI;
    readonly r_2: SI | undefined;
    readonly T_2s: SI;
    readonly eta_s: SI | undefined;
    readonly eta_p: SI | undefined;
    readonly Delta_h: SI;
    /** Air to the engine; the dry part of it; and without the cooler at the same compressor outlet, of one stage. */
    readonly m_a: SI;
    readonly m_da: SI;
    readonly m_a_uncooled: SI | undefined;
    /** Density over that at the compressor inlet, with all coolers; and without, of one stage. */
    readonly D_rho: SI;
    readonly D_rho_uncooled: SI | undefined;
    /** Of the first compressor, the second, and both. */
    readonly W_c: SI;
    readonly W_c2: SI | undefined;
    readonly W_c12: SI | undefined;
    readonly P: SI | undefined;
    readonly P_45: SI | undefined;
    readonly Q: SI;
    readonly Q_s: SI;
    readonly Q_l: SI;
    readonly Q_45: SI | undefined;
    readonly m_c: SI;
    readonly m_c_45: SI | undefined;
    /** Of the charge in each cooler before water condenses, at the pressure after it. */
    readonly T_dp_3: SI | undefined;
    readonly T_dp_5: SI | undefined;
    readonly m_w: SI | undefined;
    readonly T_w_out: SI | undefined;
    readonly m_w_45: SI | undefined;
    readonly T_w_out_45: SI | undefined;
    readonly p_g: SI;
    readonly m_f: SI | undefined;
    readonly W_e: SI | undefined;
  };

/**
 * The path of the air from the barometer to the engine, through one compressor and cooler or two; a cooler may be missing.
 *
 * Forward from pressure ratios of 1 to 10; or from a wanted pressure, density or power, for which the ratio is found by a
 * bracketed root to 1e-12 with losses, coolers and condensation inside. Water condenses after each cooler at the pressure
 * there, and the next stage goes on without it. Throws a DomainError for what cannot be, and for a wish that no ratio
 * from 1 to 10 fulfils, with the bound that binds.
 *
 * @example
 * chargePath({ p_0: 99e3, T_0: 298.15, humidity: "dry", wanted: "ratio", r: 2.2, efficiency: "isentropic", eta_s: 0.74,
 *   heatCapacity: "real", cooler: "temperature", T_3: 323.15, Delta_p_23: 6e3, V_d: 4.4e-3, n: 2000 / 60,
 *   cycle: "four-stroke", eta_v: 0.92 }).m_a // 0.15405 kg/s
 */
export const chargePath: Model<ChargePathGiven, ChargePath> = (given, trace = plain) => {
  const { w } = ambientHumidity(given, trace);
  const site: Site = {
    p_0: given.p_0,
    T_0: given.T_0,
    w,
    Delta_p_01: accept("Delta_p_01", "The loss before the compressor", given.Delta_p_01 ?? 0, {
      kind: "pressureDifference",
      atLeast: 0,
      below: given.p_0,
    }),
    stages: stagesOf(given),
  };
  const engine = acceptEngine(given);
  const wish = acceptWish(given, { engine, stages: site.stages.length }, trace);
  const ratios = ratiosFor(site, wish, given, trace);

  const path = follow(site, ratios, trace);
  checkPath(site, path);
  const { ambient, inlet, end } = path;
  const [stage1, stage2] = path.stages as [StagePath, StagePath?];

  const m_f_wanted = wish.kind === "power" ? wish.m_f : undefined;
  if (wish.kind === "power") {
    const needed = trace.use(moistAirFlow, { m_da: wish.m_da, w: end.w }, "engine");
    trace.use(neededDensity, { m_a: needed, ...engine }, "engine");
  }
  const words = wordsOf(site);
  const m_a = trace.use(airFlow, { ...engine, rho: end.rho }, `engine, ${words.end}`);
  const m_da = trace.use(dryAirFlow, { m_a, w: end.w }, "engine");
  const ratio = (out: AirState, where: string) => timesDenser(out, inlet, trace, where);
  const isCooled = site.stages.some(({ cooler }) => cooler.kind !== "none");
  const m_a_uncooled =
    stage2 || !isCooled
      ? undefined
      : trace.use(airFlow, { ...engine, rho: stage1.before.rho }, "engine, without the cooler");
  const D_rho_uncooled = stage2 ? undefined : ratio(stage1.before, "over the compressor");
  const D_rho = isCooled || stage2 ? ratio(end, words.over) : D_rho_uncooled;

  const first = stageResults(
    site.stages[0],
    stage1,
    { m_da, Delta_T_w: given.Delta_T_w, field: "Delta_T_w" },
    trace,
  );
  const second =
    stage2 &&
    stageResults(
      site.stages[1],
      stage2,
      { m_da, Delta_T_w: given.Delta_T_w_45, field: "Delta_T_w_45" },
      trace,
    );
  const W_c12 = second && trace.use(totalPower, { W_c1: first.W_c, W_c2: second.W_c }, "both compressors");

  const carried = power(given, { m_da, m_f: m_f_wanted }, trace);
  const p_g = trace.use(gaugePressure, { p: end.p, p_0: site.p_0 }, words.end);
  remark(site, path, p_g, trace);

  return {
    ...station("0", ambient),
    ...station("1", inlet),
    ...station("2", stage1.before),
    ...station("3", stage1.after),
    ...(stage2 && { ...station("4", stage2.before), ...station("5", stage2.after) }),
    ...station("m", end),
    r: ratios[0] as SI,
    r_2: stage2 && ratios[1],
    T_2s: stage1.compressed.T_s,
    eta_s: stage1.compressed.eta_s,
    eta_p: stage1.compressed.eta_p,
    Delta_h: stage1.compressed.Delta_h,
    m_a,
    m_da,
    m_a_uncooled: m_a_uncooled ?? (stage2 ? undefined : m_a),
    D_rho: D_rho as SI,
    D_rho_uncooled,
    W_c: first.W_c,
    W_c2: second?.W_c,
    W_c12,
    P: stage1.P,
    P_45: stage2?.P,
    Q: first.Q,
    Q_s: first.Q_s,
    Q_l: first.Q_l,
    Q_45: second?.Q,
    m_c: first.m_c,
    m_c_45: second?.m_c,
    T_dp_3: first.T_dp,
    T_dp_5: second?.T_dp,
    m_w: first.m_w,
    T_w_out: first.T_w_out,
    m_w_45: second?.m_w,
    T_w_out_45: second?.T_w_out,
    p_g,
    ...carried,
  };
};

/** Compressor and cooler once, or twice in series. */
function stagesOf(given: ChargePathGiven): readonly PathStage[] {
  const isSingle = given.stages !== "two";
  const first: PathStage = {
    machine: acceptCompressor(given),
    cooler: acceptCooler({ ...given, T_out: given.T_3, Delta_p: given.Delta_p_23 }, firstCoolerFields),
    words: isSingle ? stageWords.only : stageWords.first,
    fields: firstCoolerFields,
  };
  if (isSingle) return [first];
  return [
    first,
    {
      machine: acceptCompressor(
        { ...given, eta_s: given.eta_s_2, eta_p: given.eta_p_2 },
        { eta_s: "eta_s_2", eta_p: "eta_p_2" },
      ),
      cooler: acceptCooler(
        {
          cooler: given.cooler_45 ?? "none",
          P: given.P_45,
          T_w_in: given.T_w_in_45,
          T_out: given.T_5,
          Delta_p: given.Delta_p_45,
        },
        secondCoolerFields,
      ),
      words: stageWords.second,
      fields: secondCoolerFields,
    },
  ];
}

/** What the end of the path is called in the working, and the whole of it. */
function wordsOf({ stages }: Site) {
  const last = stages.at(-1);
  const end = !last || last.cooler.kind === "none" ? "manifold" : `after the ${last.words.cooler}`;
  return { end, over: stages.length > 1 ? "over both stages" : "over compressor and cooler" };
}

const station = <N extends string>(number: N, { p, T, rho, w }: AirState) =>
  ({
    [`p_${number}`]: p,
    [`T_${number}`]: T,
    [`rho_${number}`]: rho,
    [`w_${number}`]: w,
  }) as Record<`${Quantities}_${N}`, SI>;

/** Shaft power, heat, condensate, dew point and water of one stage. */
function stageResults(
  stage: PathStage | undefined,
  path: StagePath,
  more: { readonly m_da: SI; readonly Delta_T_w: SI | undefined; readonly field: string },
  trace: Trace,
) {
  if (!stage) throw new Error("a path has no more stages than were given");
  const { words, cooler } = stage;
  const { w } = path.inlet;
  const m_a = trace.use(moistAirFlow, { m_da: more.m_da, w }, words.compressor);
  const W_c = trace.use(shaftPower, { m_a, Delta_h: path.compressed.Delta_h }, words.compressor);
  const heat = stageHeat(stage, path, { m_a, m_da: more.m_da }, trace);
  const water = stageWater(stage, path, { Q: heat.Q, ...more }, trace);
  const charge = words === stageWords.only ? "charge" : `charge in the ${words.cooler}`;
  const T_dp =
    w === 0
      ? undefined
      : dewPointOfCharge(
          { w, p: path.after.p },
          trace,
          charge,
          cooler.kind === "none" ? charge : `${charge}, before water condenses`,
        );
  return { W_c, ...heat, ...water, T_dp };
}

/** Fuel and power that the air carries; with a wanted power, that power and its fuel. */
function power(
  given: ChargePathGiven,
  flow: { readonly m_da: SI; readonly m_f: SI | undefined },
  trace: Trace,
): { readonly m_f: SI | undefined; readonly W_e: SI | undefined } {
  if (flow.m_f !== undefined) return { m_f: flow.m_f, W_e: given.W_e };
  if (given.b === undefined || given.lambda === undefined || given.AFR_st === undefined) {
    return { m_f: undefined, W_e: undefined };
  }
  const { b, lambda, AFR_st } = acceptFuel(given);
  const m_f = trace.use(fuelFlowFromAir, { m_da: flow.m_da, lambda, AFR_st }, "engine");
  return { m_f, W_e: trace.use(powerFromFuel, { m_f, b }, "engine") };
}

/** Results and inputs of each stage that notes speak of. */
const stageIds = [
  { before: "rho_2", after: "rho_3", T_w_in: "T_w_in", m_c: "m_c" },
  { before: "rho_4", after: "rho_5", T_w_in: "T_w_in_45", m_c: "m_c_45" },
] as const;

/** What a reader has to know that is in the numbers but does not stand out. */
function remark(site: Site, path: AirPath, p_g: SI, trace: Trace): void {
  for (const [i, { before, after }] of path.stages.entries()) {
    const ids = stageIds[i];
    const cooler = site.stages[i]?.cooler;
    if (!ids || !cooler) continue;
    noteRealGas(before, ids.before, trace);
    if (cooler.kind === "none") continue;
    noteRealGas(after, ids.after, trace);
    if (cooler.kind === "effectiveness" && cooler.T_w_in > before.T) {
      trace.note({ about: ids.T_w_in, says: "The water is hotter than the charge, so it heats the air." });
    }
    if (after.w < before.w) {
      trace.note({
        about: ids.m_c,
        says: "Water condenses: the air after the cooler is saturated. Cold tube walls make more than this mean state says.",
      });
    }
  }
  if (p_g < 0) {
    trace.note({
      about: "p_m",
      says: `The pressure ${wordsOf(site).end === "manifold" ? "in the manifold" : wordsOf(site).end} is below the barometer: the losses take more than ${path.stages.length > 1 ? "the compressors give" : "the compressor gives"}.`,
    });
  }
}
