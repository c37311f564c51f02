import { coolantProperties } from "../../calc/exchanger/coolant-properties.ts";
import { freezingMargin } from "../../calc/fluids/freezing-margin.ts";
import { glycolVolumeFraction } from "../../calc/fluids/glycol/glycol-volume-fraction.ts";
import { prandtlNumber } from "../../calc/fluids/prandtl-number.ts";
import { seawaterEnthalpy } from "../../calc/fluids/seawater-enthalpy.ts";
import { viscosityRatio } from "../../calc/fluids/viscosity-ratio.ts";
import { volumeHeatRatio } from "../../calc/fluids/volume-heat-ratio.ts";
import { atmosphericWaterHeatCapacity } from "../../calc/fluids/water/atmospheric-water-heat-capacity.ts";
import { atmosphericWaterViscosity } from "../../calc/fluids/water/atmospheric-water-viscosity.ts";
import { boilingTemperature } from "../../calc/fluids/water/boiling-temperature.ts";
import { compressedWaterDensity } from "../../calc/fluids/water/compressed-water-density.ts";
import { compressedWaterHeatCapacity } from "../../calc/fluids/water/compressed-water-heat-capacity.ts";
import { waterViscosity } from "../../calc/fluids/water/water-viscosity.ts";
import { type Calculator, defineCalculator } from "./engine/calculator.ts";
import { mixtureRelations } from "./parts/coolant-relations.ts";
import { coolantInputs } from "./parts/exchanger.ts";

const glycols = ["ethylene-glycol", "propylene-glycol"] as const;
const mixed = { coolant: glycols } as const;
const ofSea = { coolant: ["seawater"] } as const;
const by = (amount: string) => ({ ...mixed, amount: [amount] });

const part = { kind: "fraction", limits: [0, 0.6], typical: [0.1, 0.55] } as const;

export default defineCalculator({
  id: "coolant-properties",
  title: "Coolant properties",
  group: "Water",
  asks: "What does seawater, or water with glycol, carry and resist, and when does it freeze?",
  inputs: {
    coolant: {
      label: "Coolant",
      options: {
        "ethylene-glycol": "ethylene glycol in water",
        "propylene-glycol": "propylene glycol in water",
        seawater: "seawater",
      },
      start: "ethylene-glycol",
      help: "",
    },
    amount: {
      label: "Glycol given by",
      options: {
        volume: "volume, as it is poured",
        mass: "mass",
        freezing: "the freezing point wanted",
      },
      start: "volume",
      help: "",
      when: mixed,
    },
    phi_g: {
      ...part,
      label: "Glycol by volume",
      symbol: "phi_g",
      start: 0.5,
      help: "Part of both volumes before they are mixed.",
      when: by("volume"),
    },
    x_g: {
      ...part,
      label: "Glycol by mass",
      symbol: "x_g",
      start: 0.5,
      help: "",
      when: by("mass"),
    },
    T_freeze: {
      label: "Freezing point wanted",
      symbol: "T_f",
      kind: "temperature",
      start: 253.15,
      limits: [223.15, 273.15],
      typical: [233.15, 270.15],
      help: "Where the first ice forms.",
      when: by("freezing"),
    },
    S: { ...coolantInputs.S, when: ofSea },
    T: {
      label: "Temperature",
      symbol: "T",
      kind: "temperature",
      start: 333.15,
      limits: [223.15, 423.15],
      typical: [243.15, 373.15],
      help: "",
    },
    p_w: {
      ...coolantInputs.p_w,
      label: "Pressure",
      help: "Decides when fresh water would boil.",
      when: {},
    },
  },
  results: {
    phi_g_found: {
      label: "Glycol by volume",
      symbol: "phi_g",
      kind: "fraction",
      when: { ...mixed, amount: ["freezing", "mass"] },
    },
    T_f: { label: "It begins to freeze at", symbol: "T_f", kind: "temperature" },
    x_g_found: {
      label: "Glycol by mass",
      symbol: "x_g",
      kind: "fraction",
      when: { ...mixed, amount: ["freezing", "volume"] },
    },
    Delta_T_f: { label: "Margin to freezing", symbol: "Delta_T_f", kind: "temperatureDifference" },
    rho: { label: "Density", symbol: "rho", kind: "density" },
    c_p: { label: "Heat capacity", symbol: "c_p", kind: "specificHeat" },
    mu: { label: "Viscosity", symbol: "mu", kind: "viscosity" },
    k: { label: "Thermal conductivity", symbol: "k", kind: "conductivity" },
    Pr: { label: "Prandtl number", symbol: "Pr", kind: "ratio" },
    h: {
      label: "Enthalpy, from standard seawater",
      symbol: "h",
      kind: "specificEnergy",
      when: ofSea,
    },
    X_C: {
      label: "Heat in a volume, part of fresh water",
      symbol: "X_C",
      kind: "fraction",
      heading: "Against fresh water at the same temperature",
    },
    X_mu: { label: "Viscosity, times that of fresh water", symbol: "X_mu", kind: "ratio" },
    T_sat: { label: "Fresh water boils at", symbol: "T_sat", kind: "temperature" },
  },
  relations: [
    ...mixtureRelations,
    freezingMargin,
    glycolVolumeFraction,
    prandtlNumber,
    seawaterEnthalpy,
    volumeHeatRatio,
    viscosityRatio,
    atmosphericWaterHeatCapacity,
    atmosphericWaterViscosity,
    boilingTemperature,
    compressedWaterDensity,
    compressedWaterHeatCapacity,
    waterViscosity,
  ],
  model: (given, trace) => {
    const { x_g, phi_g, ...found } = coolantProperties(
      given as unknown as Parameters<typeof coolantProperties>[0],
      trace,
    );
    return { ...found, x_g_found: x_g, phi_g_found: phi_g } as unknown as ReturnType<Calculator["model"]>;
  },
  pictures: [
    {
      draw: "chart",
      when: by("volume"),
      vary: "phi_g",
      span: [0, 0.6],
      x: "phi_g",
      y: "T_f",
      curves: [{ label: "" }],
      title: "Freezing temperature against the glycol by volume.",
    },
    {
      draw: "chart",
      when: by("mass"),
      vary: "x_g",
      span: [0, 0.6],
      x: "x_g",
      y: "T_f",
      curves: [{ label: "" }],
      title: "Freezing temperature against the glycol by mass.",
    },
    {
      draw: "chart",
      when: by("freezing"),
      vary: "T_freeze",
      span: [233.15, 272.15],
      x: "T_freeze",
      y: "phi_g_found",
      curves: [{ label: "" }],
      title: "Glycol by volume against the freezing temperature that is wanted.",
    },
    {
      draw: "chart",
      vary: "S",
      span: [0, 0.042],
      x: "S",
      y: "T_f",
      curves: [{ label: "" }],
      title: "Freezing temperature of seawater against its salinity.",
    },
  ],
  also: [
    {
      draw: "chart",
      vary: "T",
      span: [253.15, 373.15],
      bounds: [{ at: "T_f", label: "freezes", wrong: "below" }],
      x: "T",
      y: "mu",
      curves: [{ label: "" }],
      title: "Viscosity against the temperature.",
    },
  ],
});
