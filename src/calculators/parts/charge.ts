import type { Choice, Field } from "../engine/calculator.ts";

/** The charge that enters the cooler. */
export const chargeInputs = {
  m_a: {
    label: "Air flow",
    symbol: "m_a",
    kind: "massFlow",
    start: 0.35,
    limits: [1e-4, 500],
    typical: [0.01, 10],
    help: "",
    heading: "Charge air",
  },
  T_2: {
    label: "Air temperature before the cooler",
    symbol: "T_2",
    kind: "temperature",
    start: 458.15,
    limits: [223.15, 773.15],
    typical: [303.15, 523.15],
    help: "",
  },
  moisture: {
    label: "Humidity of the charge",
    options: { dry: "leave it out: dry air", ratio: "humidity ratio and pressure" },
    start: "dry",
    help: "",
  },
  w: {
    label: "Humidity ratio",
    symbol: "w",
    kind: "humidityRatio",
    start: 0.0125,
    limits: [0, 0.2],
    typical: [0, 0.04],
    help: "As in the ambient air: compression does not change it.",
    when: { moisture: ["ratio"] },
  },
  p_2: {
    label: "Pressure of the charge",
    symbol: "p_2",
    kind: "pressure",
    start: 260_000,
    limits: [10_000, 2_000_000],
    typical: [60_000, 600_000],
    help: "For its dew point.",
    when: { moisture: ["ratio"] },
  },
} as const satisfies Record<string, Field | Choice>;

/** The humidity of any air, left out by most. */
export const moistureInputs = {
  moisture: {
    ...chargeInputs.moisture,
    label: "Humidity of the air",
    options: { dry: "leave it out: dry air", ratio: "humidity ratio" },
  },
  w: chargeInputs.w,
} as const satisfies Record<string, Field | Choice>;
