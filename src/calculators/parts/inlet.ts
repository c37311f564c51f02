import type { Field } from "../engine/calculator.ts";

/** Air at the inlet of the compressor, or of the first of them. */
export const inletInputs = {
  p_1: {
    label: "Pressure at the compressor inlet",
    symbol: "p_1",
    kind: "pressure",
    start: 98_000,
    limits: [10_000, 1_500_000],
    typical: [60_000, 600_000],
    help: "",
  },
  T_1: {
    label: "Temperature at the compressor inlet",
    symbol: "T_1",
    kind: "temperature",
    start: 298.15,
    limits: [223.15, 473.15],
    typical: [243.15, 393.15],
    help: "",
  },
  w: {
    label: "Humidity ratio of the air",
    symbol: "w",
    kind: "humidityRatio",
    start: 0,
    limits: [0, 0.2],
    typical: [0, 0.04],
    help: "Zero leaves the vapour out.",
  },
} as const satisfies Record<string, Field>;
