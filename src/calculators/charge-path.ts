import { gaugePressure } from "../../calc/atmosphere/gauge-pressure.ts";
import { type ChargePathGiven, chargePath } from "../../calc/charge/charge-path.ts";
import { totalPower } from "../../calc/compression/total-power.ts";
import { type Calculator, defineCalculator } from "./engine/calculator.ts";
import { ambientInputs, inletLossField, isMoist } from "./parts/ambient.ts";
import { compressorInputs, pressureRatioField } from "./parts/compressor.ts";
import { coolerAfter } from "./parts/cooler.ts";
import { combustionInputs, engineInputs } from "./parts/engine.ts";
import {
  compressorRelations,
  coolerRelations,
  coolingWaterRelations,
  engineRelations,
  humidityRelations,
  powerRelations,
} from "./parts/relations.ts";
import { stationOf, stationResults } from "./parts/stations.ts";

const one = { stages: ["one"] } as const;
const two = { stages: ["two"] } as const;
const sought = { wanted: ["pressure", "density", "power"] } as const;
const withCooler = { cooler: ["effectiveness", "temperature"] } as const;
const withSecondCooler = { ...two, cooler_45: ["effectiveness", "temperature"] } as const;

const firstWater = { T_in: "T_w_in_found", T_out: "T_w_out", m: "m_w" } as const;
const secondWater = { T_in: "T_w_in_45_found", T_out: "T_w_out_45", m: "m_w_45" } as const;

