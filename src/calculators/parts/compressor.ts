import type { Choice, Field } from "../engine/calculator.ts";

/** What the compressor does to the pressure. */
export const pressureRatioField = {
  label: "Pressure ratio",
  symbol: "r",
  kind: "ratio",
  start: 2.2,
  limits: [1, 10],
  typical: [1, 4],
  help: "Outlet over inlet, both absolute. It is not the boost on the gauge.",
} as const satisfies Field;

/** How good the compressor is, and which heat capacity of air its working uses. */
export const compressorInputs = {
  efficiency: {
    label: "Compressor efficiency given as",
    options: { isentropic: "isentropic efficiency", polytropic: "polytropic efficiency" },
    start: "isentropic",
    help: "",
  },
  eta_s: {
    label: "Isentropic efficiency",
    symbol: "eta_s",
    kind: "fraction",
    start: 0.74,
    limits: [0.2, 1],
    typical: [0.45, 0.82],
    help: "Total to total, from the compressor's map at this flow.",
    when: { efficiency: ["isentropic"] },
  },
  eta_p: {
    label: "Polytropic efficiency",
    symbol: "eta_p",
    kind: "fraction",
    start: 0.77,
    limits: [0.25, 1],
    typical: [0.5, 0.86],
    help: "",
    when: { efficiency: ["polytropic"] },
  },
  heatCapacity: {
    label: "Heat capacity of the air",
    options: { real: "as it is: it grows with temperature", constant: "constant, with one κ" },
    start: "real",
    help: "",
  },
  kappa: {
    label: "Heat-capacity ratio",
    symbol: "kappa",
    kind: "ratio",
    start: 1.4,
    limits: [1.2, 1.67],
    typical: [1.38, 1.402],
    help: "",
    when: { heatCapacity: ["constant"] },
  },
} as const satisfies Record<string, Field | Choice>;
