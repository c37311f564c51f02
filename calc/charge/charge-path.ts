import { gaugePressure } from "./atmosphere/gauge-pressure.ts";
import {
  acceptCompressor,
  type Compressed,
  type Compressor,
  type CompressorGiven,
  compress,
} from "./compression/compress.ts";
import { densityRatio } from "./compression/density-ratio.ts";
import { outletPressure } from "./compression/outlet-pressure.ts";
import { shaftPower } from "./compression/shaft-power.ts";
import { airFlow } from "./engine/air-flow.ts";
import { acceptEngine, acceptFuel, type EngineGiven, type FuelGiven } from "./engine/cycle.ts";
import { dryAirFlow } from "./engine/dry-air-flow.ts";
import { dryAirFromFuel } from "./engine/dry-air-from-fuel.ts";
import { fuelFlow } from "./engine/fuel-flow.ts";
import { fuelFlowFromAir } from "./engine/fuel-flow-from-air.ts";
import { moistAirFlow } from "./engine/moist-air-flow.ts";
import { neededDensity } from "./engine/needed-density.ts";
import { powerFromFuel } from "./engine/power-from-fuel.ts";
import { condensateFlow } from "./exchanger/condensate-flow.ts";
import { constantSensibleDuty } from "./exchanger/constant-sensible-duty.ts";
import { acceptCooler, type Cooler, type CoolerGiven, cool } from "./exchanger/cooler.ts";
import { duty } from "./exchanger/duty.ts";
import { latentDuty } from "./exchanger/latent-duty.ts";
import { sensibleDuty } from "./exchanger/sensible-duty.ts";
import { pressureAfterLoss } from "./flow/pressure-after-loss.ts";
import { type AmbientGiven, ambientHumidity } from "./fluids/ambient-humidity.ts";
import { keptHumidity } from "./fluids/condensation.ts";
import { density } from "./fluids/density.ts";
import { dewPointAtPressure } from "./fluids/dew-point-at-pressure.ts";
import { enthalpy } from "./fluids/enthalpy.ts";
import { gasConstant } from "./fluids/gas-constant.ts";
import { latentHeat } from "./fluids/latent-heat.ts";
import { noteRealGas } from "./fluids/real-gas-note.ts";
import { vapourPressureFromHumidityRatio } from "./fluids/vapour-pressure-from-humidity-ratio.ts";
import { bracketedRoot } from "./numerics/bracketed-root.ts";
import { accept, refuse } from "./quantity/accept.ts";
import { DomainError, type Limit, type SI } from "./quantity/domain-error.ts";
import { type Model, plain, type Trace } from "./relation/trace.ts";

/**
 * Ambient air, the loss before the compressor (Pa), what is wanted (a pressure ratio, a density at the engine in kg/m³,
 * or a brake power in W), compressor, cooler, engine, and fuel where the power is wanted.
 */
export interface ChargePathGiven extends AmbientGiven, CompressorGiven, CoolerGiven, EngineGiven, FuelGiven {
  readonly Delta_p_01?: SI | undefined;
  readonly wanted: "ratio" | "density" | "power";
  readonly r?: SI | undefined;
  readonly rho_3?: SI | undefined;
  readonly W_e?: SI | undefined;
}

type Station = "0" | "1" | "2" | "3";

/** Pa absolute, K, kg/m³, kg/kg, J/kg, kg/s, W. What does not apply is undefined. */
export type ChargePath = Readonly<Record<`${"p" | "T" | "rho" | "w"}_${Station}`, SI>> & {
  readonly r: SI;
  readonly T_2s: SI;
  readonly eta_s: SI | undefined;
  readonly eta_p: SI | undefined;
  readonly Delta_h: SI;
  /** Air to the engine, with the cooler; the dry part of it; and without the cooler at the same compressor outlet. */
  readonly m_a: SI;
  readonly m_da: SI;
  readonly m_a_uncooled: SI;
  /** Density over that at the compressor inlet, with the cooler and without. */
  readonly D_rho: SI;
  readonly D_rho_uncooled: SI;
  readonly W_c: SI;
  readonly P: SI | undefined;
  readonly Q: SI;
  readonly Q_s: SI;
  readonly Q_l: SI;
  readonly m_c: SI;
  readonly T_dp_3: SI | undefined;
  readonly p_g: SI;
  readonly m_f: SI | undefined;
  readonly W_e: SI | undefined;
};

const LOWEST_RATIO = 1;
const HIGHEST_RATIO = 10;

