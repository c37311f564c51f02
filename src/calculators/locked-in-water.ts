import { lockedInWater } from "../../calc/circuit/locked-in/locked-in-water.ts";
import { pipeCompliance } from "../../calc/circuit/locked-in/pipe-compliance.ts";
import { trappedDensity } from "../../calc/circuit/locked-in/trapped-density.ts";
import { wallMaterials } from "../../calc/circuit/locked-in/wall-materials.ts";
import { compressedWaterDensity } from "../../calc/fluids/water/compressed-water-density.ts";
import { type Calculator, defineCalculator } from "./engine/calculator.ts";

const asPipe = { vessel: ["pipe"] } as const;
const stated = { material: ["stated"] } as const;

const overWarming = {
  draw: "chart",
  vary: "Delta_T",
  span: [0, 40],
  bounds: [{ at: "Delta_T_lim", label: "weakest part", wrong: "above" }],
  x: "Delta_T",
  y: "Delta_p",
} as const;

export default defineCalculator({
  id: "locked-in-water",
  title: "Water locked in between two closed valves",
  group: "Water",
  asks: "How far does the pressure rise when water warms between two closed valves?",
  inputs: {
    T_in: {
      label: "Temperature when closed",
      symbol: "T_in",
      kind: "temperature",
      start: 288.15,
      limits: [273.15, 623.15],
      typical: [278.15, 363.15],
      help: "As the second valve was closed.",
      heading: "Water",
    },
    Delta_T: {
      label: "How much it warms",
      symbol: "Delta_T",
      kind: "temperatureDifference",
      start: 10,
      limits: [0, 350],
      typical: [0, 80],
      help: "Towards the room, the sun, or a hot core.",
    },
    p_in: {
      label: "Pressure when closed",
      symbol: "p_in",
      kind: "pressure",
      start: 300_000,
      limits: [1000, 5e7],
      typical: [80_000, 1_000_000],
      help: "",
    },
    p_lim: {
      label: "Weakest part bears",
      symbol: "p_lim",
      kind: "pressure",
      start: 700_000,
      limits: [1000, 1e8],
      typical: [200_000, 4_000_000],
      help: "Its rating, or the setting of the relief valve, whichever is lower.",
    },
    material: {
      label: "Wall",
      options: {
        ...(Object.fromEntries(Object.entries(wallMaterials).map(([id, { name }]) => [id, name])) as Record<
          keyof typeof wallMaterials,
          string
        >),
        stated: "another, its values are known",
      },
      start: "steel",
      help: "",
      heading: "Vessel",
    },
    alpha_l: {
      label: "Linear thermal expansion",
      symbol: "alpha_l",
      kind: "expansivity",
      start: 14e-6,
      limits: [0, 3e-4],
      typical: [5e-6, 1e-4],
      help: "",
      when: stated,
    },
    vessel: {
      label: "How it gives way to pressure",
      options: {
        pipe: "as a pipe of this bore and wall",
        rigid: "not at all",
        stated: "by a compliance that is known",
      },
      start: "pipe",
      help: "",
    },
    d: {
      label: "Bore of the pipe",
      symbol: "d",
      kind: "length",
      start: 0.0525,
      limits: [1e-3, 5],
      typical: [0.006, 0.3],
      help: "",
      when: asPipe,
    },
    t_w: {
      label: "Thickness of its wall",
      symbol: "t_w",
      kind: "length",
      start: 0.0039,
      limits: [1e-5, 5],
      typical: [0.0005, 0.02],
      help: "",
      when: asPipe,
    },
    E_m: {
      label: "Modulus of elasticity",
      symbol: "E_m",
      kind: "modulus",
      start: 150e9,
      limits: [1e8, 1e12],
      typical: [1e9, 2.2e11],
      help: "",
      when: { ...stated, ...asPipe },
    },
    nu_m: {
      label: "Transverse contraction over stretch",
      symbol: "nu_m",
      kind: "ratio",
      start: 0.3,
      limits: [0, 0.5],
      typical: [0.25, 0.45],
      help: "",
      when: { ...stated, ...asPipe },
    },
    chi_V: {
      label: "Part by which it grows with pressure",
      symbol: "chi_V",
      kind: "compliance",
      start: 1e-10,
      limits: [0, 1e-4],
      typical: [0, 1e-8],
      help: "A hose or a bubble of air gives way far more than metal.",
      when: { vessel: ["stated"] },
    },
  },
  results: {
    Delta_p: { label: "Rise of the pressure", symbol: "Delta_p", kind: "pressureDifference" },
    p_out: { label: "Pressure when warm", symbol: "p_out", kind: "pressure" },
    Delta_T_lim: {
      label: "Warming to what the weakest part bears",
      symbol: "Delta_T",
      kind: "temperatureDifference",
    },
    T_out: { label: "Temperature when warm", symbol: "T_out", kind: "temperature" },
    chi_V_found: {
      label: "Part by which the pipe grows",
      symbol: "chi_V",
      kind: "compliance",
      when: asPipe,
    },
    alpha_l_found: {
      label: "Linear thermal expansion",
      symbol: "alpha_l",
      kind: "expansivity",
      when: { material: Object.keys(wallMaterials) },
    },
    rho_out: { label: "Density when warm", symbol: "rho_out", kind: "density" },
  },
  relations: [compressedWaterDensity, pipeCompliance, trappedDensity],
  model: (given, trace) => {
    const found = lockedInWater(given as unknown as Parameters<typeof lockedInWater>[0], trace);
    const { Delta_p, p_out, Delta_T_lim, T_out, chi_V, alpha_l, rho_out } = found;
    return {
      Delta_p,
      p_out,
      Delta_T_lim,
      T_out,
      chi_V_found: chi_V,
      alpha_l_found: alpha_l,
      rho_out,
    } as unknown as ReturnType<Calculator["model"]>;
  },
  pictures: [
    {
      ...overWarming,
      when: { vessel: ["pipe", "stated"] },
      curves: [{ label: "this vessel" }, { label: "rigid", dash: "alternative", with: { vessel: "rigid" } }],
      title:
        "Rise of the pressure over the warming, in this vessel and in one that pressure does not stretch.",
    },
    {
      ...overWarming,
      curves: [{ label: "" }],
      title: "Rise of the pressure over the warming, in a vessel that pressure does not stretch.",
    },
  ],
});
