import { constants } from "../constants.ts";
import { dryAirFlow } from "../engine/dry-air-flow.ts";
import { moistAirFlow } from "../engine/moist-air-flow.ts";
import { AIR_TEMPERATURE } from "../exchanger/air-side.ts";
import { coldWallCondensate } from "../exchanger/cold-wall-condensate.ts";
import { COOLANT_TEMPERATURE } from "../exchanger/cooler.ts";
import { coolingHeat } from "../exchanger/cooling-heat.ts";
import { latentShare } from "../exchanger/latent-share.ts";
import { sensibleDuty } from "../exchanger/sensible-duty.ts";
import { aboveDewPoint } from "../fluids/above-dew-point.ts";
import { type AmbientGiven, ambientHumidity } from "../fluids/ambient-humidity.ts";
import { keptHumidity } from "../fluids/condensation.ts";
import { dewPointAtPressure, dewPointOfCharge } from "../fluids/dew-point-at-pressure.ts";
import { enhancementFactor } from "../fluids/enhancement-factor.ts";
import { enthalpy } from "../fluids/enthalpy.ts";
import { saturatedHumidityRatio } from "../fluids/saturated-humidity-ratio.ts";
import { saturationPressure } from "../fluids/saturation-pressure.ts";
import { volumeFlow } from "../fluids/volume-flow.ts";
import { compressedWaterDensity } from "../fluids/water/compressed-water-density.ts";
import { accept, refuse } from "../quantity/accept.ts";
import type { SI } from "../quantity/domain-error.ts";
import { type Model, plain, type Trace } from "../relation/trace.ts";

/**
 * Ambient air, moist air flow in kg/s, and one charge cooler or two in series. Each is known by the temperatures of the charge
 * before and after it (K), the pressure after it (Pa absolute) and its water inlet (K), the coldest its walls can be.
 */
export interface CondensationGiven extends AmbientGiven {
  readonly m_a?: SI | undefined;
  readonly stages: "one" | "two";
  readonly T_2?: SI | undefined;
  readonly T_3?: SI | undefined;
  readonly p_3?: SI | undefined;
  readonly T_w_in?: SI | undefined;
  readonly T_4?: SI | undefined;
  readonly T_5?: SI | undefined;
  readonly p_5?: SI | undefined;
  readonly T_w_in_45?: SI | undefined;
}

/** K, kg/kg, kg/s, m³/s, W. */
interface InCooler {
  readonly T_dp: SI | undefined;
  /** Mean air after the cooler, and the water that enters, above the dew point; below it they are negative. */
  readonly airAbove: SI | undefined;
  readonly waterAbove: SI | undefined;
  readonly w: SI;
  readonly m_c: SI;
  readonly V_c: SI | undefined;
  readonly m_c_wall: SI;
  readonly Q: SI;
  readonly Q_l: SI;
  readonly x_l: SI;
}

export interface Condensation {
  readonly w_0: SI;
  readonly T_dp_0: SI | undefined;
  readonly first: InCooler;
  readonly second: InCooler | undefined;
}

/** Inputs of one cooler, for messages. */
interface Names {
  readonly cooler: string;
  readonly T_in: string;
  readonly T_out: string;
  readonly p: string;
  readonly T_w: string;
  readonly m_c_wall: string;
}

const firstNames: Names = {
  cooler: "cooler",
  T_in: "T_2",
  T_out: "T_3",
  p: "p_3",
  T_w: "T_w_in",
  m_c_wall: "m_c_wall",
};
const secondNames: Names = {
  cooler: "second cooler",
  T_in: "T_4",
  T_out: "T_5",
  p: "p_5",
  T_w: "T_w_in_45",
  m_c_wall: "m_c_wall_45",
};