/**
 * The path of the air from the barometer to the engine, with one compressor and one cooler or none.
 *
 * Forward from a pressure ratio of 1 to 10; or from a wanted density or power, for which the ratio is found by a
 * bracketed root to 1e-12 with losses, cooler and condensation inside. Throws a DomainError for what cannot be, and for
 * a wish that no ratio from 1 to 10 fulfils, with the bound that binds.
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
    T: given.T_0,
    w,
    Delta_p_01: accept("Delta_p_01", "The loss before the compressor", given.Delta_p_01 ?? 0, {
      kind: "pressureDifference",
      atLeast: 0,
      below: given.p_0,
    }),
    machine: acceptCompressor(given),
    cooler: acceptCooler(given),
  };
  const engine = acceptEngine(given);
  const wish = wanted(given, engine, trace);
  const r = wish.kind === "ratio" ? wish.r : findRatio(site, wish, trace);

  const path = follow(site, r, trace);
  check(site, path);
  const { p_1, p_2, p_3, T_2, T_3, w_3, rho_2, rho_3, R_1, R_3 } = path;
  const T_1 = site.T;

  const m_f_wanted = wish.kind === "power" ? wish.m_f : undefined;
  if (wish.kind === "power") {
    const needed = trace.use(moistAirFlow, { m_da: wish.m_da, w: w_3 }, "engine");
    trace.use(neededDensity, { m_a: needed, ...engine }, "engine");
  }
  const { isCooled, end, charge } = placesOf(site.cooler);
  const m_a = trace.use(airFlow, { ...engine, rho: rho_3 }, `engine, ${end}`);
  const m_a_uncooled = isCooled
    ? trace.use(airFlow, { ...engine, rho: rho_2 }, "engine, without the cooler")
    : m_a;
  const m_da = trace.use(dryAirFlow, { m_a, w: w_3 }, "engine");
  const m_1 = trace.use(moistAirFlow, { m_da, w }, "compressor");
  const W_c = trace.use(shaftPower, { m_a: m_1, Delta_h: path.compressed.Delta_h }, "compressor");
  const heat = heats({ m_1, m_da, w, path }, trace, site);

  const ratio = (p_out: SI, T_out: SI, R_m_out: SI, where: string) =>
    trace.use(densityRatio, { p_in: p_1, p_out, T_in: T_1, T_out, R_m_in: R_1, R_m_out }, where);
  const D_rho_uncooled = ratio(p_2, T_2, R_1, "over the compressor");
  const D_rho = isCooled ? ratio(p_3, T_3, R_3, "over compressor and cooler") : D_rho_uncooled;

  const carried = power(given, { m_da, m_f: m_f_wanted }, trace);
  const p_g = trace.use(gaugePressure, { p: p_3, p_0: site.p_0 }, end);
  const T_dp_3 = w === 0 ? undefined : dewPointOfCharge({ w, p: p_3 }, trace, charge);
  remark({ site, path, p_g, m_c: heat.m_c }, trace);

  return {
    p_0: site.p_0,
    T_0: site.T,
    rho_0: path.rho_0,
    w_0: w,
    p_1,
    T_1,
    rho_1: path.rho_1,
    w_1: w,
    p_2,
    T_2,
    rho_2,
    w_2: w,
    p_3,
    T_3,
    rho_3,
    w_3,
    r,
    T_2s: path.compressed.T_s,
    eta_s: path.compressed.eta_s,
    eta_p: path.compressed.eta_p,
    Delta_h: path.compressed.Delta_h,
    m_a,
    m_da,
    m_a_uncooled,
    D_rho,
    D_rho_uncooled,
    W_c,
    P: path.P,
    ...heat,
    T_dp_3,
    p_g,
    ...carried,
  };
};

/** Whether there is a cooler, and what the end of the path is called in the working. */
const placesOf = ({ kind }: Cooler) =>
  kind === "none"
    ? { isCooled: false, end: "manifold", charge: "charge" }
    : { isCooled: true, end: "after the cooler", charge: "charge, before water condenses" };

/** What does not change with the pressure ratio. */
interface Site {
  readonly p_0: SI;
  readonly T: SI;
  readonly w: SI;
  readonly Delta_p_01: SI;
  readonly machine: Compressor;
  readonly cooler: Cooler;
}

