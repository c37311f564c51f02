import { impactPressure } from "../../calc/flow/impact-pressure.ts";
import { probeError } from "../../calc/flow/probe-error.ts";
import { probeReading } from "../../calc/flow/probe-reading.ts";
import { staticTotal } from "../../calc/flow/static-total.ts";
import { totalEnthalpy } from "../../calc/flow/total-enthalpy.ts";
import { totalPressure } from "../../calc/flow/total-pressure.ts";
import { totalTemperatureFromProbe } from "../../calc/flow/total-temperature-from-probe.ts";
import { type Calculator, defineCalculator } from "./engine/calculator.ts";
import { chargeInputs, moistureInputs } from "./parts/charge.ts";
import { flowingAirRelations } from "./parts/flow-relations.ts";

export default defineCalculator({
  id: "static-total",
  title: "Static and total",
  group: "Flow",
  asks: "What do a wall tap and a bare probe miss in a fast stream?",
  inputs: {
    m_a: { ...chargeInputs.m_a, start: 0.25, heading: "Stream" },
    section: {
      label: "Size given as",
      options: { bore: "bore", area: "area" },
      start: "bore",
      help: "",
    },
    d: {
      label: "Bore",
      symbol: "d",
      kind: "length",
      start: 0.09,
      limits: [0.002, 5],
      typical: [0.025, 0.5],
      help: "",
      when: { section: ["bore"] },
    },
    A: {
      label: "Area",
      symbol: "A",
      kind: "area",
      start: 0.006,
      limits: [3e-6, 20],
      typical: [0.0005, 0.2],
      help: "",
      when: { section: ["area"] },
    },
    ...moistureInputs,
    pressure: {
      label: "Pressure taken",
      options: { static: "at a hole in the wall: static", total: "by a tube that faces the stream: total" },
      start: "static",
      help: "",
      heading: "Readings",
    },
    p: {
      label: "Pressure",
      symbol: "p",
      kind: "pressure",
      start: 98_000,
      limits: [10_000, 2_000_000],
      typical: [60_000, 600_000],
      help: "",
    },
    temperature: {
      label: "Temperature taken",
      options: {
        probe: "as a probe in the stream reads",
        total: "total: air at rest, as in the room or a plenum",
        static: "static, worked out elsewhere",
      },
      start: "probe",
      help: "",
    },
    T: {
      label: "Temperature",
      symbol: "T",
      kind: "temperature",
      start: 303.15,
      limits: [223.15, 773.15],
      typical: [243.15, 523.15],
      help: "",
    },
    r_rec: {
      label: "Recovery factor of the probe",
      symbol: "r_rec",
      kind: "fraction",
      start: 0.68,
      limits: [0.2, 1],
      typical: [0.6, 1],
      help: "A bare wire across the stream 0.68, along it 0.86. Common practice: a shielded probe 0.95 to 0.99.",
    },
  },
  results: {
    p_imp: {
      label: "Impact pressure, total less static",
      symbol: "p_imp",
      kind: "pressureDifference",
    },
    p_tot: { label: "Total pressure", symbol: "p_tot", kind: "pressure" },
    p_stat: { label: "Static pressure", symbol: "p_stat", kind: "pressure" },
    T_tot: { label: "Total temperature", symbol: "T_tot", kind: "temperature" },
    T_stat: { label: "Static temperature", symbol: "T_stat", kind: "temperature" },
    T_rec: { label: "Reading of the probe", symbol: "T_rec", kind: "temperature" },
    Delta_T_rec: {
      label: "The probe reads off the total temperature by",
      symbol: "Delta_T_rec",
      kind: "temperatureDifference",
    },
    c: { label: "Speed", symbol: "c", kind: "speed" },
    Ma: { label: "Mach number", symbol: "Ma", kind: "ratio" },
    rho: { label: "Density, static", symbol: "rho", kind: "density" },
    m_star: {
      label: "Largest flow of this area",
      symbol: "m_star",
      kind: "massFlow",
      when: { pressure: ["total"] },
    },
    m_star_held: {
      label: "Largest flow of this area, if the static pressure stayed",
      symbol: "m_star",
      kind: "massFlow",
      when: { pressure: ["static"] },
    },
  },
  relations: [
    ...flowingAirRelations,
    totalEnthalpy,
    totalPressure,
    totalTemperatureFromProbe,
    impactPressure,
    probeReading,
    probeError,
  ],
  model: (given, trace) => {
    const found = staticTotal(given as unknown as Parameters<typeof staticTotal>[0], trace);
    return { ...found, m_star_held: found.m_star } as unknown as ReturnType<Calculator["model"]>;
  },
  pictures: [
    {
      draw: "chart",
      vary: "m_a",
      span: [0.02, 0.6],
      x: "m_a",
      y: "p_imp",
      curves: [{ label: "" }],
      title:
        "Total pressure above static, against flow: in slow air twice the flow, about four times the difference.",
    },
  ],
});
