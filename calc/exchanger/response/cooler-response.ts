import { density } from "../../fluids/density.ts";
import { gasConstant } from "../../fluids/gas-constant.ts";
import { heatCapacity } from "../../fluids/heat-capacity.ts";
import { accept, lastBits } from "../../quantity/accept.ts";
import type { SI } from "../../quantity/domain-error.ts";
import { atPlace } from "../../relation/at-place.ts";
import { type Model, plain, type Trace } from "../../relation/trace.ts";
import { AIR_TEMPERATURE } from "../air-side.ts";
import { capacityRate } from "../capacity-rate.ts";
import { airBehindCore } from "./air-behind-core.ts";
import { coreAfterStep } from "./core-after-step.ts";
import { coreAtRest } from "./core-at-rest.ts";
import { coreMass } from "./core-mass.ts";
import { fillTime } from "./fill-time.ts";
import { timeConstant } from "./time-constant.ts";
import { volumeForFillTime } from "./volume-for-fill-time.ts";
import { wallExchange } from "./wall-exchange.ts";

/**
 * A core as it answers: kg of metal, its heat capacity in J/(kg K), the conductances of both sides and the heat-capacity rate of
 * the coolant in W/K, the coolant's inlet in K, the volume of the charge in m³.
 */
interface CoreFields<T> {
  readonly M_core?: T;
  readonly c_core?: T;
  readonly UA_a?: T;
  readonly UA_film?: T;
  readonly C_w?: T;
  readonly T_w_in?: T;
  readonly V_ch?: T;
}

type InCell<T> = { readonly [Key in keyof CoreFields<T> as `${Key}_cell`]?: T };

/**
 * Two coolers, the second one behind `_cell`, with the same air: kg/s, Pa absolute, and the temperature in K with which it enters before
 * and after a step. `t` is the time after it in s, `x_tol` the part by which two may differ and count as alike.
 */
export interface CoolerResponseGiven extends CoreFields<SI | undefined>, InCell<SI | undefined> {
  readonly m_a?: SI | undefined;
  readonly p_2?: SI | undefined;
  readonly T_2_from?: SI | undefined;
  readonly T_2?: SI | undefined;
  readonly t?: SI | undefined;
  readonly x_tol?: SI | undefined;
}

/** s, K, W/K: how one cooler answers. `T_3_first` is at once after the step, `T_3_end` long after. */
export interface Response {
  readonly E_a: SI;
  readonly E_w: SI;
  readonly tau: SI;
  readonly T_3_before: SI;
  readonly T_3_first: SI;
  readonly T_3_t: SI;
  readonly T_3_end: SI;
  readonly t_fill: SI;
}

type ResponseInCell = { readonly [Key in keyof Response as `${Key}_cell`]: SI };

/** The ratios are those of the cell over the target. What is missing in the cell is missing here where the cell has too much. */
export interface CoolerResponse extends Response, ResponseInCell {
  readonly r_tau: SI;
  readonly M_add: SI | undefined;
  readonly r_fill: SI;
  readonly V_add: SI | undefined;
}

interface Air {
  readonly m_a: SI;
  readonly C_a: SI;
  readonly p_2: SI;
  readonly R_m: SI;
  readonly before: SI;
  readonly after: SI;
  readonly t: SI;
}

interface Core {
  readonly M_core: SI;
  readonly c_core: SI;
  readonly UA_a: SI;
  readonly UA_film: SI;
  readonly C_w: SI;
  readonly T_w_in: SI;
  readonly V_ch: SI;
}

