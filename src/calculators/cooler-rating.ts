import { rateCooler } from "../../calc/exchanger/rate-cooler.ts";
import { type Calculator, defineCalculator } from "./engine/calculator.ts";
import { chargeInputs } from "./parts/charge.ts";
import {
  arrangementFrom,
  arrangementInputs,
  besideOthers,
  boilingResult,
  coolantInputs,
  coolerResults,
  fieldCores,
  waterFlowInputs,
} from "./parts/exchanger.ts";
import { boilingRelations, ratingRelations } from "./parts/exchanger-relations.ts";

export default defineCalculator({
  id: "cooler-rating",
  title: "Cooler rating",
  group: "Cooling",
  asks: "What does this cooler make of the charge and its water?",
  inputs: {
    ...arrangementInputs,
    UA: {
      label: "Heat conductance",
      symbol: "UA",
      kind: "conductance",
      start: 560,
      limits: [1, 1_000_000],
      typical: [50, 20_000],
      help: "From readings, a data sheet or drawings, at these flows.",
    },
    ...chargeInputs,
    ...coolantInputs,
    ...waterFlowInputs,
  },
  results: {
    T_3: { label: "Air after the cooler", symbol: "T_3", kind: "temperature" },
    T_w_out: { label: "Water outlet", symbol: "T_w_out", kind: "temperature" },
    Q: { label: "Duty", symbol: "Q", kind: "heatFlow" },
    ...coolerResults,
    Delta_T_sat: boilingResult,
    UA_most: { label: "Best size", symbol: "UA", kind: "conductance", inPicture: true },
  },
  relations: [...ratingRelations, ...boilingRelations],
  model: (given, trace) => {
    const arrangement = arrangementFrom(given);
    return rateCooler(
      { ...given, arrangement } as unknown as Parameters<typeof rateCooler>[0],
      trace,
    ) as unknown as ReturnType<Calculator["model"]>;
  },
  pictures: [
    {
      draw: "field",
      when: { core: fieldCores },
      arrangement: arrangementFrom,
      NTU: "NTU",
      R: "R",
      hot: "T_2",
      cold: "T_w_in",
      airOut: "T_3",
      waterOut: "T_w_out",
      title: "Temperatures inside, with the air from left to right.",
    },
  ],
  also: [
    ...besideOthers({
      vary: "UA",
      span: [200, 2000],
      x: "UA",
      y: "T_3",
      best: { at: "UA_most", label: "best size" },
      title: "Air after the cooler against the size of the cooler. The ring is the state above.",
    }),
  ],
});
