import type { Choice, Field } from "../engine/calculator.ts";
import { chargeInputs } from "./charge.ts";
import { coolerInputs, effectivenessField } from "./cooler.ts";

const ofOutlet = { target: ["outlet"] } as const;
const ofEffectiveness = { target: ["effectiveness"] } as const;
const ofRatio = { target: ["ratio"] } as const;
const ofDensity = { target: ["density"] } as const;

/** The targets that are turned into an outlet temperature. */
export const convertedTargets = { target: ["effectiveness", "ratio", "density"] } as const;

/** What another cooler makes of the charge. */
export const targetInputs = {
  target: {
    label: "What is known of the other cooler",
    options: {
      outlet: "the outlet temperature it makes",
      effectiveness: "its effectiveness, and what cools it",
      ratio: "the density ratio across it",
      density: "the density in the manifold",
    },
    start: "effectiveness",
    help: "",
    heading: "Cooler to stand in for",
  },
  T_3: { ...coolerInputs.T_3, label: "Outlet that it makes", start: 331.15, when: ofOutlet },
  P_t: {
    ...effectivenessField,
    label: "Its effectiveness, on the air",
    symbol: "P_t",
    start: 0.79,
    help: "At this air flow.",
    when: ofEffectiveness,
  },
  T_t_in: {
    label: "What cools it, as it enters",
    symbol: "T_t_in",
    kind: "temperature",
    start: 297.15,
    limits: [223.15, 393.15],
    typical: [253.15, 363.15],
    help: "The day that is to be stood in for: outside air, or its water.",
    when: ofEffectiveness,
  },
  D_rho: {
    label: "Density ratio across it",
    symbol: "D_rho",
    kind: "ratio",
    start: 1.32,
    limits: [0.5, 5],
    typical: [1.05, 1.8],
    help: "Behind it over before it.",
    when: ofRatio,
  },
  p_2: {
    ...chargeInputs.p_2,
    label: "Pressure before the cooler",
    start: 280_000,
    help: "",
    when: ofRatio,
  },
  rho_m: {
    label: "Density in the manifold",
    symbol: "rho_m",
    kind: "density",
    start: 2.8,
    limits: [0.1, 30],
    typical: [0.8, 6],
    help: "",
    when: ofDensity,
  },
  p_m: {
    label: "Pressure in the manifold",
    symbol: "p_m",
    kind: "pressure",
    start: 267_000,
    limits: [10_000, 2_000_000],
    typical: [60_000, 600_000],
    help: "",
    when: ofDensity,
  },
  w: { ...chargeInputs.w, start: 0, when: ofDensity },
  Delta_p_tgt: {
    ...coolerInputs.Delta_p_23,
    label: "Pressure lost in it",
    symbol: "Delta_p_tgt",
    start: 13_200,
    typical: [0, 20_000],
  },
  Delta_p_rig: {
    ...coolerInputs.Delta_p_23,
    label: "Pressure lost on the rig",
    symbol: "Delta_p_rig",
    start: 800,
    help: "In its cooler, at this air flow.",
  },
} as const satisfies Record<string, Field | Choice>;
