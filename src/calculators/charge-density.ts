import { chargeDensity } from "../../calc/charge/charge-density.ts";
import { pressureAfterLoss } from "../../calc/flow/pressure-after-loss.ts";
import { type Calculator, defineCalculator } from "./engine/calculator.ts";
import { compressorInputs, pressureRatioField } from "./parts/compressor.ts";
import { coolerInputs } from "./parts/cooler.ts";
import { isentropicRelations } from "./parts/relations.ts";

export default defineCalculator({
  id: "charge-density",
  title: "Charge density",
  group: "Compression",
  asks: "What does the charge weigh, against the air that went in?",
  inputs: {
    p_in: {
      label: "Compressor inlet pressure",
      symbol: "p_1",
      kind: "pressure",
      start: 99_000,
      limits: [10_000, 500_000],
      typical: [60_000, 110_000],
      help: "",
    },
    T_in: {
      label: "Compressor inlet temperature",
      symbol: "T_1",
      kind: "temperature",
      start: 298.15,
      limits: [223.15, 373.15],
      typical: [253.15, 333.15],
      help: "",
    },
    r: { ...pressureRatioField, help: "Absolute over absolute. It is not the boost on the gauge." },
    eta_s: { ...compressorInputs.eta_s, when: {}, label: "Compressor efficiency", help: "" },
    T_3: coolerInputs.T_3,
    Delta_p_23: { ...coolerInputs.Delta_p_23, limits: [0, 500_000] },
  },
  results: {
    D_rho: { label: "Density ratio, with the cooler", symbol: "D_rho", kind: "ratio" },
    D_rho_uncooled: { label: "Without a cooler", symbol: "D_rho_uncooled", kind: "ratio" },
    T_2: { label: "Compressor outlet", symbol: "T_2", kind: "temperature" },
    rho_1: { label: "Density at the compressor inlet", symbol: "rho_1", kind: "density" },
    rho_3: { label: "Charge density", symbol: "rho_3", kind: "density" },
    D_rho_cold: { label: "Density ratio if nothing heated it", symbol: "r", kind: "ratio", inPicture: true },
  },
  relations: [...isentropicRelations, pressureAfterLoss],
  model: (given, trace) => {
    const found = chargeDensity(given as unknown as Parameters<typeof chargeDensity>[0], trace);
    return { ...found, D_rho_cold: given.r } as unknown as ReturnType<Calculator["model"]>;
  },
  pictures: [
    {
      draw: "chart",
      vary: "r",
      span: [1, 4],
      x: "r",
      y: "D_rho",
      curves: [
        { label: "with the cooler" },
        { label: "without", dash: "alternative", y: "D_rho_uncooled" },
        { label: "if nothing heated it", dash: "ideal", y: "D_rho_cold" },
      ],
      title: "Density ratio against pressure ratio. The ring is the state above.",
    },
  ],
});
