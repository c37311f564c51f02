import type { MovingCoolerGiven } from "../../../calc/exchanger/moving-cooler.ts";
import { movingFromFields } from "../../../calc/exchanger/moving-from-fields.ts";
import type { Trace } from "../../../calc/relation/trace.ts";
import type { Choice, Field } from "../engine/calculator.ts";
import { arrangementFrom, coolantInputs, waterFlowInputs } from "./exchanger.ts";

const ofPoint = { known: ["point"] } as const;
const ofPassages = { known: ["round", "rectangular"] } as const;
const ofTubes = { known: ["round"] } as const;
const ofChannels = { known: ["rectangular"] } as const;
const stated = { coolant: ["stated"] } as const;

/** The choices under which the flow inside the passages is known. */
export const passagesKnown = ofPassages;

/** A cooler whose conductance moves with both flows. `movingCoolerFrom` reads them. */
export const movingInputs = {
  known: {
    label: "What is known of the cooler",
    options: {
      point: "one measured point",
      round: "the water tubes, and the air side",
      rectangular: "the water channels, and the air side",
    },
    start: "rectangular",
    help: "",
  },
  UA: {
    label: "Measured heat conductance",
    symbol: "UA",
    kind: "conductance",
    start: 560,
    limits: [1, 100_000],
    typical: [50, 20_000],
    help: "At the two flows below.",
    when: ofPoint,
  },
  UA_a_ref: {
    label: "Heat conductance of the air side",
    symbol: "UA_a_ref",
    kind: "conductance",
    start: 1220,
    limits: [1, 1_000_000],
    typical: [100, 50_000],
    help: "With its fins, at the air flow below.",
    when: ofPassages,
  },
  m_a_ref: {
    label: "Air flow for which it holds",
    symbol: "m_a_ref",
    kind: "massFlow",
    start: 0.35,
    limits: [1e-4, 500],
    typical: [0.01, 10],
    help: "",
  },
  m_w_ref: {
    label: "Water flow for which it holds",
    symbol: "m_w_ref",
    kind: "massFlow",
    start: 0.9,
    limits: [1e-4, 1000],
    typical: [0.02, 30],
    help: "",
    when: ofPoint,
  },
  s_a: {
    label: "Share of the air side in the resistance",
    symbol: "s_a",
    kind: "fraction",
    start: 0.6,
    limits: [0.01, 0.99],
    typical: [0.4, 0.85],
    help: "The water has what the parts leave. Common practice: 0.5 to 0.8 with fins.",
    when: ofPoint,
  },
  s_wall: {
    label: "Share of the wall",
    symbol: "s_wall",
    kind: "fraction",
    start: 0.02,
    limits: [0, 0.9],
    typical: [0, 0.05],
    help: "",
    when: ofPoint,
  },
  s_foul: {
    label: "Share of dirt",
    symbol: "s_foul",
    kind: "fraction",
    start: 0,
    limits: [0, 0.9],
    typical: [0, 0.08],
    help: "",
    when: ofPoint,
  },
  n_a: {
    label: "Exponent of the air side over its flow",
    symbol: "n_a",
    kind: "ratio",
    start: 0.6,
    limits: [0, 1],
    typical: [0.4, 0.8],
    help: "Common practice: 0.5 to 0.7 with fins.",
  },
  n_w: {
    label: "Exponent of the water side over its flow",
    symbol: "n_w",
    kind: "ratio",
    start: 0.8,
    limits: [0, 1],
    typical: [0.3, 0.85],
    help: "0.8 in turbulent flow, about 0.33 in laminar flow.",
    when: ofPoint,
  },
  d: {
    label: "Bore of the tubes",
    symbol: "d",
    kind: "length",
    start: 0.01026,
    limits: [5e-4, 0.2],
    typical: [0.004, 0.025],
    help: "",
    when: ofTubes,
  },
  a_ch: {
    label: "Long side of a channel",
    symbol: "a_ch",
    kind: "length",
    start: 0.08,
    limits: [5e-4, 5],
    typical: [0.02, 0.3],
    help: "",
    when: ofChannels,
  },
  b_ch: {
    label: "Short side of a channel",
    symbol: "b_ch",
    kind: "length",
    start: 0.0025,
    limits: [2e-4, 1],
    typical: [0.001, 0.01],
    help: "",
    when: ofChannels,
  },
  N_ch: {
    label: "Passages side by side in one pass",
    symbol: "N_ch",
    kind: "ratio",
    start: 15,
    limits: [1, 10_000],
    typical: [1, 500],
    help: "",
    whole: true,
    when: ofPassages,
  },
  L: {
    label: "Length of a passage, one pass",
    symbol: "L",
    kind: "length",
    start: 0.2,
    limits: [0.005, 50],
    typical: [0.05, 3],
    help: "",
    when: ofPassages,
  },
  N_p: {
    label: "Passes of the water",
    symbol: "N_p",
    kind: "ratio",
    start: 2,
    limits: [1, 100],
    typical: [1, 6],
    help: "As the arrangement has them.",
    whole: true,
    when: ofPassages,
  },
  R_wall: {
    label: "Thermal resistance of the wall",
    symbol: "R_wall",
    kind: "thermalResistance",
    start: 3.1e-6,
    limits: [0, 0.1],
    typical: [0, 1e-4],
    help: "Thickness over conductivity and area. Small, unless fins are badly bonded.",
    when: ofPassages,
  },
  r_foul: {
    label: "Fouling factor of the water side",
    symbol: "r_foul",
    kind: "foulingFactor",
    start: 2e-4,
    limits: [0, 0.01],
    typical: [0, 5e-4],
    help: "Zero when clean.",
    when: ofPassages,
  },
} as const satisfies Record<string, Field | Choice>;

