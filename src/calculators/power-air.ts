import { dryAirFromFuel } from "../../calc/engine/dry-air-from-fuel.ts";
import { fuelFlow } from "../../calc/engine/fuel-flow.ts";
import { powerAir } from "../../calc/engine/power-air.ts";
import { type Calculator, defineCalculator } from "./engine/calculator.ts";
import { combustionInputs } from "./parts/engine.ts";
import { powerRelations } from "./parts/relations.ts";

const air = { find: ["air"] } as const;
const power = { find: ["power"] } as const;

export default defineCalculator({
  id: "power-air",
  title: "Power and air",
  group: "Engine",
  asks: "How much air does this power take, and what power does this air carry?",
  inputs: {
    find: {
      label: "What is looked for",
      options: { air: "the air for a power", power: "the power of an air flow" },
      start: "air",
      help: "",
    },
    W_e: {
      label: "Power at the crankshaft",
      symbol: "W_e",
      kind: "power",
      start: 235_000,
      limits: [100, 100_000_000],
      typical: [2000, 10_000_000],
      help: "Not at the wheels.",
      when: air,
    },
    m_da: {
      label: "Air flow, dry",
      symbol: "m_da",
      kind: "massFlow",
      start: 0.243,
      limits: [1e-5, 1000],
      typical: [0.01, 20],
      help: "",
      when: power,
    },
    b: { ...combustionInputs.b, start: 300 / 3.6e9 },
    lambda: { ...combustionInputs.lambda, start: 0.85 },
    AFR_st: { ...combustionInputs.AFR_st, start: 14.6 },
  },
  results: {
    m_found: { label: "Air flow, dry", symbol: "m_da", kind: "massFlow", when: air },
    W_found: { label: "Power at the crankshaft", symbol: "W_e", kind: "power", when: power },
    m_f: { label: "Fuel flow", symbol: "m_f", kind: "massFlow" },
  },
  relations: [fuelFlow, dryAirFromFuel, ...powerRelations],
  model: (given, trace) => {
    const found = powerAir(given as unknown as Parameters<typeof powerAir>[0], trace);
    return { m_found: found.m_da, W_found: found.W_e, m_f: found.m_f } as ReturnType<Calculator["model"]>;
  },
  pictures: [
    {
      draw: "chart",
      when: air,
      vary: "lambda",
      span: [0.7, 2.5],
      x: "lambda",
      y: "m_found",
      curves: [{ label: "" }],
      title: "Air for this power against the mixture: a leaner engine needs more air for the same power.",
    },
    {
      draw: "chart",
      when: power,
      vary: "lambda",
      span: [0.7, 2.5],
      x: "lambda",
      y: "W_found",
      curves: [{ label: "" }],
      title: "Power of this air against the mixture, at one and the same fuel consumption.",
    },
  ],
});
