import type { Field } from "../engine/calculator.ts";

/** Belt or gears between crankshaft and compressor. */
export const driveEfficiencyField = {
  label: "Efficiency of belt or gears",
  symbol: "eta_b",
  kind: "fraction",
  start: 0.95,
  limits: [0.3, 1],
  typical: [0.9, 0.99],
  help: "Common practice, no source: 0.93 to 0.97.",
} as const satisfies Field;
