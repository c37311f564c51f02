import type { Choice, Field } from "../engine/calculator.ts";

/** How the humidity of the ambient air is known, and the field for each way. */
export const humidityInputs = {
  humidity: {
    label: "Humidity of the ambient air",
    options: {
      dry: "leave it out: dry air",
      relative: "relative humidity",
      "dew-point": "dew point",
      "wet-bulb": "wet-bulb temperature",
    },
    start: "dry",
    help: "",
  },
  varphi_0: {
    label: "Relative humidity",
    symbol: "varphi_0",
    kind: "fraction",
    start: 0.5,
    limits: [0, 1],
    help: "Read at the same place as the ambient temperature.",
    when: { humidity: ["relative"] },
  },
  T_dp_0: {
    label: "Dew point",
    symbol: "T_dp_0",
    kind: "temperature",
    start: 285.15,
    limits: [223.15, 333.15],
    help: "",
    when: { humidity: ["dew-point"] },
  },
  T_wb_0: {
    label: "Wet-bulb temperature",
    symbol: "T_wb_0",
    kind: "temperature",
    start: 291.15,
    limits: [243.15, 333.15],
    help: "Wick wetted, air moving past it.",
    when: { humidity: ["wet-bulb"] },
  },
} as const satisfies Record<string, Field | Choice>;