/**
 * Whether water condenses in the charge coolers, how much at least, and how much if all walls were as cold as the water. The
 * second cooler gets the air that the first one has dried; drops are taken to be drained.
 *
 * Throws a DomainError for a cooler that heats, or whose air leaves colder than its water enters.
 *
 * @example
 * condensationInCoolers({ p_0: 100.6e3, T_0: 306.15, humidity: "relative", varphi_0: 0.85, m_a: 1.1, stages: "one", T_2: 443.15,
 *   T_3: 311.15, p_3: 280e3, T_w_in: 301.15 }).first.m_c // 0.0134 kg/s
 */
export const condensationInCoolers: Model<CondensationGiven, Condensation> = (given, trace = plain) => {
  const { w, p_v } = ambientHumidity(given, trace);
  const m_a = accept("m_a", "The air flow", given.m_a, { kind: "massFlow", above: 0, atMost: 1000 });
  const m_da = trace.use(dryAirFlow, { m_a, w }, "ambient air");
  const { T_2, T_3, p_3, T_w_in, T_4, T_5, p_5, T_w_in_45 } = given;
  const first = inCooler(firstNames, { w, m_da }, { T_in: T_2, T_out: T_3, p: p_3, T_w: T_w_in }, trace);
  const second =
    given.stages === "one"
      ? undefined
      : inCooler(secondNames, { w: first.w, m_da }, { T_in: T_4, T_out: T_5, p: p_5, T_w: T_w_in_45 }, trace);
  if (second && T_3 !== undefined && p_3 !== undefined) noteOrder({ T_3, p_3, T_4, p_5 }, trace);
  const T_dp_0 = w === 0 ? undefined : dewPointAtPressure({ p_v, p: given.p_0 }, trace, "ambient air");
  return { w_0: w, T_dp_0, first, second };
};

/** Between two coolers stands a compressor, which neither cools nor expands. */
function noteOrder(
  { T_3, p_3, T_4, p_5 }: Readonly<Record<"T_3" | "p_3", SI> & Record<"T_4" | "p_5", SI | undefined>>,
  trace: Trace,
): void {
  if (T_4 !== undefined && T_4 < T_3)
    trace.note({
      about: "T_4",
      says: "The air before the second cooler is colder than after the first. A compressor between them would heat it above the bound.",
      limit: { value: T_3, kind: "temperature" },
    });
  if (p_5 !== undefined && p_5 < p_3)
    trace.note({
      about: "p_5",
      says: "The pressure after the second cooler is below that after the first. A compressor between them would raise it above the bound.",
      limit: { value: p_3, kind: "pressure" },
    });
}

function inCooler(
  names: Names,
  air: { readonly w: SI; readonly m_da: SI },
  given: Readonly<Record<"T_in" | "T_out" | "p" | "T_w", SI | undefined>>,
  trace: Trace,
): InCooler {
  const { w } = air;
  const T_in = accept(names.T_in, "The temperature before the cooler", given.T_in, AIR_TEMPERATURE);
  const T_out = accept(names.T_out, "The temperature after the cooler", given.T_out, AIR_TEMPERATURE);
  const p = accept(names.p, "The pressure of the charge, absolute,", given.p, {
    kind: "pressure",
    above: 0,
    atMost: 5e6,
  });
  const T_w = accept(names.T_w, "The water temperature at the inlet", given.T_w, COOLANT_TEMPERATURE);
  refuse(
    T_out > T_in,
    names.T_out,
    "The cooler outlet is hotter than the air that enters it. It has to be at or below that temperature.",
    { value: T_in, kind: "temperature" },
  );
  refuse(
    T_out < T_w,
    names.T_out,
    "The air after the cooler is colder than the water that enters. It has to be at or above the water temperature.",
    { value: T_w, kind: "temperature" },
  );
  const where = names.cooler;
  const T_dp = w === 0 ? undefined : dewPointOfCharge({ w, p }, trace, `charge in the ${where}`);
  const w_out = keptHumidity({ T: T_out, p, w }, trace, `after the ${where}, saturated`);
  const m_c_wall =
    T_dp === undefined || T_w >= T_dp ? 0 : wallCondensate({ ...air, T_in, T_out, T_w, p }, trace, where);
  const { m_c, ...heat } = heatOf({ ...air, T_in, T_out, w_out }, trace, where);
  remark(names, { T_dp, T_out, T_w }, trace);
  if (m_c_wall < m_c)
    trace.note({
      about: names.m_c_wall,
      says: "The straight line to the wall falls below what condenses from the air on average, so this estimate is too low here: the other amount counts.",
    });
  return {
    T_dp,
    airAbove: T_dp && trace.use(aboveDewPoint, { T: T_out, T_dp }, `air after the ${where}`),
    waterAbove: T_dp && trace.use(aboveDewPoint, { T: T_w, T_dp }, `water at the inlet of the ${where}`),
    w: w_out,
    m_c,
    V_c: m_c === 0 ? 0 : drained(m_c, { T: T_out, p }, trace, where),
    m_c_wall,
    ...heat,
  };
}

