import { airDemand } from "../../calc/engine/air-demand.ts";
import { fuels } from "../../calc/engine/fuels.ts";
import { type Calculator, defineCalculator } from "./engine/calculator.ts";
import { combustionInputs, engineInputs } from "./parts/engine.ts";
import { airRelations, engineRelations, fuelRelations } from "./parts/relations.ts";

const fromPower = { from: ["power"] } as const;
const fromDisplacement = { from: ["displacement"] } as const;

export default defineCalculator({
  id: "air-demand",
  title: "Air demand",
  group: "Engine",
  asks: "How much air does the engine need, from its size and speed or from the power wanted?",
  inputs: {
    from: {
      label: "What the air is worked out from",
      options: { power: "the power wanted", displacement: "displacement and manifold state" },
      start: "power",
      help: "",
    },
    W_e: {
      label: "Wanted power at the crankshaft",
      symbol: "W_e",
      kind: "power",
      start: 235_000,
      limits: [100, 100_000_000],
      help: "At the crankshaft, not at the wheels.",
      when: fromPower,
    },
    b: { ...combustionInputs.b, start: 300 / 3.6e9, when: fromPower },
    lambda: { ...combustionInputs.lambda, start: 0.85, when: fromPower },
    fuel: {
      label: "Fuel",
      options: {
        given: "its air-fuel ratio is known",
        ...Object.fromEntries(Object.entries(fuels).map(([id, fuel]) => [id, fuel.name])),
      },
      start: "given",
      help: "",
      when: fromPower,
    },
    AFR_st: { ...combustionInputs.AFR_st, start: 14.6, when: { ...fromPower, fuel: ["given"] } },
    V_d: { ...engineInputs.V_d, start: 0.002, heading: "Engine" },
    n: { ...engineInputs.n, start: 6500 / 60 },
    cycle: engineInputs.cycle,
    eta_v: { ...engineInputs.eta_v, start: 0.98 },
    p_m: {
      label: "Manifold pressure",
      symbol: "p_m",
      kind: "pressure",
      start: 211_000,
      limits: [10_000, 2_000_000],
      typical: [30_000, 600_000],
      help: "A gauge reading is entered with a unit that says gauge.",
      when: fromDisplacement,
    },
    T_m: {
      label: "Manifold temperature",
      symbol: "T_m",
      kind: "temperature",
      start: 321.15,
      limits: [223.15, 573.15],
      help: "",
      when: fromDisplacement,
    },
    w: {
      label: "Humidity ratio of the air",
      symbol: "w",
      kind: "humidityRatio",
      start: 0,
      limits: [0, 0.2],
      typical: [0, 0.04],
      help: "0 for dry air. Fuel needs the dry part only.",
    },
  },
  results: {
    m_a: { label: "Air flow", symbol: "m_a", kind: "massFlow" },
    m_da: { label: "Dry part of it", symbol: "m_da", kind: "massFlow" },
    rho_m: { label: "Density in the manifold", symbol: "rho_m", kind: "density" },
    m_f: { label: "Fuel flow", symbol: "m_f", kind: "massFlow", when: fromPower },
    AFR_found: { label: "Stoichiometric air-fuel ratio", symbol: "AFR_st", kind: "ratio", when: fromPower },
  },
  relations: [...airRelations, ...engineRelations, ...fuelRelations],
  model: (given, trace) => {
    const found = airDemand(given as unknown as Parameters<typeof airDemand>[0], trace);
    return { ...found, AFR_found: found.AFR_st } as unknown as ReturnType<Calculator["model"]>;
  },
  pictures: [
    {
      draw: "chart",
      when: fromPower,
      vary: "W_e",
      span: [0.2e5, 4e5],
      x: "W_e",
      y: "m_a",
      curves: [{ label: "" }],
      title: "Air flow against the power wanted.",
    },
    {
      draw: "chart",
      when: fromDisplacement,
      vary: "n",
      span: [600 / 60, 7000 / 60],
      x: "n",
      y: "m_a",
      curves: [{ label: "" }],
      title: "Air flow against engine speed, at this manifold state.",
    },
  ],
});
