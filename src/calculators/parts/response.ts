import type { SI } from "../../../calc/quantity/domain-error.ts";
import type { Field } from "../engine/calculator.ts";

interface Starts {
  readonly heading: string;
  readonly M_core: SI;
  readonly UA_a: SI;
  readonly UA_film: SI;
  readonly C_w: SI;
  readonly T_w_in: SI;
  readonly V_ch: SI;
}

/** What decides how fast one cooler answers, and the pipes with it. */
export const coreFields = ({ heading, M_core, UA_a, UA_film, C_w, T_w_in, V_ch }: Starts) =>
  ({
    M_core: {
      label: "Mass of the core's metal",
      symbol: "M_core",
      kind: "mass",
      start: M_core,
      limits: [0.001, 100_000],
      typical: [0.5, 500],
      help: "Tubes, plates and fins. Not the headers.",
      heading,
    },
    c_core: {
      label: "Heat capacity of the metal",
      symbol: "c_core",
      kind: "specificHeat",
      start: 900,
      limits: [50, 5000],
      typical: [350, 1000],
      help: "",
    },
    UA_a: {
      label: "Conductance, air side",
      symbol: "UA_a",
      kind: "conductance",
      start: UA_a,
      limits: [1, 1_000_000],
      typical: [50, 50_000],
      help: "At this air flow.",
    },
    UA_film: {
      label: "Conductance, coolant side",
      symbol: "UA_film",
      kind: "conductance",
      start: UA_film,
      limits: [0, 1_000_000],
      typical: [50, 100_000],
      help: "With its dirt. Zero: a dry core.",
    },
    C_w: {
      label: "Heat-capacity rate, coolant",
      symbol: "C_w",
      kind: "capacityRate",
      start: C_w,
      limits: [1, 10_000_000],
      typical: [100, 200_000],
      help: "Mass flow times heat capacity, of water or of outside air.",
    },
    T_w_in: {
      label: "Coolant at the inlet",
      symbol: "T_w_in",
      kind: "temperature",
      start: T_w_in,
      limits: [223.15, 473.15],
      typical: [263.15, 363.15],
      help: "",
    },
    V_ch: {
      label: "Volume of the charge",
      symbol: "V_ch",
      kind: "volume",
      start: V_ch,
      limits: [1e-6, 1000],
      typical: [0.001, 1],
      help: "Pipes, headers and manifold, from the compressor to the engine.",
    },
  }) as const satisfies Record<string, Field>;