/** What condenses if every wall is as cold as the water that enters. */
function wallCondensate(
  state: Readonly<Record<"w" | "m_da" | "T_in" | "T_out" | "T_w" | "p", SI>>,
  trace: Trace,
  where: string,
): SI {
  const { w, m_da, T_in, T_out, T_w, p } = state;
  const wall = `coldest wall of the ${where}`;
  const p_ws = trace.use(saturationPressure, { T: T_w }, wall);
  const f_e = trace.use(enhancementFactor, { T: T_w, p }, wall);
  const w_s = trace.use(saturatedHumidityRatio, { f_e, p_ws, p }, wall);
  return trace.use(coldWallCondensate, { m_da, w_in: w, w_s, T_in, T_out, T_w }, where);
}

const FREEZING = constants.T_C.value;

/** Volume flow of the water that leaves, m³/s; ice does not. */
function drained(
  m: SI,
  { T, p }: { readonly T: SI; readonly p: SI },
  trace: Trace,
  where: string,
): SI | undefined {
  if (T < FREEZING) return undefined;
  const rho = trace.use(compressedWaterDensity, { T, p }, `condensate of the ${where}`);
  return trace.use(volumeFlow, { m, rho }, `condensate of the ${where}`);
}

function heatOf(
  state: Readonly<Record<"w" | "m_da" | "T_in" | "T_out" | "w_out", SI>>,
  trace: Trace,
  where: string,
): Pick<InCooler, "Q" | "Q_l" | "x_l" | "m_c"> {
  const { w, m_da, T_in, T_out, w_out } = state;
  const m_a = trace.use(moistAirFlow, { m_da, w }, where);
  const h_in = trace.use(enthalpy, { T: T_in, w }, `before the ${where}`);
  const h_out = trace.use(enthalpy, { T: T_out, w }, `after the ${where}, all vapour carried along`);
  const Q_s = trace.use(sensibleDuty, { m_a, h_in, h_out }, where);
  const { Q, Q_l, m_c } = coolingHeat({ Q_s, m_da, w_in: w, w_out, T_out }, trace, where);
  return { Q, Q_l, m_c, x_l: m_c === 0 ? 0 : trace.use(latentShare, { Q_l, Q }, where) };
}

function remark(
  names: Names,
  { T_dp, T_out, T_w }: { readonly T_dp: SI | undefined; readonly T_out: SI; readonly T_w: SI },
  trace: Trace,
): void {
  if (T_dp === undefined) return;
  const limit = { value: T_dp, kind: "temperature" } as const;
  if (T_out < T_dp)
    trace.note({
      about: names.T_out,
      says: "The air on average leaves below its dew point at this pressure: water condenses. To stay dry the air and every wall have to be above the bound.",
      limit,
    });
  else if (T_w < T_dp)
    trace.note({
      about: names.T_w,
      says: "The air on average leaves above its dew point, yet the water enters below it: the coldest walls may be wet, since they lie between water and air. With water above the bound all walls are dry.",
      limit,
    });
  if (T_w < FREEZING && T_w < T_dp)
    trace.note({
      about: names.T_w,
      says: "Water that condenses on walls below freezing turns to ice, and may block the core.",
      limit: { value: FREEZING, kind: "temperature" },
    });
}
