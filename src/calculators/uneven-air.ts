import { coolerOutletTemperature } from "../../calc/exchanger/cooler-outlet-temperature.ts";
import { temperatureChange } from "../../calc/exchanger/temperature-change.ts";
import { unevenCapacityRatio } from "../../calc/exchanger/uneven-capacity-ratio.ts";
import { unevenFlow } from "../../calc/exchanger/uneven-flow.ts";
import { unevenHalves } from "../../calc/exchanger/uneven-halves.ts";
import { unevenLastHalf } from "../../calc/exchanger/uneven-last-half.ts";
import { unevenLastThird } from "../../calc/exchanger/uneven-last-third.ts";
import { unevenLossHalves } from "../../calc/exchanger/uneven-loss-halves.ts";
import { unevenLossThirds } from "../../calc/exchanger/uneven-loss-thirds.ts";
import { unevenThirds } from "../../calc/exchanger/uneven-thirds.ts";
import { unevenTransferUnits } from "../../calc/exchanger/uneven-transfer-units.ts";
import { maskingLossFactor } from "../../calc/flow/masking-loss-factor.ts";
import { maskingSpeed } from "../../calc/flow/masking-speed.ts";
import { type Calculator, type ChartPicture, defineCalculator } from "./engine/calculator.ts";
import { chargeInputs } from "./parts/charge.ts";
import { blockedShareField, lossExponentField } from "./parts/core.ts";
import { arrangementFrom, arrangementInputs, coolantInputs, coreInputs } from "./parts/exchanger.ts";
import { effectivenessRelations } from "./parts/exchanger-relations.ts";

const masked = { wrong: ["masked"] } as const;
const unequal = { wrong: ["halves", "thirds"] } as const;
const thirds = { wrong: ["thirds"] } as const;

const chart = {
  draw: "chart",
  y: "T_3_u",
  curves: [{ label: "as it is" }, { label: "clean and even", dash: "ideal", y: "T_3" }],
} as const satisfies Partial<ChartPicture<string, string>>;

export default defineCalculator({
  id: "uneven-air",
  title: "Masked or uneven face",
  group: "Cooling",
  asks: "What does it cost when part of the face is blocked, or gets more air than the rest?",
  inputs: {
    wrong: {
      label: "What is wrong",
      options: {
        masked: "part of the face is blocked",
        halves: "one half gets more air than the other",
        thirds: "three thirds get unequal air",
      },
      start: "masked",
      help: "",
    },
    x_b: { ...blockedShareField, start: 0.2, when: masked },
    omega_1: {
      label: "Air through the first part, over its even share",
      symbol: "omega_1",
      kind: "ratio",
      start: 1.2,
      limits: [0.05, 2.9],
      typical: [0.5, 1.5],
      help: "1 is even, 1.2 is a fifth more.",
      when: unequal,
    },
    omega_2: {
      label: "Air through the second part, over its even share",
      symbol: "omega_2",
      kind: "ratio",
      start: 1,
      limits: [0.05, 2.9],
      typical: [0.5, 1.5],
      help: "The last third gets what is left.",
      when: thirds,
    },
    ...arrangementInputs,
    NTU: {
      ...coreInputs.NTU,
      start: 1.58,
      limits: [0.01, 50],
      help: "Of the whole cooler with a clean face and even air.",
    },
    R: { ...coreInputs.R, start: 0.094, help: "" },
    s_a: {
      label: "Share of the air side in the resistance to heat",
      symbol: "s_a",
      kind: "fraction",
      start: 0.46,
      limits: [0, 1],
      typical: [0.3, 0.95],
      help: "The rest lies in wall, water and deposits, and does not change with the air.",
    },
    n_h: {
      label: "Exponent of the air side over the flow",
      symbol: "n_h",
      kind: "ratio",
      start: 0.5,
      limits: [0, 1],
      typical: [0.3, 0.8],
      help: "How the conductance of the air side grows with the speed.",
    },
    n_p: lossExponentField,
    T_2: chargeInputs.T_2,
    T_w_in: coolantInputs.T_w_in,
  },
  results: {
    T_3_u: { label: "Air after the cooler, as it is", symbol: "T_3", kind: "temperature" },
    Delta_T: { label: "Warmer by", symbol: "Delta_T", kind: "temperatureDifference" },
    T_3: { label: "Air after the cooler, clean and even", symbol: "T_3", kind: "temperature" },
    P_u: { label: "Effectiveness, as it is", symbol: "P_u", kind: "fraction" },
    P: { label: "Effectiveness, clean and even", symbol: "P", kind: "fraction" },
    Phi: { label: "Pressure loss over the clean and even one", symbol: "Phi", kind: "ratio" },
  },
  relations: [
    ...effectivenessRelations,
    coolerOutletTemperature,
    temperatureChange,
    unevenTransferUnits,
    unevenCapacityRatio,
    unevenLastHalf,
    unevenLastThird,
    unevenHalves,
    unevenThirds,
    unevenLossHalves,
    unevenLossThirds,
    maskingSpeed,
    maskingLossFactor,
  ],
  model: (given, trace) =>
    unevenFlow(
      { ...given, arrangement: arrangementFrom(given) } as unknown as Parameters<typeof unevenFlow>[0],
      trace,
    ) as unknown as ReturnType<Calculator["model"]>,
  pictures: [
    {
      ...chart,
      when: masked,
      vary: "x_b",
      span: [0, 0.6],
      x: "x_b",
      title: "Air after the cooler against the share of the face that is blocked.",
    },
    {
      ...chart,
      vary: "omega_1",
      span: [0.4, 1.6],
      x: "omega_1",
      title: "Air after the cooler against the flow through the first part, over its even share.",
    },
  ],
});