interface Path {
  readonly compressed: Compressed;
  readonly p_1: SI;
  readonly p_2: SI;
  readonly p_3: SI;
  readonly T_2: SI;
  readonly T_3: SI;
  readonly w_3: SI;
  readonly R_1: SI;
  readonly R_3: SI;
  readonly rho_0: SI;
  readonly rho_1: SI;
  readonly rho_2: SI;
  readonly rho_3: SI;
  readonly P: SI | undefined;
}

/** The states along the path at one pressure ratio. */
function follow(site: Site, r: SI, trace: Trace): Path {
  const { p_0, T, w, machine, cooler } = site;
  const R_1 = trace.use(gasConstant, { w }, "ambient air");
  const rho_0 = trace.use(density, { p: p_0, R_m: R_1, T }, "ambient air");
  const p_1 = trace.use(pressureAfterLoss, { p_in: p_0, Delta_p: site.Delta_p_01 }, "compressor inlet");
  const rho_1 = trace.use(density, { p: p_1, R_m: R_1, T }, "compressor inlet");
  const p_2 = trace.use(outletPressure, { r, p_in: p_1 }, "compressor");
  const compressed = compress(machine, { T_in: T, w, R_m: R_1, r }, trace, "compressor");
  const T_2 = compressed.T_out;
  const rho_2 = trace.use(density, { p: p_2, R_m: R_1, T: T_2 }, "compressor outlet");
  const before = { compressed, p_1, p_2, T_2, R_1, rho_0, rho_1, rho_2 };

  if (cooler.kind === "none") {
    return { ...before, p_3: p_2, T_3: T_2, w_3: w, R_3: R_1, rho_3: rho_2, P: undefined };
  }
  const { p_3, T_3, P } = cool(cooler, { p_2, T_2 }, trace);
  if (p_3 <= 0) return { ...before, p_3, T_3, w_3: w, R_3: R_1, rho_3: 0, P };
  const w_3 = keptHumidity({ T: T_3, p: p_3, w }, trace, "after the cooler, saturated");
  const R_3 = w_3 === w ? R_1 : trace.use(gasConstant, { w: w_3 }, "after the cooler");
  const rho_3 = trace.use(density, { p: p_3, R_m: R_3, T: T_3 }, "after the cooler");
  return { ...before, p_3, T_3, w_3, R_3, rho_3, P };
}

function check(site: Site, path: Path): void {
  const { cooler } = site;
  if (cooler.kind === "none") return;
  refuse(
    path.p_3 <= 0,
    "Delta_p_23",
    "The loss of the cooler leaves no pressure behind it. It has to be below the pressure before the cooler.",
    { value: path.p_2, kind: "pressureDifference" },
  );
  refuse(
    cooler.kind === "temperature" && cooler.T_3 > path.T_2,
    "T_3",
    "The cooler outlet is hotter than the air that enters it. It has to be at or below the compressor outlet temperature.",
    { value: path.T_2, kind: "temperature" },
  );
}

type Wish =
  | { readonly kind: "ratio"; readonly r: SI }
  | { readonly kind: "density"; readonly rho: SI }
  | { readonly kind: "power"; readonly W_e: SI; readonly m_f: SI; readonly m_da: SI; readonly rho_da: SI };

function wanted(given: ChargePathGiven, engine: ReturnType<typeof acceptEngine>, trace: Trace): Wish {
  switch (given.wanted) {
    case "ratio": {
      const bounds = { kind: "ratio", atLeast: LOWEST_RATIO, atMost: HIGHEST_RATIO } as const;
      return { kind: "ratio", r: accept("r", "The pressure ratio", given.r, bounds) };
    }
    case "density": {
      const bounds = { kind: "density", above: 0, atMost: 100 } as const;
      return { kind: "density", rho: accept("rho_3", "The wanted density", given.rho_3, bounds) };
    }
    case "power": {
      const W_e = accept("W_e", "The wanted power", given.W_e, { kind: "power", above: 0, atMost: 1e8 });
      const { b, lambda, AFR_st } = acceptFuel(given);
      const m_f = trace.use(fuelFlow, { b, W_e }, "engine");
      const m_da = trace.use(dryAirFromFuel, { lambda, AFR_st, m_f }, "engine");
      return { kind: "power", W_e, m_f, m_da, rho_da: neededDensity.compute({ m_a: m_da, ...engine }) };
    }
  }
}

