import type { Field } from "../engine/calculator.ts";

/** The air on both sides of a cooler's loss. */
export const lossInputs = {
  p_2: {
    label: "Pressure before the cooler",
    symbol: "p_2",
    kind: "pressure",
    start: 260_000,
    limits: [10_000, 2_000_000],
    typical: [80_000, 600_000],
    help: "A gauge reading is entered with a unit that says gauge.",
  },
  T_3: {
    label: "Air temperature after the cooler",
    symbol: "T_3",
    kind: "temperature",
    start: 331.95,
    limits: [223.15, 773.15],
    typical: [273.15, 373.15],
    help: "",
  },
} as const satisfies Record<string, Field>;

/** Tape, leaves and dust. */
export const blockedShareField = {
  label: "Blocked share of the face",
  symbol: "x_b",
  kind: "fraction",
  start: 0,
  limits: [0, 0.9],
  typical: [0, 0.5],
  help: "The same air goes through the rest.",
} as const satisfies Field;

/** How the loss grows with the flow. */
export const lossExponentField = {
  label: "Exponent of the loss over the flow",
  symbol: "n_p",
  kind: "ratio",
  start: 1.8,
  limits: [1, 2],
  typical: [1.4, 1.95],
  help: "Common practice: 1.7 to 1.9 for a core with its headers, 1.4 to 1.7 for strip fins alone.",
} as const satisfies Field;