/** The liquid of such a cooler, without its flow: glycols too, and what the film of a stated liquid needs. */
export const movingCoolantInputs = {
  ...coolantInputs,
  coolant: {
    ...coolantInputs.coolant,
    options: {
      water: "fresh water",
      seawater: "seawater",
      "ethylene-glycol": "water with ethylene glycol",
      "propylene-glycol": "water with propylene glycol",
      stated: "another, its properties are known",
    },
  },
  p_w: {
    ...coolantInputs.p_w,
    when: { coolant: ["water", "seawater", "ethylene-glycol", "propylene-glycol"] },
  },
  x_g: {
    label: "Glycol, part of the mass",
    symbol: "x_g",
    kind: "fraction",
    start: 0.4,
    limits: [0, 0.6],
    typical: [0.1, 0.55],
    help: "",
    when: { coolant: ["ethylene-glycol", "propylene-glycol"] },
  },
  rho_w: { ...waterFlowInputs.rho_w, when: stated, help: "" },
  mu_w: {
    label: "Viscosity of the liquid",
    symbol: "mu",
    kind: "viscosity",
    start: 0.003,
    limits: [1e-5, 10],
    typical: [3e-4, 0.02],
    help: "At its mean temperature.",
    when: { ...stated, ...ofPassages },
  },
  k_w: {
    label: "Thermal conductivity of the liquid",
    symbol: "k",
    kind: "conductivity",
    start: 0.4,
    limits: [0.01, 10],
    typical: [0.1, 0.7],
    help: "",
    when: { ...stated, ...ofPassages },
  },
} as const satisfies Record<string, Field | Choice>;

/** What a calculator with these fields, and those of an arrangement and of the charge, gives a model of a moving cooler. */
export const movingCoolerFrom = (
  given: Readonly<Record<string, unknown>>,
  trace: Trace,
): MovingCoolerGiven => {
  const fields = given as unknown as Parameters<typeof movingFromFields>[0] & MovingCoolerGiven;
  return { ...fields, ...movingFromFields(fields, trace), arrangement: arrangementFrom(given) };
};
