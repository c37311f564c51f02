import { density } from "../../calc/fluids/density.ts";
import { gasConstant } from "../../calc/fluids/gas-constant.ts";
import { massFlow } from "../../calc/fluids/mass-flow.ts";
import { type StatedFlowGiven, statedConditions, statedFlow } from "../../calc/fluids/stated-flow.ts";
import type { SI } from "../../calc/quantity/domain-error.ts";
import { type Kind, kinds } from "../../calc/quantity/kinds.ts";
import { type Calculator, defineCalculator, type Field, type Outcome } from "./engine/calculator.ts";

/** The kinds that a shop converts: symbol, example, least and most. */
const converted: Partial<Record<Kind, readonly [string, SI, SI, SI]>> = {
  pressure: ["p", 200_000, 0, 1e9],
  pressureDifference: ["Delta_p", 6000, -1e9, 1e9],
  temperature: ["T", 323.15, 0, 5000],
  temperatureDifference: ["Delta_T", 25, -5000, 5000],
  massFlow: ["m_a", 0.154, -1e6, 1e6],
  volumeFlow: ["V_dot", 0.1, -1e6, 1e6],
  density: ["rho", 2.28, 0, 1e5],
  volume: ["V", 0.0044, -1e6, 1e6],
  power: ["W", 235_000, -1e12, 1e12],
  heatFlow: ["Q", 12_000, -1e12, 1e12],
  specificEnergy: ["Delta_h", 102_000, -1e9, 1e9],
  specificHeat: ["c_p", 1005, -1e7, 1e7],
  specificFuel: ["b", 210 / 3.6e9, 0, 1e-3],
  rotationalSpeed: ["n", 2000 / 60, -1e5, 1e5],
  humidityRatio: ["w", 0.01, 0, 10],
  altitude: ["z", 1850, -1e5, 1e6],
  speed: ["c", 30, -1e6, 1e6],
};

const title = (kind: Kind) => `${kinds[kind].name[0]?.toUpperCase()}${kinds[kind].name.slice(1)}`;

const fields: Record<string, Field> = {};
const outcomes: Record<string, Outcome> = {};
for (const [kind, [symbol, start, least, most]] of Object.entries(converted) as [
  Kind,
  readonly [string, SI, SI, SI],
][]) {
  const when = { quantity: [kind] };
  fields[kind] = { label: title(kind), symbol, kind, start, limits: [least, most], help: "", when };
  outcomes[kind] = { label: title(kind), symbol, kind, when, converts: kind };
}

const stated = { quantity: ["stated"] } as const;

export default defineCalculator({
  id: "unit-converter",
  title: "Unit converter",
  group: "Units",
  asks: "What is this number in the other units, and what mass does a “standard” volume flow carry?",
  inputs: {
    quantity: {
      label: "What kind of quantity",
      options: {
        ...Object.fromEntries(
          Object.keys(converted).map((kind) => [kind, title(kind as Kind).toLowerCase()]),
        ),
        stated: "air flow, from a volume flow at stated conditions",
      },
      start: "pressure",
      help: "",
    },
    ...fields,
    V_dot: {
      label: "Volume flow",
      symbol: "V_dot",
      kind: "volumeFlow",
      start: 0.1,
      limits: [0, 1e6],
      help: "",
      when: stated,
    },
    conditions: {
      label: "Stated at",
      options: {
        ...Object.fromEntries(Object.entries(statedConditions).map(([id, { name }]) => [id, name])),
        meter: "the pressure and temperature at the meter",
      },
      start: "sixty",
      help: "“Standard” and “normal” mean different conditions in different places. Ask which.",
      when: stated,
    },
    p_meter: {
      label: "Pressure at the meter",
      symbol: "p",
      kind: "pressure",
      start: 101_325,
      limits: [10_000, 2_000_000],
      help: "",
      when: { ...stated, conditions: ["meter"] },
    },
    T_meter: {
      label: "Temperature at the meter",
      symbol: "T",
      kind: "temperature",
      start: 293.15,
      limits: [223.15, 573.15],
      help: "",
      when: { ...stated, conditions: ["meter"] },
    },
  },
  results: {
    ...outcomes,
    m_a: { label: "Mass flow of dry air", symbol: "m_a", kind: "massFlow", when: stated },
    rho: { label: "Density at those conditions", symbol: "rho", kind: "density", when: stated },
  },
  relations: [gasConstant, density, massFlow],
  model: (all, trace) => {
    const given = all as Readonly<Record<string, SI | string>>;
    const kind = given["quantity"] as string;
    const found: Record<string, SI> = {};
    if (kind === "stated") {
      Object.assign(
        found,
        statedFlow(
          {
            V_dot: given["V_dot"] as SI,
            conditions: given["conditions"] as StatedFlowGiven["conditions"],
            p: given["p_meter"] as SI,
            T: given["T_meter"] as SI,
          },
          trace,
        ),
      );
    } else found[kind] = given[kind] as SI;
    return found as ReturnType<Calculator["model"]>;
  },
  pictures: [{ draw: "units", title: "The same in every unit" }],
});