export default defineCalculator({
  id: "charge-path",
  title: "Charge path",
  group: "Compression",
  asks: "From the barometer to the manifold, through one compressor or two: how hot, how dense, how much air and water?",
  inputs: {
    stages: {
      label: "Compressors",
      options: { one: "one", two: "two in series" },
      start: "one",
      help: "",
    },
    ...ambientInputs,
    Delta_p_01: inletLossField,
    wanted: {
      label: "What is given",
      heading: "Compressor",
      options: {
        ratio: "the pressure ratio of the compressor",
        pressure: "a wanted pressure in the manifold",
        density: "a wanted density in the manifold",
        power: "a wanted power",
      },
      start: "ratio",
      help: "",
    },
    r: { ...pressureRatioField, when: { wanted: ["ratio"] } },
    p_m: {
      label: "Wanted pressure in the manifold",
      symbol: "p_m",
      kind: "pressure",
      start: 210_000,
      limits: [20_000, 3_000_000],
      help: "Absolute, or what the gauge shall show.",
      when: { wanted: ["pressure"] },
    },
    rho_m: {
      label: "Wanted density in the manifold",
      symbol: "rho_m",
      kind: "density",
      start: 2.3,
      limits: [0.2, 40],
      help: "",
      when: { wanted: ["density"] },
    },
    W_e: {
      label: "Wanted power at the crankshaft",
      symbol: "W_e",
      kind: "power",
      start: 110_000,
      limits: [500, 20_000_000],
      help: "",
      when: { wanted: ["power"] },
    },
    division: {
      label: "How the compressors share it",
      options: { first: "the first one's ratio is given", equal: "both at the same ratio" },
      start: "equal",
      help: "",
      when: { ...two, ...sought },
    },
    r_1: {
      ...pressureRatioField,
      label: "Pressure ratio of the first",
      symbol: "r_1",
      start: 1.5,
      when: { ...two, ...sought, division: ["first"] },
    },
    ...compressorInputs,
    ...coolerAfter({ heading: "Charge cooler", suffix: "", T_out: "T_3", Delta_p: "Delta_p_23" }),
    r_2: {
      ...pressureRatioField,
      label: "Pressure ratio of the second",
      symbol: "r_2",
      start: 1.8,
      heading: "Second compressor",
      when: { ...two, wanted: ["ratio"] },
    },
    eta_s_2: {
      ...compressorInputs.eta_s,
      label: "Isentropic efficiency of the second",
      symbol: "eta_s_2",
      start: 0.76,
      when: { ...two, efficiency: ["isentropic"] },
    },
    eta_p_2: {
      ...compressorInputs.eta_p,
      label: "Polytropic efficiency of the second",
      symbol: "eta_p_2",
      start: 0.79,
      when: { ...two, efficiency: ["polytropic"] },
    },
    ...coolerAfter({
      heading: "Second cooler",
      suffix: "_45",
      T_out: "T_5",
      Delta_p: "Delta_p_45",
      when: two,
    }),
    ...engineInputs,
    V_d: { ...engineInputs.V_d, heading: "Engine" },
    b: combustionInputs.b,
    lambda: combustionInputs.lambda,
    AFR_st: combustionInputs.AFR_st,
  },
  results: {
    rho_m: { label: "Density in the manifold", symbol: "rho_m", kind: "density" },
    m_a: { label: "Air flow", symbol: "m_a", kind: "massFlow" },
    m_a_uncooled: {
      label: "Air flow without the cooler, same compressor",
      symbol: "m_a_uncooled",
      kind: "massFlow",
      when: { ...one, ...withCooler },
    },
    r_found: { label: "Pressure ratio needed", symbol: "r", kind: "ratio", when: { ...one, ...sought } },
    r_1_found: {
      label: "Pressure ratio of the first",
      symbol: "r_1",
      kind: "ratio",
      when: { ...two, ...sought, division: ["equal"] },
    },
    r_2_found: {
      label: "Pressure ratio of the second",
      symbol: "r_2",
      kind: "ratio",
      when: { ...two, ...sought },
    },
    T_2: {
      label: "Temperature after the (first) compressor",
      symbol: "T_2",
      kind: "temperature",
      heading: "State of the air",
    },
    T_4: {
      label: "Temperature after the second compressor",
      symbol: "T_4",
      kind: "temperature",
      when: two,
    },
    T_m: { label: "Temperature in the manifold", symbol: "T_m", kind: "temperature" },
    p_2: { label: "Pressure after the (first) compressor", symbol: "p_2", kind: "pressure" },
    p_4: { label: "Pressure after the second compressor", symbol: "p_4", kind: "pressure", when: two },
    p_m: { label: "Pressure in the manifold, absolute", symbol: "p_m", kind: "pressure" },
    p_g: { label: "Pressure in the manifold, on the gauge", symbol: "p_g", kind: "gaugePressure" },
    D_rho: { label: "Density ratio, manifold to compressor inlet", symbol: "D_rho", kind: "ratio" },
    D_rho_uncooled: {
      label: "Density ratio without the cooler",
      symbol: "D_rho_uncooled",
      kind: "ratio",
      when: { ...one, ...withCooler },
    },
    W_c: {
      label: "Compressor shaft power",
      symbol: "W_c",
      kind: "power",
      when: one,
      heading: "Power and heat",
    },
    W_c12: { label: "Shaft power of both compressors", symbol: "W_c12", kind: "power", when: two },
    W_c1: { label: "Shaft power of the first", symbol: "W_c1", kind: "power", when: two },
    W_c2: { label: "Shaft power of the second", symbol: "W_c2", kind: "power", when: two },
    Q: { label: "Heat taken out by the (first) cooler", symbol: "Q", kind: "heatFlow", when: withCooler },
    Q_45: {
      label: "Heat taken out by the second cooler",
      symbol: "Q_45",
      kind: "heatFlow",
      when: withSecondCooler,
    },
    P_found: {
      label: "Effectiveness that the (first) cooler must have",
      symbol: "P",
      kind: "fraction",
      when: { cooler: ["temperature"] },
    },
    P_45_found: {
      label: "Effectiveness that the second cooler must have",
      symbol: "P_45",
      kind: "fraction",
      when: { ...two, cooler_45: ["temperature"] },
    },
    m_w: { label: "Water to the (first) cooler", symbol: "m_w", kind: "massFlow", when: withCooler },
    m_w_45: {
      label: "Water to the second cooler",
      symbol: "m_w_45",
      kind: "massFlow",
      when: withSecondCooler,
    },
    T_dp_3: {
      heading: "Water in the air",
      label: "Dew point of the charge, after one compressor",
      symbol: "T_dp_3",
      kind: "temperature",
      when: isMoist,
    },
    T_dp_5: {
      label: "Dew point of the charge, after two",
      symbol: "T_dp_5",
      kind: "temperature",
      when: { ...two, ...isMoist },
    },
    m_c: {
      label: "Water condensing in the (first) cooler",
      symbol: "m_c",
      kind: "massFlow",
      when: { ...isMoist, ...withCooler },
    },
    m_c_45: {
      label: "Water condensing in the second cooler",
      symbol: "m_c_45",
      kind: "massFlow",
      when: { ...isMoist, ...withSecondCooler },
    },
    W_e: {
      label: "Power that this air carries",
      symbol: "W_e",
      kind: "power",
      heading: "Engine",
    },
    T_w_out: {
      label: "Water after the cooler",
      symbol: "T_w_out",
      kind: "temperature",
      when: withCooler,
      inPicture: true,
    },
    T_w_out_45: {
      label: "Water after the second cooler",
      symbol: "T_w_out_45",
      kind: "temperature",
      when: withSecondCooler,
      inPicture: true,
    },
    ...stationResults("0", "ambient"),
    ...stationResults("1", "compressor inlet"),
    ...stationResults("2", "compressor outlet", ["rho", "w"]),
    ...stationResults("3", "after the cooler"),
    ...stationResults("4", "second compressor outlet", ["rho", "w"], two),
    ...stationResults("5", "after the second cooler", undefined, two),
    T_w_in_found: {
      label: "Water before the cooler",
      symbol: "T_w_in",
      kind: "temperature",
      when: withCooler,
      inPicture: true,
    },
    T_w_in_45_found: {
      label: "Water before the second cooler",
      symbol: "T_w_in_45",
      kind: "temperature",
      when: withSecondCooler,
      inPicture: true,
    },
  },
  relations: [
    ...humidityRelations,
    ...compressorRelations,
    ...engineRelations,
    ...powerRelations,
    ...coolerRelations,
    ...coolingWaterRelations,
    totalPower,
    gaugePressure,
  ],
  model: (given, trace) => {
    const known = given as unknown as ChargePathGiven;
    const found = chargePath(known, trace);
    return {
      ...found,
      r_found: found.r,
      r_1_found: found.r,
      r_2_found: found.r_2,
      P_found: found.P,
      P_45_found: found.P_45,
      W_c1: found.W_c,
      W_c2: found.W_c2,
      T_w_in_found: known.T_w_in,
      T_w_in_45_found: known.T_w_in_45,
    } as unknown as ReturnType<Calculator["model"]>;
  },
  pictures: [
    {
      draw: "stations",
      when: one,
      stations: [
        stationOf("0", "ambient"),
        stationOf("1", "compressor inlet"),
        stationOf("2", "compressor outlet"),
        stationOf("3", "manifold"),
      ],
      parts: [
        { kind: "duct", label: "filter", after: 0 },
        { kind: "compressor", label: "compressor", after: 1 },
        { kind: "cooler", label: "charge cooler", after: 2, water: firstWater },
      ],
      ghost: { cooler: "none" },
      title: "One kilogram of air on its way. Height is temperature, width the room it takes up.",
    },
    {
      draw: "stations",
      stations: [
        stationOf("0", "ambient"),
        stationOf("1", "first inlet"),
        stationOf("2", "first outlet"),
        stationOf("3", "first cooler outlet"),
        stationOf("4", "second outlet"),
        stationOf("5", "manifold"),
      ],
      parts: [
        { kind: "duct", label: "filter", after: 0 },
        { kind: "compressor", label: "first compressor", after: 1 },
        { kind: "cooler", label: "first cooler", after: 2, water: firstWater },
        { kind: "compressor", label: "second compressor", after: 3 },
        { kind: "cooler", label: "second cooler", after: 4, water: secondWater },
      ],
      ghost: { cooler: "none", cooler_45: "none" },
      title: "One kilogram of air on its way. Height is temperature, width the room it takes up.",
    },
  ],
});
