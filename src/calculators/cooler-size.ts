import { sizeCooler } from "../../calc/exchanger/size-cooler.ts";
import { type Calculator, defineCalculator } from "./engine/calculator.ts";
import { chargeInputs } from "./parts/charge.ts";
import {
  arrangementFrom,
  arrangementInputs,
  besideOthers,
  boilingResult,
  coolantInputs,
  coolerResults,
  waterFlowInputs,
} from "./parts/exchanger.ts";
import { boilingRelations, sizingRelations } from "./parts/exchanger-relations.ts";

export default defineCalculator({
  id: "cooler-size",
  title: "Cooler size",
  group: "Cooling",
  asks: "How large must the cooler be for a wanted air temperature, and can it be reached at all?",
  inputs: {
    T_3: {
      label: "Wanted air temperature after the cooler",
      symbol: "T_3",
      kind: "temperature",
      start: 323.15,
      limits: [223.15, 773.15],
      help: "",
    },
    ...arrangementInputs,
    ...chargeInputs,
    ...coolantInputs,
    ...waterFlowInputs,
  },
  results: {
    UA: { label: "Heat conductance needed", symbol: "UA", kind: "conductance" },
    T_3_best: { label: "Best that any size reaches", symbol: "T_3", kind: "temperature" },
    T_w_out: { label: "Water outlet", symbol: "T_w_out", kind: "temperature" },
    Q: { label: "Duty", symbol: "Q", kind: "heatFlow" },
    ...coolerResults,
    Delta_T_sat: boilingResult,
  },
  relations: [...sizingRelations, ...boilingRelations],
  model: (given, trace) => {
    const arrangement = arrangementFrom(given);
    return sizeCooler(
      { ...given, arrangement } as unknown as Parameters<typeof sizeCooler>[0],
      trace,
    ) as unknown as ReturnType<Calculator["model"]>;
  },
  pictures: [
    ...besideOthers({
      vary: "T_3",
      span: [298.15, 373.15],
      x: "T_3",
      y: "UA",
      title:
        "Heat conductance needed against the air temperature wanted. A curve ends where no size is enough.",
    }),
  ],
});
