import { type CondensationGiven, condensationInCoolers } from "../../calc/charge/condensation-in-coolers.ts";
import { dryAirFlow } from "../../calc/engine/dry-air-flow.ts";
import { moistAirFlow } from "../../calc/engine/moist-air-flow.ts";
import { coldWallCondensate } from "../../calc/exchanger/cold-wall-condensate.ts";
import { condensateFlow } from "../../calc/exchanger/condensate-flow.ts";
import { duty } from "../../calc/exchanger/duty.ts";
import { latentDuty } from "../../calc/exchanger/latent-duty.ts";
import { latentShare } from "../../calc/exchanger/latent-share.ts";
import { sensibleDuty } from "../../calc/exchanger/sensible-duty.ts";
import { aboveDewPoint } from "../../calc/fluids/above-dew-point.ts";
import { enthalpy } from "../../calc/fluids/enthalpy.ts";
import { latentHeat } from "../../calc/fluids/latent-heat.ts";
import { volumeFlow } from "../../calc/fluids/volume-flow.ts";
import { compressedWaterDensity } from "../../calc/fluids/water/compressed-water-density.ts";
import { type Calculator, defineCalculator } from "./engine/calculator.ts";
import { ambientInputs, isMoist } from "./parts/ambient.ts";
import { chargeInputs } from "./parts/charge.ts";
import { coolerInputs, waterInletField } from "./parts/cooler.ts";
import { humidityRelations } from "./parts/relations.ts";

const two = { stages: ["two"] } as const;

