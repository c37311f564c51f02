import type { Source } from "./relation/relation.ts";

/** `unit` is in mathjs syntax, "1" for a pure number. `symbol` is an entry of calc/symbols.ts. */
export interface Constant {
  readonly value: number;
  readonly unit: string;
  readonly symbol: string;
  readonly exact: boolean;
  readonly source: Source;
}

const weights: Source = {
  key: "iupac-atomic-weights-2005",
  where: "standard atomic weights, summed over the atoms",
  standing: "from memory",
};
const abridgedWeights: Source = {
  key: "iupac-atomic-weights-2013",
  where: "conventional atomic weights, five digits",
  standing: "from memory",
};
const composition: Source = {
  key: "us-standard-atmosphere-1976",
  where:
    "composition of clean dry air; carbon dioxide as it is now, 400 parts per million, and the rest counted as oxygen",
  standing: "from memory",
};
const atmosphere: Source = {
  key: "us-standard-atmosphere-1976",
  where: "defining constants",
  standing: "open reference read",
};
const psychrometer: Source = {
  key: "ashrae-2017",
  where: "chapter 1, equations 30 to 35",
  standing: "open reference read",
};

// CODATA 2018: the product of two defining constants of the SI, so exact.
const R_u = 8.31446261815324;
const M = { N2: 0.0280134, O2: 0.0319988, Ar: 0.039948, CO2: 0.0440095, w: 0.01801528 };
const parts = { N2: 0.78084, O2: 0.20942, Ar: 0.00934, CO2: 0.0004 };
const sum = parts.N2 + parts.O2 + parts.Ar + parts.CO2;
const x = { N2: parts.N2 / sum, O2: parts.O2 / sum, Ar: parts.Ar / sum, CO2: parts.CO2 / sum };
const M_a = x.N2 * M.N2 + x.O2 * M.O2 + x.Ar * M.Ar + x.CO2 * M.CO2;

const g_0 = 9.80665;
const beta_T = 0.0065;
const R_sa = 8.31432 / 0.0289644;
const psi_std = g_0 / (R_sa * beta_T);

const flowCoefficients = (where: string): Source => ({
  key: "iec-60534-2-1",
  where,
  standing: "from memory",
});

const derived = (where: string): Source => ({ key: "bipm-si-2019", where, standing: "derived here" });

const define = <K extends string>(entries: Record<K, Omit<Constant, "symbol">>) =>
  Object.fromEntries(
    Object.entries<Omit<Constant, "symbol">>(entries).map(([key, entry]) => [key, { ...entry, symbol: key }]),
  ) as Readonly<Record<K, Constant>>;

/**
 * Every constant of nature, of a standard, or of the air of this reference, once. The keys are used in expressions.
 * What follows from others (`M_a`, `R_a`, `R_w`) is computed from them.
 */
