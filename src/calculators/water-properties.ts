import { waterState } from "../../calc/fluids/water/water.ts";
import { type Calculator, defineCalculator } from "./engine/calculator.ts";
import { waterRelations } from "./parts/relations.ts";

export default defineCalculator({
  id: "water-properties",
  title: "Water properties",
  group: "Water",
  asks: "What does water weigh, carry and resist at this temperature, and how far is it from boiling?",
  inputs: {
    T: {
      label: "Water temperature",
      symbol: "T",
      kind: "temperature",
      start: 343.15,
      limits: [273.15, 623.15],
      typical: [273.15, 383.15],
      help: "",
    },
    p: {
      label: "Water pressure",
      symbol: "p",
      kind: "pressure",
      start: 180_000,
      limits: [1000, 16_500_000],
      typical: [50_000, 1_000_000],
      help: "Where the water is hottest. A gauge reading is entered with a unit that says gauge.",
    },
  },
  results: {
    Delta_T_sat: { label: "Margin to boiling", symbol: "Delta_T_sat", kind: "temperatureDifference" },
    T_sat: { label: "It boils at", symbol: "T_sat", kind: "temperature" },
    rho: { label: "Density", symbol: "rho", kind: "density" },
    c_p: { label: "Heat capacity", symbol: "c_p", kind: "specificHeat" },
    mu: { label: "Viscosity", symbol: "mu", kind: "viscosity" },
    k: { label: "Thermal conductivity", symbol: "k", kind: "conductivity" },
    h_fg: { label: "Heat to boil a kilogram away", symbol: "h_fg", kind: "specificEnergy" },
    h: { label: "Enthalpy, from the triple point", symbol: "h", kind: "specificEnergy" },
    s: { label: "Entropy, from the triple point", symbol: "s", kind: "specificHeat" },
    a: { label: "Speed of sound", symbol: "a", kind: "speed" },
    T_here: { label: "Temperature", symbol: "T", kind: "temperature", inPicture: true },
  },
  relations: waterRelations,
  model: (given, trace) => {
    const state = waterState(given as unknown as Parameters<typeof waterState>[0], trace);
    return { ...state, T_here: given.T } as unknown as ReturnType<Calculator["model"]>;
  },
  pictures: [
    {
      draw: "chart",
      vary: "p",
      span: [20_000, 600_000],
      x: "p",
      y: "T_here",
      // Cold, so that the curve is drawn below the pressure at which the water at hand would boil too.
      curves: [{ label: "it boils here", y: "T_sat", with: { T: 273.15 } }],
      title: "Boiling temperature against pressure. The ring is the water above.",
    },
  ],
});
