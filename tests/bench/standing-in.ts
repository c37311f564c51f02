import { airCapacity } from "../../calc/exchanger/air-capacity.ts";
import type { MovingCoolerGiven } from "../../calc/exchanger/moving-cooler.ts";
import { standIn } from "../../calc/exchanger/stand-in.ts";
import { flowOrSide, standInByFlow } from "../../calc/exchanger/stand-in-by-flow.ts";
import { standInByLiquid } from "../../calc/exchanger/stand-in-by-liquid.ts";
import { standInByTempering } from "../../calc/exchanger/stand-in-by-tempering.ts";
import { perSecond } from "./per-second.ts";
import { figure, heading } from "./report.ts";

/** A plate cooler by its drawing, whose water goes from laminar to turbulent. */
const rig: Omit<MovingCoolerGiven, "arrangement"> = {
  m_a: 0.35,
  T_2: 458.15,
  coolant: "water",
  p_w: 2e5,
  UA_a_ref: 1220,
  m_a_ref: 0.35,
  n_a: 0.5,
  R_wall: 3e-6,
  water: "rectangular",
  a_ch: 0.08,
  b_ch: 0.0025,
  N_ch: 15,
  L: 0.2,
  N_p: 2,
  r_foul: 2e-4,
};

/** What a form asks besides. */
const form = {
  target: "outlet",
  known: "rectangular",
  arrangement: "counter-cross-2",
  T_w_in: 295.15,
  m_w_least: 0.05,
  m_w_most: 5,
  m_w: 2,
  T_cold: 281.15,
  Delta_p_t: 9000,
  Delta_p_rig: 700,
} as const;

/** Another target each time, across the range that this cooler makes. */
const target = (i: number) => 322 + 0.4 * (i % 97);

/** Prints how long one point of standing in for another cooler takes (aim: 5 ms). */
export function benchStandingIn(): void {
  heading("standing in for another cooler");
  for (const arrangement of ["counter-cross-2", "counter-cross-2-rows", "counter-cross-2-rows-identical"]) {
    const flow = { ...rig, arrangement, T_w_in: 295.15, m_w_least: 0.05, m_w_most: 5 };
    const bare = perSecond((i) => flowOrSide({ ...flow, T_3: target(i) }));
    const whole = perSecond((i) => standInByFlow({ ...flow, T_3: target(i) }));
    const tempered = perSecond((i) => standInByTempering({ ...rig, arrangement, m_w: 2, T_3: target(i) }));
    const liquid = perSecond((i) =>
      standInByLiquid({
        ...rig,
        arrangement,
        coolant: i % 2 ? "seawater" : "ethylene-glycol",
        S: 0.035,
        x_g: 0.4,
        m_w: 2 + (i % 31) / 10,
        T_w_in: 308.15,
      }),
    );
    const capacity = perSecond((i) =>
      airCapacity({ ...rig, arrangement, T_w_in: 295.15, m_w: 2, T_3: target(i) }),
    );
    figure(`flow for an outlet, ${arrangement}`, 1000 / bare, "ms");
    figure(`the same with its sensitivity, ${arrangement}`, 1000 / whole, "ms");
    figure(`tempered water for an outlet, ${arrangement}`, 1000 / tempered, "ms");
    figure(`fresh water for another liquid, ${arrangement}`, 1000 / liquid, "ms");
    figure(`air that it carries at an outlet, ${arrangement}`, 1000 / capacity, "ms");
  }
  for (const way of ["throttle", "temper", "now"] as const) {
    const given = { ...rig, ...form, way } as const;
    const all = perSecond((i) => standIn({ ...given, T_3: target(i) }));
    figure(`all that a form shows, ${way}`, 1000 / all, "ms");
  }
}
