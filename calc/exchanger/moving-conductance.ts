import { boreArea } from "../flow/bore-area.ts";
import { coreReynolds } from "../flow/core-reynolds.ts";
import { massFlux } from "../flow/mass-flux.ts";
import { accept, refuse } from "../quantity/accept.ts";
import type { SI } from "../quantity/domain-error.ts";
import { plain, type Trace } from "../relation/trace.ts";
import { conductanceAtFlow } from "./conductance-at-flow.ts";
import { conductanceOfResistances } from "./conductance-of-resistances.ts";
import type { FilmProperties } from "./coolant-film.ts";
import { channelArea } from "./film/channel-area.ts";
import { channelDiameter } from "./film/channel-diameter.ts";
import { channelSidesRatio } from "./film/channel-sides-ratio.ts";
import { filmCoefficient } from "./film/film-coefficient.ts";
import { filmConductance } from "./film/film-conductance.ts";
import { foulingResistance } from "./film/fouling-resistance.ts";
import { nusseltOfFlow } from "./film/nusselt-of-flow.ts";
import { passageSpeed } from "./film/passage-speed.ts";
import { passagesArea } from "./film/passages-area.ts";
import { prandtlNumber } from "./film/prandtl-number.ts";
import { rectangularNusselt } from "./film/rectangular-nusselt.ts";
import { wettedSurface } from "./film/wetted-surface.ts";

/**
 * A cooler whose conductance moves with both flows. Air side: W/K at a reference flow in kg/s, and the power of the flow. Wall:
 * K/W. Water side: the same by a power, with dirt in K/W; or from its passages, round ones of bore `d` or rectangular ones of the
 * sides `a_ch` and `b_ch`, `N_ch` of them side by side, each of length `L` in each of `N_p` passes, roughness `k_s`, all in m, with
 * the fouling factor `r_foul` in m² K/W.
 */
export interface MovingGiven {
  readonly UA_a_ref?: SI | undefined;
  readonly m_a_ref?: SI | undefined;
  readonly n_a?: SI | undefined;
  readonly R_wall?: SI | undefined;
  readonly water: "power" | "round" | "rectangular";
  readonly UA_w_ref?: SI | undefined;
  readonly m_w_ref?: SI | undefined;
  readonly n_w?: SI | undefined;
  readonly R_foul?: SI | undefined;
  readonly d?: SI | undefined;
  readonly a_ch?: SI | undefined;
  readonly b_ch?: SI | undefined;
  readonly N_ch?: SI | undefined;
  readonly L?: SI | undefined;
  readonly N_p?: SI | undefined;
  readonly k_s?: SI | undefined;
  readonly r_foul?: SI | undefined;
}

interface PowerLaw {
  readonly UA_ref: SI;
  readonly m_ref: SI;
  readonly n_h: SI;
}

interface Passages {
  readonly D_h: SI;
  readonly A: SI;
  readonly L: SI;
  readonly A_w: SI;
  readonly Nu_d: SI;
  readonly k_s: SI;
}

export interface MovingConductance {
  readonly air: PowerLaw;
  readonly R_wall: SI;
  readonly R_foul: SI;
  readonly water: PowerLaw | Passages;
}

/**
 * W/K, with wall and dirt in K/W; and where the passages are known what flows in them: Reynolds number, speed in m/s, heat transfer in
 * W/(m² K).
 */
export interface Conductances {
  readonly UA: SI;
  readonly UA_a: SI;
  readonly UA_film: SI;
  readonly R_wall: SI;
  readonly R_foul: SI;
  readonly Re?: SI;
  readonly c_w?: SI;
  readonly alpha?: SI;
}

/** A wall of one temperature, in a round tube. */
const ROUND_NUSSELT = 3.66;

const length = (field: string, what: string, value: SI | undefined, atMost: SI): SI =>
  accept(field, what, value, { kind: "length", above: 0, atMost });

const count = (field: string, what: string, value: SI | undefined): SI => {
  const n = accept(field, what, value, { kind: "ratio", atLeast: 1, atMost: 100_000 });
  refuse(!Number.isInteger(n), field, `${what} has to be a whole number.`);
  return n;
};

const powerLaw = (side: string, ids: readonly [string, string, string], given: MovingGiven): PowerLaw => {
  const at = given as unknown as Readonly<Record<string, SI | undefined>>;
  const [UA, m, n] = ids;
  return {
    UA_ref: accept(UA, `The heat conductance of the ${side} side`, at[UA], {
      kind: "conductance",
      above: 0,
      atMost: 1e7,
    }),
    m_ref: accept(m, `The reference flow of the ${side} side`, at[m], {
      kind: "massFlow",
      above: 0,
      atMost: 10_000,
    }),
    n_h: accept(n, `The exponent of the ${side} side`, at[n], { kind: "ratio", atLeast: 0, atMost: 1.5 }),
  };
};

const resistance = (field: string, what: string, value: SI | undefined): SI =>
  accept(field, what, value ?? 0, { kind: "thermalResistance", atLeast: 0, atMost: 10 });

