import { gaugePressure } from "../../calc/atmosphere/gauge-pressure.ts";
import { chargePath } from "../../calc/charge-path.ts";
import { barometerField } from "./engine/barometer.ts";
import { type Calculator, defineCalculator } from "./engine/calculator.ts";
import { compressorInputs, pressureRatioField } from "./parts/compressor.ts";
import { coolerInputs } from "./parts/cooler.ts";
import { combustionInputs, engineInputs } from "./parts/engine.ts";
import { humidityInputs } from "./parts/humidity.ts";
import {
  compressorRelations,
  coolerRelations,
  engineRelations,
  humidityRelations,
  powerRelations,
} from "./parts/relations.ts";

const withCooler = { cooler: ["effectiveness", "temperature"] } as const;

export default defineCalculator({
  id: "charge-path",
  title: "Charge path, one stage",
  group: "Compression",
  asks: "From the barometer to the manifold: how hot, how dense, how much air, with the cooler and without it?",
  inputs: {
    p_0: { ...barometerField, heading: "Ambient air" },
    T_0: {
      label: "Ambient temperature",
      symbol: "T_0",
      kind: "temperature",
      start: 298.15,
      limits: [223.15, 343.15],
      typical: [253.15, 323.15],
      help: "",
    },
    ...humidityInputs,
    Delta_p_01: {
      label: "Pressure lost before the compressor",
      symbol: "Delta_p_01",
      kind: "pressureDifference",
      start: 1000,
      limits: [0, 30_000],
      typical: [0, 6000],
      help: "Filter and inlet duct.",
    },
    wanted: {
      label: "What is given",
      heading: "Compressor",
      options: {
        ratio: "the pressure ratio of the compressor",
        density: "a wanted density in the manifold",
        power: "a wanted power",
      },
      start: "ratio",
      help: "",
    },
    r: { ...pressureRatioField, when: { wanted: ["ratio"] } },
    rho_3: {
      label: "Wanted density in the manifold",
      symbol: "rho_3",
      kind: "density",
      start: 2.3,
      limits: [0.2, 20],
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
    ...compressorInputs,
    cooler: {
      label: "What is known of the cooler",
      heading: "Charge cooler",
      options: {
        temperature: "its outlet temperature is known",
        effectiveness: "its effectiveness is known",
        none: "none fitted",
      },
      start: "temperature",
      help: "",
    },
    T_3: { ...coolerInputs.T_3, when: { cooler: ["temperature"] } },
    P: {
      label: "Temperature effectiveness of the cooler",
      symbol: "P",
      kind: "fraction",
      start: 0.78,
      limits: [0, 1],
      typical: [0.4, 0.95],
      help: "The part of the way from the hot air to the water inlet that the air goes.",
      when: { cooler: ["effectiveness"] },
    },
    T_w_in: {
      label: "Cooling water, inlet temperature",
      symbol: "T_w_in",
      kind: "temperature",
      start: 298.15,
      limits: [233.15, 393.15],
      typical: [273.15, 363.15],
      help: "",
      when: withCooler,
    },
    Delta_p_23: { ...coolerInputs.Delta_p_23, when: withCooler },
    ...engineInputs,
    V_d: { ...engineInputs.V_d, heading: "Engine" },
    b: combustionInputs.b,
    lambda: combustionInputs.lambda,
    AFR_st: combustionInputs.AFR_st,
  },
  results: {
    rho_3: { label: "Density in the manifold", symbol: "rho_3", kind: "density" },
    m_a: { label: "Air flow", symbol: "m_a", kind: "massFlow" },
    m_a_uncooled: {
      label: "Air flow without the cooler, same compressor",
      symbol: "m_a_uncooled",
      kind: "massFlow",
      when: withCooler,
    },
    r_found: {
      label: "Pressure ratio needed",
      symbol: "r",
      kind: "ratio",
      when: { wanted: ["density", "power"] },
    },
    T_2: { label: "Temperature after the compressor", symbol: "T_2", kind: "temperature" },
    T_3: { label: "Temperature in the manifold", symbol: "T_3", kind: "temperature" },
    p_2: { label: "Pressure after the compressor", symbol: "p_2", kind: "pressure" },
    p_3: { label: "Pressure in the manifold, absolute", symbol: "p_3", kind: "pressure" },
    p_g: { label: "Pressure in the manifold, on the gauge", symbol: "p_g", kind: "gaugePressure" },
    D_rho: { label: "Density ratio, manifold to compressor inlet", symbol: "D_rho", kind: "ratio" },
    D_rho_uncooled: {
      label: "Density ratio without the cooler",
      symbol: "D_rho_uncooled",
      kind: "ratio",
      when: withCooler,
    },
    W_c: { label: "Compressor shaft power", symbol: "W_c", kind: "power" },
    Q: { label: "Heat taken out by the cooler", symbol: "Q", kind: "heatFlow", when: withCooler },
    P_found: {
      label: "Effectiveness that the cooler must have",
      symbol: "P",
      kind: "fraction",
      when: { cooler: ["temperature"] },
    },
    T_dp_3: {
      label: "Dew point in the manifold",
      symbol: "T_dp_3",
      kind: "temperature",
      when: { humidity: ["relative", "dew-point", "wet-bulb"] },
    },
    m_c: {
      label: "Water condensing in the cooler",
      symbol: "m_c",
      kind: "massFlow",
      when: { humidity: ["relative", "dew-point", "wet-bulb"], ...withCooler },
    },
    W_e: { label: "Power that this air carries", symbol: "W_e", kind: "power" },
    p_0: { label: "Ambient pressure", symbol: "p_0", kind: "pressure", inPicture: true },
    T_0: { label: "Ambient temperature", symbol: "T_0", kind: "temperature", inPicture: true },
    rho_0: { label: "Ambient density", symbol: "rho_0", kind: "density", inPicture: true },
    w_0: { label: "Ambient humidity ratio", symbol: "w_0", kind: "humidityRatio", inPicture: true },
    p_1: { label: "Pressure at the compressor inlet", symbol: "p_1", kind: "pressure", inPicture: true },
    T_1: {
      label: "Temperature at the compressor inlet",
      symbol: "T_1",
      kind: "temperature",
      inPicture: true,
    },
    rho_1: { label: "Density at the compressor inlet", symbol: "rho_1", kind: "density", inPicture: true },
    w_1: {
      label: "Humidity ratio at the compressor inlet",
      symbol: "w_1",
      kind: "humidityRatio",
      inPicture: true,
    },
    rho_2: { label: "Density after the compressor", symbol: "rho_2", kind: "density", inPicture: true },
    w_2: {
      label: "Humidity ratio after the compressor",
      symbol: "w_2",
      kind: "humidityRatio",
      inPicture: true,
    },
    w_3: { label: "Humidity ratio in the manifold", symbol: "w_3", kind: "humidityRatio", inPicture: true },
  },
  relations: [
    ...humidityRelations,
    ...compressorRelations,
    ...engineRelations,
    ...powerRelations,
    ...coolerRelations,
    gaugePressure,
  ],
  model: (given, trace) => {
    const found = chargePath(given as unknown as Parameters<typeof chargePath>[0], trace);
    return { ...found, r_found: found.r, P_found: found.P } as unknown as ReturnType<Calculator["model"]>;
  },
  pictures: [
    {
      draw: "stations",
      stations: [
        { number: "0", label: "ambient", T: "T_0", p: "p_0", rho: "rho_0", w: "w_0" },
        { number: "1", label: "compressor inlet", T: "T_1", p: "p_1", rho: "rho_1", w: "w_1" },
        { number: "2", label: "compressor outlet", T: "T_2", p: "p_2", rho: "rho_2", w: "w_2" },
        { number: "3", label: "manifold", T: "T_3", p: "p_3", rho: "rho_3", w: "w_3" },
      ],
      parts: [
        { kind: "duct", label: "filter", after: 0 },
        { kind: "compressor", label: "compressor", after: 1 },
        { kind: "cooler", label: "charge cooler", after: 2 },
      ],
      ghost: { cooler: "none" },
      title: "One kilogram of air on its way. Height is temperature, width the room it takes up.",
    },
  ],
});
