import { USUAL_FILLING } from "../../../calc/engine/cycle.ts";
import type { Choice, Field } from "../engine/calculator.ts";

/** The engine as a pump for air. */
export const engineInputs = {
  V_d: {
    label: "Displacement",
    symbol: "V_d",
    kind: "volume",
    start: 0.0044,
    limits: [2e-5, 2],
    typical: [0.0005, 0.06],
    help: "All cylinders.",
  },
  n: {
    label: "Engine speed",
    symbol: "n",
    kind: "rotationalSpeed",
    start: 2000 / 60,
    limits: [0.5, 400],
    typical: [5, 170],
    help: "",
  },
  cycle: {
    label: "Working cycle",
    options: { "four-stroke": "four-stroke", "two-stroke": "two-stroke" },
    start: "four-stroke",
    help: "",
  },
  eta_v: {
    label: "Volumetric efficiency",
    symbol: "eta_v",
    kind: "fraction",
    start: 0.92,
    limits: [0.1, 1.5],
    typical: USUAL_FILLING,
    help: "Referred to the air in the manifold, not to the ambient air.",
  },
} as const satisfies Record<string, Field | Choice>;

/** What turns air into power. */
export const combustionInputs = {
  b: {
    label: "Brake specific fuel consumption",
    symbol: "b",
    kind: "specificFuel",
    start: 210 / 3.6e9,
    limits: [1e-8, 3e-7],
    typical: [180 / 3.6e9, 380 / 3.6e9],
    help: "",
  },
  lambda: {
    label: "Relative air-fuel ratio",
    symbol: "lambda",
    kind: "ratio",
    start: 1.6,
    limits: [0.4, 12],
    typical: [0.75, 3],
    help: "1 burns all fuel with all air. Diesel engines run above 1.3, petrol engines at full load below 1.",
  },
  AFR_st: {
    label: "Stoichiometric air-fuel ratio",
    symbol: "AFR_st",
    kind: "ratio",
    start: 14.5,
    limits: [1, 40],
    typical: [6, 17.5],
    help: "Mass of dry air to mass of fuel. It depends on the fuel.",
  },
} as const satisfies Record<string, Field | Choice>;
