import type { Field } from "../engine/calculator.ts";

/** A charge cooler known by what comes out of it. */
export const coolerInputs = {
  T_3: {
    label: "Cooler outlet temperature",
    symbol: "T_3",
    kind: "temperature",
    start: 323.15,
    limits: [233.15, 573.15],
    help: "",
  },
  Delta_p_23: {
    label: "Pressure lost in the cooler",
    symbol: "Delta_p_23",
    kind: "pressureDifference",
    start: 6000,
    limits: [0, 200_000],
    typical: [0, 12_000],
    help: "",
  },
} as const satisfies Record<string, Field>;