export const constants = define({
  R_u: {
    value: R_u,
    unit: "J/(mol K)",
    exact: true,
    source: { key: "codata-2018", where: "molar gas constant", standing: "from memory" },
  },
  M_N2: { value: M.N2, unit: "kg/mol", exact: false, source: weights },
  M_O2: { value: M.O2, unit: "kg/mol", exact: false, source: weights },
  M_Ar: { value: M.Ar, unit: "kg/mol", exact: false, source: weights },
  M_CO2: { value: M.CO2, unit: "kg/mol", exact: false, source: weights },
  M_w: { value: M.w, unit: "kg/mol", exact: false, source: weights },
  M_C: { value: 0.012011, unit: "kg/mol", exact: false, source: abridgedWeights },
  M_H: { value: 0.00100794, unit: "kg/mol", exact: false, source: weights },
  M_O: { value: 0.015999, unit: "kg/mol", exact: false, source: abridgedWeights },
  x_N2: { value: x.N2, unit: "1", exact: false, source: composition },
  x_O2: { value: x.O2, unit: "1", exact: false, source: composition },
  x_Ar: { value: x.Ar, unit: "1", exact: false, source: composition },
  x_CO2: { value: x.CO2, unit: "1", exact: false, source: composition },
  M_a: {
    value: M_a,
    unit: "kg/mol",
    exact: false,
    source: derived("mole fractions times molar masses of nitrogen, oxygen, argon and carbon dioxide"),
  },
  R_a: {
    value: R_u / M_a,
    unit: "J/(kg K)",
    exact: false,
    source: derived("molar gas constant over the molar mass of dry air"),
  },
  R_w: {
    value: R_u / M.w,
    unit: "J/(kg K)",
    exact: false,
    source: derived("molar gas constant over the molar mass of water"),
  },
  T_C: {
    value: 273.15,
    unit: "K",
    exact: true,
    source: { key: "bipm-si-2019", where: "Celsius temperature", standing: "from memory" },
  },
  r_S: {
    value: 1.004715,
    unit: "1",
    exact: false,
    source: {
      key: "teos-10",
      where: "reference-composition salinity, 35.16504 g/kg over 35",
      standing: "open reference read",
    },
  },
  rho_EG: {
    value: 1113,
    unit: "kg/m^3",
    exact: false,
    source: {
      key: "ashrae-2017",
      where: "chapter 31, pure ethylene glycol at 20 °C",
      standing: "from memory",
    },
  },
  rho_PG: {
    value: 1036,
    unit: "kg/m^3",
    exact: false,
    source: {
      key: "ashrae-2017",
      where: "chapter 31, pure propylene glycol at 20 °C",
      standing: "from memory",
    },
  },
  T_t: {
    value: 273.16,
    unit: "K",
    exact: false,
    source: { key: "iapws-r14-08", where: "triple point", standing: "open reference read" },
  },
  p_t: {
    value: 611.657,
    unit: "Pa",
    exact: false,
    source: { key: "iapws-r14-08", where: "triple point", standing: "open reference read" },
  },
  g_0: {
    value: g_0,
    unit: "m/s^2",
    exact: true,
    source: { key: "bipm-si-2019", where: "standard acceleration of gravity", standing: "from memory" },
  },
  T_sl: { value: 288.15, unit: "K", exact: true, source: atmosphere },
  p_sl: { value: 101325, unit: "Pa", exact: true, source: atmosphere },
  beta_T: { value: beta_T, unit: "K/m", exact: true, source: atmosphere },
  r_E: { value: 6356766, unit: "m", exact: true, source: atmosphere },
  psi_std: {
    value: psi_std,
    unit: "1",
    exact: true,
    source: {
      key: "us-standard-atmosphere-1976",
      where: "g_0 / (R_std β_T), from the defining constants",
      standing: "derived here",
    },
  },
  // The standard keeps the gas constant and molar mass of its time; with today's it would no longer be the standard.
  R_sa: { value: R_sa, unit: "J/(kg K)", exact: true, source: atmosphere },
  c_air: { value: 1006, unit: "J/(kg K)", exact: false, source: psychrometer },
  c_vap: { value: 1860, unit: "J/(kg K)", exact: false, source: psychrometer },
  h_fg0: {
    value: 2500900,
    unit: "J/kg",
    exact: false,
    source: {
      key: "iapws-if97",
      where: "straight line through the heat of vaporisation, 0 to 60 °C",
      standing: "derived here",
    },
  },
  c_fg: {
    value: 2361,
    unit: "J/(kg K)",
    exact: false,
    source: {
      key: "iapws-if97",
      where: "straight line through the heat of vaporisation, 0 to 60 °C",
      standing: "derived here",
    },
  },
  rho_n: { value: 999.1, unit: "kg/m^3", exact: true, source: flowCoefficients("density of water at 15 °C") },
  Delta_p_n: {
    value: 1e5,
    unit: "Pa",
    exact: true,
    source: flowCoefficients("definition of the flow coefficient"),
  },
  // N2 = 0.0016 and N4 = 0.0707 go with m³/h and mm: as speeds they leave the formulas free of units.
  c_n: {
    value: Math.sqrt(0.0016) * (1e6 / 3600),
    unit: "m/s",
    exact: true,
    source: flowCoefficients("numerical constant N2 for m³/h and mm, in m/s"),
  },
  c_Re: {
    value: 3600 * 0.0707 ** 2,
    unit: "m/s",
    exact: true,
    source: flowCoefficients("numerical constant N4 for m³/h, mm and m²/s, in m/s"),
  },
  l_in: {
    value: 0.0254,
    unit: "m",
    exact: true,
    source: { key: "nist-sp811", where: "international inch", standing: "from memory" },
  },
});