/**
 * How fast two coolers answer when the air before them gets hotter or colder at once, and whether one stands in for the other while
 * things change.
 *
 * Each core has metal of one temperature, as if the water did not matter to where along it the air is. A conductance of zero on the
 * coolant's side is a dry core. Throws a DomainError that names the field.
 *
 * @example
 * coolerResponse({ m_a: 0.3, p_2: 2.5e5, T_2_from: 298.15, T_2: 418.15, t: 10, x_tol: 0.1, M_core: 6, c_core: 900, UA_a: 900,
 *   UA_film: 0, C_w: 1000, T_w_in: 298.15, V_ch: 0.01, M_core_cell: 4, c_core_cell: 900, UA_a_cell: 900, UA_film_cell: 0,
 *   C_w_cell: 1000, T_w_in_cell: 298.15, V_ch_cell: 0.01 }).tau // 18.68 s
 */
export const coolerResponse: Model<CoolerResponseGiven, CoolerResponse> = (given, trace = plain) => {
  const air = acceptAir(given, trace);
  const x_tol = accept("x_tol", "The part that counts as alike", given.x_tol, {
    kind: "fraction",
    atLeast: 0,
    atMost: 1,
  });
  const [target, cell] = [acceptCore(given, ""), acceptCore(given, "_cell")];
  const own = respond(target, air, atPlace(trace, "target"));
  const other = respond(cell, air, atPlace(trace, "cell"));
  const inCell = Object.fromEntries(
    Object.entries(other).map(([id, value]) => [`${id}_cell`, value]),
  ) as unknown as ResponseInCell;
  const found = {
    ...own,
    ...inCell,
    r_tau: other.tau / own.tau,
    M_add: metalToAdd(cell, other, own.tau, trace),
    r_fill: other.t_fill / own.t_fill,
    V_add: volumeToAdd(cell, other, own.t_fill, air, trace),
  };
  noteWhatDiffers(found, x_tol, trace);
  return found;
};

function acceptAir(given: CoolerResponseGiven, trace: Trace): Air {
  const m_a = accept("m_a", "The air flow", given.m_a, { kind: "massFlow", above: 0, atMost: 1000 });
  const before = accept("T_2_from", "The air temperature before the step", given.T_2_from, AIR_TEMPERATURE);
  const after = accept("T_2", "The air temperature after the step", given.T_2, AIR_TEMPERATURE);
  const p_2 = accept("p_2", "The pressure of the charge, absolute,", given.p_2, {
    kind: "pressure",
    above: 0,
    atMost: 5e6,
  });
  const t = accept("t", "The time after the step", given.t, { kind: "duration", atLeast: 0, atMost: 1e6 });
  const c_m = trace.use(heatCapacity, { T: after, w: 0 }, "air, before the cooler");
  const C_a = trace.use(capacityRate, { m: m_a, c_m }, "air");
  return { m_a, C_a, p_2, R_m: trace.use(gasConstant, { w: 0 }, "air"), before, after, t };
}

function acceptCore(given: CoolerResponseGiven, suffix: "" | "_cell"): Core {
  const values = given as Readonly<Record<string, SI | undefined>>;
  const side = { kind: "conductance", atMost: 1e7 } as const;
  const read = (id: string, what: string, bounds: Parameters<typeof accept>[3]) =>
    accept(`${id}${suffix}`, what, values[`${id}${suffix}`], bounds);
  return {
    M_core: read("M_core", "The mass of the metal", { kind: "mass", above: 0, atMost: 1e5 }),
    c_core: read("c_core", "The heat capacity of the metal", {
      kind: "specificHeat",
      atLeast: 50,
      atMost: 5000,
    }),
    UA_a: read("UA_a", "The heat conductance of the air side", { ...side, above: 0 }),
    UA_film: read("UA_film", "The heat conductance of the coolant's side", { ...side, atLeast: 0 }),
    C_w: read("C_w", "The heat-capacity rate of the coolant", {
      kind: "capacityRate",
      above: 0,
      atMost: 1e8,
    }),
    T_w_in: read("T_w_in", "The temperature of the coolant at its inlet", AIR_TEMPERATURE),
    V_ch: read("V_ch", "The volume of the charge", { kind: "volume", above: 0, atMost: 1000 }),
  };
}

