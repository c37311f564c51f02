import { brakeEfficiency } from "../../calc/engine/brake-efficiency.ts";
import { meanEffectivePressure } from "../../calc/engine/mean-effective-pressure.ts";
import { powerFromMeanPressure } from "../../calc/engine/power-from-mean-pressure.ts";
import { powerFromTorque } from "../../calc/engine/power-from-torque.ts";
import { powerTorque } from "../../calc/engine/power-torque.ts";
import { specificConsumption } from "../../calc/engine/specific-consumption.ts";
import { speedFromPower } from "../../calc/engine/speed-from-power.ts";
import { torqueFromPower } from "../../calc/engine/torque-from-power.ts";
import { type Calculator, defineCalculator } from "./engine/calculator.ts";
import { engineInputs } from "./parts/engine.ts";

const knows = (...known: readonly string[]) => ({ known }) as const;
const withFuel = { fuel: ["flow"] } as const;

export default defineCalculator({
  id: "power-torque",
  title: "Power, torque and mean effective pressure",
  group: "Engine",
  asks: "What power does this torque give at this speed, and the other way round?",
  inputs: {
    known: {
      label: "What is known",
      options: {
        torque: "torque and speed",
        power: "power and speed",
        pressure: "mean effective pressure and speed",
        both: "power and torque",
      },
      start: "torque",
      help: "",
    },
    M: {
      label: "Torque",
      symbol: "M",
      kind: "torque",
      start: 345,
      limits: [0.01, 1e7],
      typical: [20, 20_000],
      help: "At the crankshaft.",
      when: knows("torque", "both"),
    },
    W_e: {
      label: "Power at the crankshaft",
      symbol: "W_e",
      kind: "power",
      start: 235_000,
      limits: [1, 100_000_000],
      typical: [2000, 10_000_000],
      help: "",
      when: knows("power", "both"),
    },
    p_me: {
      label: "Brake mean effective pressure",
      symbol: "p_me",
      kind: "pressureDifference",
      start: 2_170_000,
      limits: [1000, 20_000_000],
      typical: [100_000, 4_000_000],
      help: "",
      when: knows("pressure"),
    },
    n: {
      ...engineInputs.n,
      start: 6500 / 60,
      typical: [1, 300],
      when: knows("torque", "power", "pressure"),
    },
    V_d: { ...engineInputs.V_d, start: 0.002 },
    cycle: engineInputs.cycle,
    fuel: {
      label: "Fuel",
      options: { none: "leave it out", flow: "its flow is known" },
      start: "none",
      help: "",
    },
    m_f: {
      label: "Fuel flow",
      symbol: "m_f",
      kind: "massFlow",
      start: 0.01958,
      limits: [1e-6, 50],
      typical: [1e-4, 2],
      help: "",
      when: withFuel,
    },
    LHV: {
      label: "Lower heating value",
      symbol: "LHV",
      kind: "specificEnergy",
      start: 42_800_000,
      limits: [5_000_000, 150_000_000],
      typical: [18_000_000, 52_000_000],
      help: "Common practice: petrol and diesel about 43 MJ/kg, ethanol 27, methanol 20, methane 50.",
      when: withFuel,
    },
  },
  results: {
    W_found: {
      label: "Power",
      symbol: "W_e",
      kind: "power",
      when: knows("torque", "pressure"),
    },
    M_found: { label: "Torque", symbol: "M", kind: "torque", when: knows("power", "pressure") },
    n_found: { label: "Engine speed", symbol: "n", kind: "rotationalSpeed", when: knows("both") },
    p_found: {
      label: "Brake mean effective pressure",
      symbol: "p_me",
      kind: "pressureDifference",
      when: knows("torque", "power", "both"),
    },
    b: { label: "Specific fuel consumption", symbol: "b", kind: "specificFuel", when: withFuel },
    eta_e: { label: "Brake thermal efficiency", symbol: "eta_e", kind: "fraction", when: withFuel },
  },
  relations: [
    powerFromTorque,
    torqueFromPower,
    speedFromPower,
    meanEffectivePressure,
    powerFromMeanPressure,
    specificConsumption,
    brakeEfficiency,
  ],
  model: (given, trace) => {
    const found = powerTorque(given as unknown as Parameters<typeof powerTorque>[0], trace);
    const { W_e: W_found, M: M_found, n: n_found, p_me: p_found, b, eta_e } = found;
    return { W_found, M_found, n_found, p_found, b, eta_e } as unknown as ReturnType<Calculator["model"]>;
  },
  pictures: [
    {
      draw: "chart",
      when: knows("torque"),
      vary: "n",
      span: [600 / 60, 7000 / 60],
      x: "n",
      y: "W_found",
      curves: [{ label: "" }],
      title: "Power against speed, at this torque.",
    },
    {
      draw: "chart",
      when: knows("pressure"),
      vary: "n",
      span: [600 / 60, 7000 / 60],
      x: "n",
      y: "W_found",
      curves: [{ label: "" }],
      title: "Power against speed, at this mean effective pressure.",
    },
    {
      draw: "chart",
      when: knows("power"),
      vary: "n",
      span: [600 / 60, 7000 / 60],
      x: "n",
      y: "M_found",
      curves: [{ label: "" }],
      title: "Torque against speed, at this power.",
    },
    {
      draw: "chart",
      vary: "M",
      span: [100, 1000],
      x: "M",
      y: "n_found",
      curves: [{ label: "" }],
      title: "Speed against torque, at this power.",
    },
  ],
});