export default defineCalculator({
  id: "condensation",
  title: "Condensation in the coolers",
  group: "Cooling",
  asks: "Does water condense in the charge coolers, how much, and where is the dew point at charge pressure?",
  inputs: {
    ...ambientInputs,
    T_0: { ...ambientInputs.T_0, start: 306.15 },
    humidity: { ...ambientInputs.humidity, start: "relative" },
    varphi_0: { ...ambientInputs.varphi_0, start: 0.85 },
    m_a: { ...chargeInputs.m_a, start: 1.1 },
    stages: {
      label: "Coolers",
      options: { one: "one", two: "two, with a second compressor between" },
      start: "one",
      help: "",
    },
    T_2: { ...chargeInputs.T_2, start: 443.15, heading: "Cooler" },
    T_3: { ...coolerInputs.T_3, label: "Air temperature after the cooler", start: 311.15 },
    p_3: {
      label: "Pressure after the cooler",
      symbol: "p_3",
      kind: "pressure",
      start: 280_000,
      limits: [20_000, 2_000_000],
      typical: [90_000, 600_000],
      help: "It sets the dew point.",
    },
    T_w_in: { ...waterInletField, symbol: "T_w_in", start: 301.15, help: "The coldest its walls can be." },
    T_4: {
      ...chargeInputs.T_2,
      label: "Air temperature before the second cooler",
      symbol: "T_4",
      start: 423.15,
      heading: "Second cooler",
      when: two,
    },
    T_5: {
      ...coolerInputs.T_3,
      label: "Air temperature after the second cooler",
      symbol: "T_5",
      start: 313.15,
      when: two,
    },
    p_5: {
      label: "Pressure after the second cooler",
      symbol: "p_5",
      kind: "pressure",
      start: 450_000,
      limits: [20_000, 3_000_000],
      typical: [90_000, 900_000],
      help: "",
      when: two,
    },
    T_w_in_45: {
      ...waterInletField,
      symbol: "T_w_in_45",
      label: "Cooling water of the second, inlet temperature",
      start: 301.15,
      when: two,
    },
  },
  results: {
    m_c: { label: "Water condensing, by the mean of the air", symbol: "m_c", kind: "massFlow" },
    V_c: { label: "Water to be drained, by the mean of the air", symbol: "V_c", kind: "liquidFlow" },
    m_c_wall: { label: "If all walls were as cold as the water", symbol: "m_c", kind: "massFlow" },
    T_dp: {
      label: "Dew point of the charge in the cooler",
      symbol: "T_dp_3",
      kind: "temperature",
      when: isMoist,
    },
    airAbove: {
      label: "Air after the cooler, above that dew point (negative: below)",
      symbol: "Delta_T_dp",
      kind: "temperatureDifference",
      when: isMoist,
    },
    waterAbove: {
      label: "Water at the inlet, above that dew point (negative: below)",
      symbol: "Delta_T_dp",
      kind: "temperatureDifference",
      when: isMoist,
    },
    Q: { label: "Heat taken out by the cooler", symbol: "Q", kind: "heatFlow" },
    Q_l: { label: "Part of it from condensing", symbol: "Q_l", kind: "heatFlow" },
    x_l: { label: "Share of the duty from condensing", symbol: "x_l", kind: "fraction" },
    w_3: { label: "Humidity ratio after the cooler", symbol: "w_3", kind: "humidityRatio" },
    m_c_45: {
      label: "Water condensing in the second cooler",
      symbol: "m_c_45",
      kind: "massFlow",
      when: two,
      heading: "Second cooler",
    },
    V_c_45: { label: "Water to be drained there", symbol: "V_c", kind: "liquidFlow", when: two },
    m_c_wall_45: {
      label: "There, if all walls were as cold as the water",
      symbol: "m_c_45",
      kind: "massFlow",
      when: two,
    },
    T_dp_45: {
      label: "Dew point of the charge in the second cooler",
      symbol: "T_dp_5",
      kind: "temperature",
      when: { ...two, ...isMoist },
    },
    airAbove_45: {
      label: "Air after the second cooler, above that dew point",
      symbol: "Delta_T_dp",
      kind: "temperatureDifference",
      when: { ...two, ...isMoist },
    },
    waterAbove_45: {
      label: "Water at its inlet, above that dew point",
      symbol: "Delta_T_dp",
      kind: "temperatureDifference",
      when: { ...two, ...isMoist },
    },
    Q_45: { label: "Heat taken out by the second cooler", symbol: "Q_45", kind: "heatFlow", when: two },
    w_5: {
      label: "Humidity ratio after the second cooler",
      symbol: "w_5",
      kind: "humidityRatio",
      when: two,
    },
    w_0: {
      label: "Ambient humidity ratio",
      symbol: "w_0",
      kind: "humidityRatio",
      heading: "Ambient air",
    },
    T_dp_ambient: {
      label: "Dew point of the ambient air",
      symbol: "T_dp_0",
      kind: "temperature",
      when: isMoist,
    },
  },
  relations: [
    ...humidityRelations,
    dryAirFlow,
    moistAirFlow,
    condensateFlow,
    coldWallCondensate,
    aboveDewPoint,
    enthalpy,
    sensibleDuty,
    latentHeat,
    latentDuty,
    latentShare,
    duty,
    compressedWaterDensity,
    volumeFlow,
  ],
  model: (given, trace) => {
    const { w_0, T_dp_0, first, second } = condensationInCoolers(
      given as unknown as CondensationGiven,
      trace,
    );
    return {
      ...first,
      w_3: first.w,
      w_0,
      T_dp_ambient: T_dp_0,
      m_c_45: second?.m_c,
      V_c_45: second?.V_c,
      m_c_wall_45: second?.m_c_wall,
      T_dp_45: second?.T_dp,
      airAbove_45: second?.airAbove,
      waterAbove_45: second?.waterAbove,
      Q_45: second?.Q,
      w_5: second?.w,
    } as unknown as ReturnType<Calculator["model"]>;
  },
  pictures: [
    {
      draw: "chart",
      vary: "T_3",
      span: [283.15, 353.15],
      x: "T_3",
      y: "m_c",
      curves: [
        { label: "air on average" },
        { label: "all walls as cold as the water", dash: "alternative", y: "m_c_wall" },
      ],
      title: "Condensed water against the temperature after the cooler. The ring is the state above.",
    },
  ],
});
