import { glycolConductivities, glycolHeatCapacities, glycolViscosities } from "../fluids/glycol/glycol.ts";
import { seawaterConductivity } from "../fluids/seawater-conductivity.ts";
import { seawaterHeatCapacity } from "../fluids/seawater-heat-capacity.ts";
import { seawaterViscosity } from "../fluids/seawater-viscosity.ts";
import { liquidConductivity, liquidViscosity, waterHeatCapacity } from "../fluids/water/water.ts";
import { accept } from "../quantity/accept.ts";
import type { SI } from "../quantity/domain-error.ts";
import type { Trace } from "../relation/trace.ts";
import { type Coolant, type CoolantGiven, densityIn, LIQUID_ENDS } from "./coolant.ts";

/** kg/m³, J/(kg K), Pa s, W/(m K). */
export interface FilmProperties {
  readonly rho: SI;
  readonly c_p: SI;
  readonly mu: SI;
  readonly k: SI;
}

/**
 * What a coolant's film depends on, at its mean temperature T in K, or another that `at` names. Throws a DomainError that names what a stated liquid lacks:
 * rho_w, mu_w or k_w.
 */
export function filmProperties(
  given: CoolantGiven,
  coolant: Coolant,
  T: SI,
  trace: Trace,
  at = "at its mean temperature",
): FilmProperties {
  switch (coolant.kind) {
    case "stated":
      return {
        rho: densityIn(given, coolant, T, trace, at),
        c_p: coolant.c,
        mu: accept("mu_w", "The viscosity of the liquid", given.mu_w, {
          kind: "viscosity",
          atLeast: 1e-5,
          atMost: 100,
        }),
        k: accept("k_w", "The thermal conductivity of the liquid", given.k_w, {
          kind: "conductivity",
          atLeast: 0.01,
          atMost: 100,
        }),
      };
    case "water": {
      const state = { T: Math.min(T, LIQUID_ENDS), p: coolant.p_w };
      const where = `water, ${at}`;
      return {
        rho: densityIn(given, coolant, state.T, trace, at),
        c_p: waterHeatCapacity(state, trace, where),
        mu: liquidViscosity(state, trace, where),
        k: liquidConductivity(state, trace, where),
      };
    }
    case "seawater": {
      const { S } = coolant;
      const where = `seawater, ${at}`;
      return {
        rho: densityIn(given, coolant, T, trace, at),
        c_p: trace.use(seawaterHeatCapacity, { T, S }, where),
        mu: trace.use(seawaterViscosity, { T, S }, where),
        k: trace.use(seawaterConductivity, { T, S }, where),
      };
    }
    default: {
      const { kind, x_g } = coolant;
      const where = `coolant, ${at}`;
      return {
        rho: densityIn(given, coolant, T, trace, at),
        c_p: trace.use(glycolHeatCapacities[kind], { T, x_g }, where),
        mu: trace.use(glycolViscosities[kind], { T, x_g }, where),
        k: trace.use(glycolConductivities[kind], { T, x_g }, where),
      };
    }
  }
}