/** Checks the cooler and what follows from its drawing; throws a DomainError that names the field. */
export function acceptMoving(given: MovingGiven, trace: Trace = plain): MovingConductance {
  const air = powerLaw("air", ["UA_a_ref", "m_a_ref", "n_a"], given);
  const R_wall = resistance("R_wall", "The thermal resistance of the wall", given.R_wall);
  if (given.water === "power") {
    const R_foul = resistance("R_foul", "The thermal resistance of dirt", given.R_foul);
    return { air, R_wall, R_foul, water: powerLaw("water", ["UA_w_ref", "m_w_ref", "n_w"], given) };
  }
  const water = acceptPassages(given, trace);
  const r_foul = accept("r_foul", "The fouling factor", given.r_foul ?? 0, {
    kind: "foulingFactor",
    atLeast: 0,
    atMost: 0.1,
  });
  const R_foul = trace.use(foulingResistance, { r_foul, A_w: water.A_w }, "water side");
  return { air, R_wall, R_foul, water };
}

function acceptPassages(given: MovingGiven, trace: Trace): Passages {
  const where = "water side";
  const { D_h, A_ch, Nu_d } = shapeOf(given, trace, where);
  const N_ch = count("N_ch", "The number of passages in a pass", given.N_ch);
  const N_p = count("N_p", "The number of passes", given.N_p);
  const L = length("L", "The length of a passage", given.L, 100);
  const k_s = accept("k_s", "The roughness", given.k_s ?? 0, { kind: "length", atLeast: 0, below: D_h });
  const A = trace.use(passagesArea, { N_ch, A_ch }, where);
  const A_w = trace.use(wettedSurface, { A, L, N_p, D_h }, where);
  return { D_h, A, L, A_w, Nu_d, k_s };
}

function shapeOf(given: MovingGiven, trace: Trace, where: string) {
  if (given.water === "round") {
    const d = length("d", "The bore of the tubes", given.d, 1);
    return { D_h: d, A_ch: trace.use(boreArea, { d }, where), Nu_d: ROUND_NUSSELT };
  }
  const a_ch = length("a_ch", "The long side of the channels", given.a_ch, 10);
  const b_ch = length("b_ch", "The short side of the channels", given.b_ch, 10);
  refuse(
    b_ch > a_ch,
    "b_ch",
    "The short side is longer than the long side. It may be as long as the bound.",
    { value: a_ch, kind: "length" },
  );
  const alpha_r = trace.use(channelSidesRatio, { a_ch, b_ch }, where);
  return {
    D_h: trace.use(channelDiameter, { a_ch, b_ch }, where),
    A_ch: trace.use(channelArea, { a_ch, b_ch }, where),
    Nu_d: trace.use(rectangularNusselt, { alpha_r }, where),
  };
}

/**
 * Conductance at flows in kg/s. `film` gives the liquid's properties at its mean temperature, and is asked only where passages
 * are known. An endless water flow, Infinity, has no resistance of its own, unless its exponent is zero.
 *
 * @example
 * conductanceAt(
 *   acceptMoving({ UA_a_ref: 1000, m_a_ref: 0.5, n_a: 0.6, water: "power", UA_w_ref: 2000, m_w_ref: 1, n_w: 0.8 }),
 *   { m_a: 0.5, m_w: 1 },
 *   () => ({ rho: 998, c_p: 4184, mu: 1e-3, k: 0.6 }),
 * ).UA // 666.7 W/K
 */
export function conductanceAt(
  { air, R_wall, R_foul, water }: MovingConductance,
  { m_a, m_w }: { readonly m_a: SI; readonly m_w: SI },
  film: (trace: Trace) => FilmProperties,
  trace: Trace = plain,
): Conductances {
  const UA_a = trace.use(conductanceAtFlow, { ...air, m: m_a }, "air side");
  const wet = "UA_ref" in water ? byPower(water, m_w, trace) : inPassages(water, m_w, film, trace);
  const UA = trace.use(conductanceOfResistances, { UA_a, R_wall, R_foul, UA_film: wet.UA_film }, "cooler");
  return { UA, UA_a, R_wall, R_foul, ...wet };
}

const byPower = (law: PowerLaw, m: SI, trace: Trace) => ({
  UA_film: trace.use(conductanceAtFlow, { ...law, m }, "water side"),
});

function inPassages(water: Passages, m: SI, film: (trace: Trace) => FilmProperties, trace: Trace) {
  if (m === Infinity) return { UA_film: Infinity };
  const where = "water";
  const { D_h, A, A_w } = water;
  const { rho, c_p, mu, k } = film(trace);
  const G = trace.use(massFlux, { m, A }, where);
  const Re = trace.use(coreReynolds, { G, D_h, mu }, where);
  const Pr = trace.use(prandtlNumber, { c_p, mu, k }, where);
  const { Nu } = nusseltOfFlow({ ...water, Re, Pr }, trace);
  const alpha = trace.use(filmCoefficient, { Nu, k, D_h }, where);
  return {
    UA_film: trace.use(filmConductance, { alpha, A_w }, where),
    Re,
    c_w: trace.use(passageSpeed, { G, rho }, where),
    alpha,
  };
}