/** The pressure ratio that fulfils the wish; a DomainError names the wish and what can be had when none does. */
function findRatio(site: Site, wish: Exclude<Wish, { kind: "ratio" }>, trace: Trace): SI {
  const aim = wish.kind === "density" ? wish.rho : wish.rho_da;
  const had = (r: SI) => {
    const { rho_3, w_3 } = follow(site, r, plain);
    return wish.kind === "density" ? rho_3 : rho_3 / (1 + w_3);
  };
  const bound = (density: SI): Limit =>
    wish.kind === "density"
      ? { value: density, kind: "density" }
      : { value: (wish.W_e * density) / aim, kind: "power" };
  const [field, what] =
    wish.kind === "density" ? ["rho_3", "The wanted density"] : ["W_e", "The wanted power"];

  const least = had(LOWEST_RATIO);
  if (least > aim) {
    throw new DomainError(
      field,
      `${what} would need a pressure ratio below ${LOWEST_RATIO}, which is a throttle and not a compressor. A compressor that does nothing already gives the bound, and the wish may be as low as that.`,
      bound(least),
    );
  }
  const most = had(HIGHEST_RATIO);
  if (most < aim) {
    throw new DomainError(
      field,
      `${what} would need a pressure ratio above ${HIGHEST_RATIO}, where this search ends; one compressor does not reach it. At a ratio of ${HIGHEST_RATIO} this path gives the bound, and the wish may be as high as that.`,
      bound(most),
    );
  }
  const r = bracketedRoot((x) => had(x) - aim, LOWEST_RATIO, HIGHEST_RATIO, { tolerance: 1e-12 });
  trace.note({
    about: "r",
    says: `The pressure ratio was found by search: the whole path was computed for trial ratios from ${LOWEST_RATIO} to ${HIGHEST_RATIO} until the air at the engine met the wish. The working shows the last pass.`,
  });
  return r;
}

function heats(
  flow: { readonly m_1: SI; readonly m_da: SI; readonly w: SI; readonly path: Path },
  trace: Trace,
  site: Site,
) {
  const { m_1, m_da, w, path } = flow;
  if (site.cooler.kind === "none") return { Q: 0, Q_s: 0, Q_l: 0, m_c: 0 };
  const { T_2, T_3, w_3 } = path;
  const { c_p, h_out: h_2 } = path.compressed;
  const Q_s =
    c_p === undefined
      ? trace.use(
          sensibleDuty,
          {
            m_a: m_1,
            h_in: h_2 ?? trace.use(enthalpy, { T: T_2, w }, "before the cooler"),
            h_out: trace.use(enthalpy, { T: T_3, w }, "after the cooler, all vapour carried along"),
          },
          "cooler",
        )
      : trace.use(constantSensibleDuty, { m_a: m_1, c_p, T_in: T_2, T_out: T_3 }, "cooler");
  if (w_3 === w) return { Q: Q_s, Q_s, Q_l: 0, m_c: 0 };
  const m_c = trace.use(condensateFlow, { m_da, w_in: w, w_out: w_3 }, "cooler");
  const h_fg = trace.use(latentHeat, { T: T_3 }, "cooler");
  const Q_l = trace.use(latentDuty, { m_c, h_fg }, "cooler");
  return { Q: trace.use(duty, { Q_s, Q_l }, "cooler"), Q_s, Q_l, m_c };
}

function dewPointOfCharge(
  charge: { readonly w: SI; readonly p: SI },
  trace: Trace,
  where: string,
): SI | undefined {
  const p_v = trace.use(vapourPressureFromHumidityRatio, charge, where);
  return dewPointAtPressure({ p_v, p: charge.p }, trace, "charge at its own pressure");
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

function remark(
  done: { readonly site: Site; readonly path: Path; readonly p_g: SI; readonly m_c: SI },
  trace: Trace,
): void {
  const { site, path, p_g, m_c } = done;
  const { isCooled } = placesOf(site.cooler);
  noteRealGas({ p: path.p_2, T: path.T_2 }, "rho_2", trace);
  if (isCooled) noteRealGas({ p: path.p_3, T: path.T_3 }, "rho_3", trace);
  if (p_g < 0) {
    trace.note({
      about: "p_3",
      says: `The pressure ${isCooled ? "after the cooler" : "in the manifold"} is below the barometer: the losses take more than the compressor gives.`,
    });
  }
  if (site.cooler.kind === "effectiveness" && site.cooler.T_w_in > path.T_2) {
    trace.note({ about: "T_w_in", says: "The water is hotter than the charge, so it heats the air." });
  }
  if (m_c > 0) {
    trace.note({
      about: "m_c",
      says: "Water condenses: the air after the cooler is saturated. Cold tube walls make more than this mean state says.",
    });
  }
}
