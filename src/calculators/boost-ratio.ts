import { absolutePressure } from "../../calc/atmosphere/absolute-pressure.ts";
import { gaugePressure } from "../../calc/atmosphere/gauge-pressure.ts";
import { boostRatio } from "../../calc/compression/boost-ratio.ts";
import { outletPressure } from "../../calc/compression/outlet-pressure.ts";
import { pressureRatio } from "../../calc/compression/pressure-ratio.ts";
import { pressureAfterLoss } from "../../calc/flow/pressure-after-loss.ts";
import { pressureBeforeLoss } from "../../calc/flow/pressure-before-loss.ts";
import { barometerField } from "./engine/barometer.ts";
import { type Calculator, defineCalculator } from "./engine/calculator.ts";
import { inletLossField } from "./parts/ambient.ts";
import { pressureRatioField } from "./parts/compressor.ts";
import { coolerInputs } from "./parts/cooler.ts";

const ratio = { find: ["ratio"] } as const;
const boost = { find: ["boost"] } as const;

export default defineCalculator({
  id: "boost-ratio",
  title: "Boost and pressure ratio",
  group: "Compression",
  asks: "What pressure ratio is this boost, and what boost is this ratio?",
  inputs: {
    find: {
      label: "What is looked for",
      options: { ratio: "the pressure ratio", boost: "the boost on the gauge" },
      start: "ratio",
      help: "",
    },
    p_g: {
      label: "Boost on the gauge",
      symbol: "p_g",
      kind: "gaugePressure",
      start: 120_000,
      limits: [-20_000, 1_500_000],
      typical: [0, 400_000],
      help: "",
      when: ratio,
    },
    r: { ...pressureRatioField, when: boost },
    p_0: barometerField,
    Delta_p_01: inletLossField,
    at: {
      label: "Where the gauge is",
      options: { outlet: "at the compressor outlet", cooler: "after the cooler" },
      start: "outlet",
      help: "",
    },
    Delta_p_23: { ...coolerInputs.Delta_p_23, when: { at: ["cooler"] } },
  },
  results: {
    r_found: { label: "Pressure ratio", symbol: "r", kind: "ratio", when: ratio },
    p_g_found: { label: "Boost on the gauge", symbol: "p_g", kind: "gaugePressure", when: boost },
    p_1: { label: "Compressor inlet, absolute", symbol: "p_1", kind: "pressure" },
    p_2: { label: "Compressor outlet, absolute", symbol: "p_2", kind: "pressure" },
  },
  relations: [
    pressureAfterLoss,
    absolutePressure,
    pressureBeforeLoss,
    pressureRatio,
    outletPressure,
    gaugePressure,
  ],
  model: (given, trace) => {
    const found = boostRatio(given as unknown as Parameters<typeof boostRatio>[0], trace);
    return { ...found, r_found: found.r, p_g_found: found.p_g } as unknown as ReturnType<Calculator["model"]>;
  },
  pictures: [
    {
      draw: "chart",
      when: ratio,
      vary: "p_g",
      span: [0, 300_000],
      x: "p_g",
      y: "r_found",
      curves: [{ label: "" }],
      title: "Pressure ratio against the boost, at this barometer and these losses.",
    },
    {
      draw: "chart",
      when: boost,
      vary: "r",
      span: [1, 4],
      x: "r",
      y: "p_g_found",
      curves: [{ label: "" }],
      title: "Boost on the gauge against the pressure ratio, at this barometer and these losses.",
    },
  ],
});