function respond(core: Core, air: Air, trace: Trace): Response {
  const { C_a } = air;
  const E_a = trace.use(wallExchange, { C: C_a, UA_side: core.UA_a }, "air");
  const E_w = trace.use(wallExchange, { C: core.C_w, UA_side: core.UA_film }, "coolant");
  const tau = trace.use(timeConstant, { ...core, E_a, E_w }, "core");
  const rest = (T_in: SI, when: string) =>
    trace.use(coreAtRest, { E_a, T_in, E_w, T_w_in: core.T_w_in }, when);
  const behind = (T_in: SI, T_core: SI, when: string) =>
    trace.use(airBehindCore, { T_in, E_a, C_a, T_core }, when);
  const T_core_0 = rest(air.before, "before the step");
  const T_core_end = rest(air.after, "long after the step");
  const T_core = trace.use(coreAfterStep, { T_core_0, T_core_end, t: air.t, tau }, "after the step");
  const T_3_end = behind(air.after, T_core_end, "long after the step");
  const rho = trace.use(density, { p: air.p_2, R_m: air.R_m, T: T_3_end }, "charge, behind the cooler");
  return {
    E_a,
    E_w,
    tau,
    T_3_before: behind(air.before, T_core_0, "before the step"),
    T_3_first: behind(air.after, T_core_0, "at once after the step"),
    T_3_t: behind(air.after, T_core, "after the step"),
    T_3_end,
    t_fill: trace.use(fillTime, { rho, V_ch: core.V_ch, m: air.m_a }, "charge"),
  };
}

/** What is needed beyond what is there; nothing where too much is there, but for the last bits. */
const beyond = (needed: SI, there: SI): SI | undefined =>
  needed >= there - lastBits(there) ? Math.max(0, needed - there) : undefined;

function metalToAdd({ M_core, c_core }: Core, { E_a, E_w }: Response, tau: SI, trace: Trace): SI | undefined {
  const needed = trace.use(coreMass, { tau, c_core, E_a, E_w }, "cell, as slow as the target");
  return beyond(needed, M_core);
}

function volumeToAdd(
  { V_ch }: Core,
  { T_3_end }: Response,
  t_fill: SI,
  { m_a, p_2, R_m }: Air,
  trace: Trace,
): SI | undefined {
  const rho = density.compute({ p: p_2, R_m, T: T_3_end });
  const needed = trace.use(
    volumeForFillTime,
    { rho, t_fill, m: m_a },
    "cell, filling as slowly as the target",
  );
  return beyond(needed, V_ch);
}

function noteWhatDiffers(found: CoolerResponse, x_tol: SI, trace: Trace): void {
  const { r_tau, r_fill, T_3_end, T_3_end_cell, T_3_before } = found;
  const differs = (ratio: SI) => Math.abs(ratio - 1) > x_tol;
  if (differs(r_tau))
    trace.note({
      about: "r_tau",
      says:
        r_tau < 1
          ? "The cell's cooler answers faster than the target, by more than counts as alike. More metal slows it."
          : "The cell's cooler answers more slowly than the target, by more than counts as alike. It has too much metal for so much heat transfer.",
    });
  if (differs(r_fill))
    trace.note({
      about: "r_fill",
      says:
        r_fill < 1
          ? "The cell's pipes fill faster than those of the target, by more than counts as alike. A longer or wider pipe slows them."
          : "The cell's pipes fill more slowly than those of the target, by more than counts as alike. A shorter or narrower pipe quickens them.",
    });
  if (Math.abs(T_3_end_cell - T_3_end) > x_tol * Math.abs(T_3_end - T_3_before))
    trace.note({
      about: "T_3_end_cell",
      says: "By this sum the coolers do not come to rest at the same temperature. It takes each core as of one temperature: check the end with their effectiveness, and match it first. Only then can the way there be compared.",
    });
}
