import { internalEnergy } from "../../../calc/fluids/internal-energy.ts";
import { saturationOverWater } from "../../../calc/fluids/saturation-over-water.ts";
import { specificVolume } from "../../../calc/fluids/specific-volume.ts";
import { boilingTemperature } from "../../../calc/fluids/water/boiling-temperature.ts";
import { temperatureFromEnthalpy } from "../../../calc/fluids/water/temperature-from-enthalpy.ts";
import { temperatureFromEntropy } from "../../../calc/fluids/water/temperature-from-entropy.ts";
import type { Trace } from "../../../calc/relation/trace.ts";
import { type Given, subject } from "../subject.ts";
import water from "./compressed-water.ts";
import steam from "./steam.ts";

interface Case extends Given {
  phase: "water" | "steam";
  T: number;
  p: number;
  psat: number;
  h: number;
  s: number;
}

function stateOf({ phase, T, p }: Case, trace: Trace) {
  const state = (phase === "water" ? water : steam).compute({ T, p }, trace) as Record<string, number>;
  const { rho = Number.NaN, h = Number.NaN } = state;
  const v = trace.use(specificVolume, { rho }, phase);
  return { ...state, v, u: trace.use(internalEnergy, { h, p, v }, phase) };
}

/** The tables of the release: each case gives other inputs, and asks for what follows from them. */
export default subject<Case>((given, trace) => {
  const { T, p, psat, h, s } = given;
  if ("phase" in given) return stateOf(given, trace);
  if ("psat" in given) return { T: trace.use(boilingTemperature, { p: psat }, "water") };
  if ("h" in given) return { T: trace.use(temperatureFromEnthalpy, { p, h }, "water") };
  if ("s" in given) return { T: trace.use(temperatureFromEntropy, { p, s }, "water") };
  return { psat: trace.use(saturationOverWater, { T }, "water") };
});
