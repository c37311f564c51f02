import { accept } from "../quantity/accept.ts";
import type { SI } from "../quantity/domain-error.ts";

export type Cycle = "four-stroke" | "two-stroke";

/** Crankshaft revolutions in one cycle. */
export const revolutionsPerCycle = { "four-stroke": 2, "two-stroke": 1 } as const satisfies Record<
  Cycle,
  number
>;

/** Size and speed of an engine: m³, rev/s. */
export interface SizeGiven {
  readonly V_d?: SI | undefined;
  readonly n?: SI | undefined;
  readonly cycle?: Cycle | undefined;
}

/** The slowest and the fastest that an engine turns here, rev/s. */
export const SPEEDS = { atLeast: 0.01, atMost: 1000 } as const;

/** Displacement 1e-6 to 30 m³, speed 0.01 to 1000 rev/s, and the revolutions in a cycle. */
export function acceptSize(given: SizeGiven) {
  return {
    V_d: accept("V_d", "The displacement", given.V_d, { kind: "volume", atLeast: 1e-6, atMost: 30 }),
    n: accept("n", "The engine speed", given.n, { kind: "rotationalSpeed", ...SPEEDS }),
    n_R: revolutionsPerCycle[given.cycle ?? "four-stroke"],
  };
}

/** Engine that breathes: m³, rev/s, 0 to 2. */
export interface EngineGiven extends SizeGiven {
  readonly eta_v?: SI | undefined;
}

/** What engines commonly have, referred to the air in the manifold. Common practice, no source. */
export const USUAL_FILLING = [0.75, 1.1] as const;

/** The engine's data, checked: its size, and the efficiency 0.01 to 2. */
export function acceptEngine(given: EngineGiven) {
  return {
    ...acceptSize(given),
    eta_v: accept("eta_v", "The volumetric efficiency", given.eta_v, {
      kind: "fraction",
      atLeast: 0.01,
      atMost: 2,
    }),
  };
}

/** Air over the air that the fuel needs, and that over the fuel. */
export interface MixtureGiven {
  readonly lambda?: SI | undefined;
  readonly AFR_st?: SI | undefined;
}

/** Fuel and mixture: kg/J and two ratios. */
export interface FuelGiven extends MixtureGiven {
  readonly b?: SI | undefined;
}

/** Specific fuel above 0 to 3600 g/kWh, and the mixture; all checked. */
export const acceptFuel = (given: FuelGiven) => ({
  b: accept("b", "The brake specific fuel consumption", given.b, {
    kind: "specificFuel",
    above: 0,
    atMost: 1e-6,
  }),
  ...acceptMixture(given),
});

/** Relative air-fuel ratio 0.3 to 20 and stoichiometric ratio 1 to 40, both checked. */
export function acceptMixture(given: MixtureGiven) {
  return {
    lambda: accept("lambda", "The relative air-fuel ratio", given.lambda, {
      kind: "ratio",
      atLeast: 0.3,
      atMost: 20,
    }),
    AFR_st: accept("AFR_st", "The stoichiometric air-fuel ratio", given.AFR_st, {
      kind: "ratio",
      atLeast: 1,
      atMost: 40,
    }),
  };
}
