import { filmRatio } from "../../calc/exchanger/film/film-ratio.ts";
import { flowForCapacityRate } from "../../calc/exchanger/flow-for-capacity-rate.ts";
import { movingFromFields } from "../../calc/exchanger/moving-from-fields.ts";
import { standInByLiquid } from "../../calc/exchanger/stand-in-by-liquid.ts";
import { massFlow } from "../../calc/fluids/mass-flow.ts";
import { volumeFlow } from "../../calc/fluids/volume-flow.ts";
import { type Calculator, defineCalculator } from "./engine/calculator.ts";
import { chargeInputs } from "./parts/charge.ts";
import { arrangementFrom, arrangementInputs, waterFlowInputs } from "./parts/exchanger.ts";
import { movingCoolantInputs, movingInputs } from "./parts/moving.ts";
import { freshFilmRelations, movingPassagesRelations } from "./parts/moving-relations.ts";

const { known, UA_a_ref, m_a_ref, n_a, d, a_ch, b_ch, N_ch, L, N_p, R_wall, r_foul } = movingInputs;
const { coolant, T_w_in, p_w, S, x_g } = movingCoolantInputs;
const { round, rectangular } = known.options;
const { seawater, "ethylene-glycol": ethylene, "propylene-glycol": propylene } = coolant.options;

export default defineCalculator({
  id: "water-for-coolant",
  title: "Fresh water for another coolant",
  group: "Matching",
  asks: "How much fresh water, and how warm, makes a cooler do what it does with seawater or glycol?",
  inputs: {
    ...arrangementInputs,
    known: { ...known, options: { round, rectangular } },
    UA_a_ref,
    m_a_ref,
    n_a,
    d,
    a_ch,
    b_ch,
    N_ch,
    L,
    N_p,
    R_wall,
    r_foul,
    m_a: chargeInputs.m_a,
    T_2: chargeInputs.T_2,
    coolant: {
      ...coolant,
      label: "Liquid that it stands in for",
      options: { seawater, "ethylene-glycol": ethylene, "propylene-glycol": propylene },
      start: "ethylene-glycol",
      heading: "The cooler's own liquid",
    },
    S,
    x_g,
    T_w_in: { ...T_w_in, label: "Own liquid at the inlet", start: 318.15 },
    flow: { ...waterFlowInputs.flow, label: "Its flow given as" },
    m_w: { ...waterFlowInputs.m_w, label: "Its flow", start: 4 },
    V_w: { ...waterFlowInputs.V_w, label: "Its flow", start: 0.0039 },
    p_w: {
      ...p_w,
      label: "Fresh water pressure",
      when: {},
      heading: "Fresh water in the cell",
      help: "Absolute, at the outlet. Decides when it boils.",
    },
  },
  results: {
    T_w_in_cell: { label: "Fresh water at the inlet", symbol: "T_w_in", kind: "temperature" },
    V_w_cell: { label: "Fresh water flow", symbol: "V_w", kind: "liquidFlow" },
    m_w_cell: { label: "Fresh water flow, by mass", symbol: "m_w", kind: "massFlow" },
    T_3: { label: "Air after the cooler, with either", symbol: "T_3", kind: "temperature" },
    T_3_same: {
      label: "Air, were the fresh water no warmer",
      symbol: "T_3",
      kind: "temperature",
    },
    Q: { label: "Duty, with either", symbol: "Q", kind: "heatFlow" },
    C_w: { label: "Heat-capacity rate, of either", symbol: "C_w", kind: "capacityRate" },
    T_w_out: {
      label: "Own liquid at the outlet",
      symbol: "T_w_out",
      kind: "temperature",
      heading: "What still differs",
    },
    T_w_out_cell: { label: "Fresh water at the outlet", symbol: "T_w_out", kind: "temperature" },
    T_wall: { label: "Hot wall, own liquid", symbol: "T_wall", kind: "temperature" },
    T_wall_cell: { label: "Hot wall, fresh water", symbol: "T_wall", kind: "temperature" },
    Re: { label: "Reynolds number, own liquid", symbol: "Re", kind: "ratio" },
    Re_cell: { label: "Reynolds number, fresh water", symbol: "Re", kind: "ratio" },
    alpha: { label: "Heat transfer, own liquid", symbol: "alpha", kind: "filmCoefficient" },
    alpha_cell: { label: "Heat transfer, fresh water", symbol: "alpha", kind: "filmCoefficient" },
    r_alpha: { label: "Heat transfer, fresh over own", symbol: "r_alpha", kind: "ratio" },
    Delta_T_sat: {
      label: "Fresh water outlet, below boiling",
      symbol: "Delta_T_sat",
      kind: "temperatureDifference",
    },
    T_w_lam: {
      label: "Inlet at which the own liquid is just laminar",
      symbol: "T_w_in",
      kind: "temperature",
      inPicture: true,
    },
    T_w_turb: {
      label: "Inlet at which the own liquid is just turbulent",
      symbol: "T_w_in",
      kind: "temperature",
      inPicture: true,
    },
  },
  relations: [
    ...movingPassagesRelations.filter((one) => !freshFilmRelations.includes(one)),
    massFlow,
    volumeFlow,
    flowForCapacityRate,
    filmRatio,
  ],
  model: (given, trace) => {
    const fields = given as unknown as Parameters<typeof movingFromFields>[0];
    const cooler = { ...given, ...movingFromFields(fields, trace), arrangement: arrangementFrom(given) };
    return standInByLiquid(
      cooler as unknown as Parameters<typeof standInByLiquid>[0],
      trace,
    ) as unknown as ReturnType<Calculator["model"]>;
  },
  pictures: [
    {
      draw: "chart",
      vary: "T_w_in",
      span: [280.15, 333.15],
      x: "T_w_in",
      y: "T_3",
      bands: [{ from: "T_w_lam", to: "T_w_turb", label: "own liquid between laminar and turbulent" }],
      curves: [
        { label: "own liquid" },
        { label: "fresh water of the same heat-capacity rate", dash: "alternative", y: "T_3_same" },
      ],
      title:
        "Air after the cooler against the inlet temperature of the liquid. Go level from the ring to the other curve: there the fresh water has to enter.",
    },
  ],
  also: [
    {
      draw: "chart",
      vary: "T_w_in",
      span: [280.15, 333.15],
      x: "T_w_in",
      y: "T_w_in_cell",
      bands: [{ from: "T_w_lam", to: "T_w_turb", label: "own liquid between laminar and turbulent" }],
      curves: [{ label: "" }],
      title:
        "How warm the fresh water has to enter, against the inlet temperature of the cooler's own liquid.",
    },
  ],
});
