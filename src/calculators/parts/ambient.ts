import { barometerField } from "../engine/barometer.ts";
import type { Choice, Field } from "../engine/calculator.ts";
import { humidityInputs } from "./humidity.ts";

/** Ambient air: barometer, temperature and humidity. */
export const ambientInputs = {
  p_0: { ...barometerField, heading: "Ambient air" },
  T_0: {
    label: "Ambient temperature",
    symbol: "T_0",
    kind: "temperature",
    start: 298.15,
    limits: [223.15, 343.15],
    typical: [253.15, 323.15],
    help: "",
  },
  ...humidityInputs,
} as const satisfies Record<string, Field | Choice>;

/** Where the ambient air is not taken as dry. */
export const isMoist = { humidity: ["relative", "dew-point", "wet-bulb"] } as const;

/** Filter and duct before the compressor. */
export const inletLossField = {
  label: "Pressure lost before the compressor",
  symbol: "Delta_p_01",
  kind: "pressureDifference",
  start: 1000,
  limits: [0, 30_000],
  typical: [0, 6000],
  help: "Filter and inlet duct.",
} as const satisfies Field;
