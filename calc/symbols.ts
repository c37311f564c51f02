import type { Kind } from "./quantity/kinds.ts";

/** `tex` is how a symbol is typeset, `plain` how it is written where TeX cannot go, `name` what it means. */
export interface SymbolEntry {
  readonly tex: string;
  readonly plain: string;
  readonly name: string;
  readonly kind?: Kind;
}

const entry = (tex: string, plain: string, name: string, kind?: Kind): SymbolEntry =>
  kind ? { tex, plain, name, kind } : { tex, plain, name };

/**
 * Every symbol once, with one meaning site-wide. Stations of the air path: 0 ambient, 1 compressor inlet, 2 compressor
 * outlet, 3 cooler outlet, m manifold. Subscripts `in` and `out` are roles: each use says which place they stand for.
 */
export const symbols = {
  // state of the air
  p: entry("p", "p", "pressure, absolute", "pressure"),
  T: entry("T", "T", "temperature", "temperature"),
  rho: entry(String.raw`\rho`, "ρ", "density", "density"),
  rho_da: entry(String.raw`\rho_\mathrm{da}`, "ρ_da", "density of the dry air in moist air", "density"),
  v: entry("v", "v", "specific volume", "specificVolume"),
  h: entry("h", "h", "enthalpy", "specificEnergy"),
  s_o: entry(String.raw`s^\circ`, "s°", "temperature part of the entropy", "specificHeat"),
  w: entry("w", "w", "humidity ratio, vapour per dry air", "humidityRatio"),
  c_p: entry("c_p", "c_p", "heat capacity at constant pressure", "specificHeat"),
  kappa: entry(String.raw`\kappa`, "κ", "heat-capacity ratio", "ratio"),
  R_m: entry(String.raw`R_\mathrm{m}`, "R_m", "gas constant of moist air", "specificHeat"),
  mu: entry(String.raw`\mu`, "μ", "viscosity", "viscosity"),
  k: entry("k", "k", "thermal conductivity", "conductivity"),
  Delta_mu: entry(String.raw`\Delta\mu`, "Δμ", "what density adds to the viscosity", "viscosity"),
  Delta_k: entry(String.raw`\Delta k`, "Δk", "what density adds to the conductivity", "conductivity"),
  B: entry("B", "B", "second virial coefficient per kilogram", "specificVolume"),
  Z: entry("Z", "Z", "compressibility factor", "ratio"),
  Delta_c_p: entry(String.raw`\Delta c_p`, "Δc_p", "what pressure adds to the heat capacity", "specificHeat"),
  V_dot: entry(String.raw`\dot{V}`, "V̇", "volume flow at stated conditions", "volumeFlow"),
  Delta_T: entry(String.raw`\Delta T`, "ΔT", "temperature difference", "temperatureDifference"),
  c: entry("c", "c", "speed of the air", "speed"),

  // humidity
  varphi: entry(String.raw`\varphi`, "φ", "relative humidity", "fraction"),
  p_v: entry(String.raw`p_\mathrm{v}`, "p_v", "vapour pressure", "pressure"),
  p_ws: entry(String.raw`p_\mathrm{ws}`, "p_ws", "saturation pressure of water", "pressure"),
  p_ws_l: entry(String.raw`p_{\mathrm{ws},\ell}`, "p_ws,l", "vapour pressure over liquid water", "pressure"),
  p_ws_i: entry(String.raw`p_{\mathrm{ws,i}}`, "p_ws,i", "vapour pressure over ice", "pressure"),
  f_e: entry(String.raw`f_\mathrm{e}`, "f_e", "enhancement factor of moist air", "ratio"),
  w_s: entry(String.raw`w_\mathrm{s}`, "w_s", "humidity ratio of saturated air", "humidityRatio"),
  T_dp: entry(String.raw`T_\mathrm{dp}`, "T_dp", "dew point", "temperature"),
  T_wb: entry(String.raw`T_\mathrm{wb}`, "T_wb", "wet-bulb temperature", "temperature"),
  L_wb: entry(String.raw`L_\mathrm{wb}`, "L_wb", "latent heat at the wet bulb", "specificEnergy"),
  h_fg: entry(String.raw`h_\mathrm{fg}`, "h_fg", "latent heat of condensing water", "specificEnergy"),

  // atmosphere
  z: entry("z", "z", "elevation above sea level", "altitude"),
  H: entry("H", "H", "geopotential altitude", "altitude"),
  H_p: entry("H_p", "H_p", "pressure altitude", "altitude"),
  H_Q: entry(String.raw`H_\mathrm{Q}`, "H_Q", "pressure altitude of the sea-level setting", "altitude"),
  T_std: entry(String.raw`T_\mathrm{std}`, "T_std", "temperature of the standard atmosphere", "temperature"),
  p_std: entry(String.raw`p_\mathrm{std}`, "p_std", "pressure of the standard atmosphere", "pressure"),
  p_Q: entry(String.raw`p_\mathrm{Q}`, "p_Q", "barometer corrected to sea level", "pressure"),
  Delta_p_std: entry(
    String.raw`\Delta p_\mathrm{std}`,
    "Δp_std",
    "barometer above the standard atmosphere",
    "pressureDifference",
  ),
  p_g: entry(String.raw`p_\mathrm{g}`, "p_g", "gauge pressure", "gaugePressure"),

  // roles in a component: what enters and what leaves
  p_in: entry(String.raw`p_\mathrm{in}`, "p_in", "pressure at the inlet, absolute", "pressure"),
  p_out: entry(String.raw`p_\mathrm{out}`, "p_out", "pressure at the outlet, absolute", "pressure"),
  Delta_p: entry(String.raw`\Delta p`, "Δp", "pressure loss", "pressureDifference"),
  T_in: entry(String.raw`T_\mathrm{in}`, "T_in", "temperature at the inlet", "temperature"),
  T_out: entry(String.raw`T_\mathrm{out}`, "T_out", "temperature at the outlet", "temperature"),
  T_s: entry(String.raw`T_\mathrm{s}`, "T_s", "temperature after ideal compression", "temperature"),
  T_out_other: entry(
    String.raw`T_\mathrm{out}^{*}`,
    "T_out*",
    "temperature at the outlet by the other heat-capacity model",
    "temperature",
  ),
  T_w_in: entry(
    String.raw`T_\mathrm{w,in}`,
    "T_w,in",
    "temperature of the water at its inlet",
    "temperature",
  ),
  h_in: entry(String.raw`h_\mathrm{in}`, "h_in", "enthalpy at the inlet", "specificEnergy"),
  h_out: entry(String.raw`h_\mathrm{out}`, "h_out", "enthalpy at the outlet", "specificEnergy"),
  h_s: entry(String.raw`h_\mathrm{s}`, "h_s", "enthalpy after ideal compression", "specificEnergy"),
  s_in: entry(
    String.raw`s^\circ_\mathrm{in}`,
    "s°_in",
    "temperature part of the entropy at the inlet",
    "specificHeat",
  ),
  s_out: entry(
    String.raw`s^\circ_\mathrm{out}`,
    "s°_out",
    "temperature part of the entropy at the outlet",
    "specificHeat",
  ),
  rho_in: entry(String.raw`\rho_\mathrm{in}`, "ρ_in", "density at the inlet", "density"),
  rho_out: entry(String.raw`\rho_\mathrm{out}`, "ρ_out", "density at the outlet", "density"),
  w_in: entry(String.raw`w_\mathrm{in}`, "w_in", "humidity ratio at the inlet", "humidityRatio"),
  w_out: entry(String.raw`w_\mathrm{out}`, "w_out", "humidity ratio at the outlet", "humidityRatio"),
  R_m_in: entry(
    String.raw`R_\mathrm{m,in}`,
    "R_m,in",
    "gas constant of moist air at the inlet",
    "specificHeat",
  ),
  R_m_out: entry(
    String.raw`R_\mathrm{m,out}`,
    "R_m,out",
    "gas constant of moist air at the outlet",
    "specificHeat",
  ),

  // compression
  r: entry("r", "r", "pressure ratio of a compressor", "ratio"),
  eta_s: entry(String.raw`\eta_\mathrm{s}`, "η_s", "isentropic efficiency", "fraction"),
  eta_p: entry(String.raw`\eta_\mathrm{p}`, "η_p", "polytropic efficiency", "fraction"),
  Delta_h: entry(String.raw`\Delta h`, "Δh", "work per kilogram, the rise of enthalpy", "specificEnergy"),
  W_c: entry(String.raw`\dot{W}_\mathrm{c}`, "Ẇ_c", "shaft power of the compressor", "power"),
  D_rho: entry(String.raw`D_\rho`, "D_ρ", "density ratio", "ratio"),
  D_rho_uncooled: entry(String.raw`D_{\rho,2}`, "D_ρ,2", "density ratio without the cooler", "ratio"),

  // cooler
  P: entry("P", "P", "temperature effectiveness of the air", "fraction"),
  Q: entry(String.raw`\dot{Q}`, "Q̇", "duty of the cooler", "heatFlow"),
  Q_s: entry(String.raw`\dot{Q}_\mathrm{s}`, "Q̇_s", "heat given off by cooling", "heatFlow"),
  Q_l: entry(String.raw`\dot{Q}_\ell`, "Q̇_l", "heat given off by condensing", "heatFlow"),
  m_c: entry(String.raw`\dot{m}_\mathrm{c}`, "ṁ_c", "condensed water", "massFlow"),

  // engine
  m_a: entry(String.raw`\dot{m}_\mathrm{a}`, "ṁ_a", "air flow, moist", "massFlow"),
  m_a_uncooled: entry(String.raw`\dot{m}_\mathrm{a,2}`, "ṁ_a,2", "air flow without the cooler", "massFlow"),
  m_da: entry(String.raw`\dot{m}_\mathrm{da}`, "ṁ_da", "air flow, dry part", "massFlow"),
  m_f: entry(String.raw`\dot{m}_\mathrm{f}`, "ṁ_f", "fuel flow", "massFlow"),
  eta_v: entry(String.raw`\eta_\mathrm{v}`, "η_v", "volumetric efficiency", "fraction"),
  V_d: entry(String.raw`V_\mathrm{d}`, "V_d", "displacement of the engine", "volume"),
  n: entry("n", "n", "speed of the engine", "rotationalSpeed"),
  n_R: entry(String.raw`n_\mathrm{R}`, "n_R", "revolutions per cycle", "ratio"),
  W_e: entry(String.raw`\dot{W}_\mathrm{e}`, "Ẇ_e", "brake power of the engine", "power"),
  b: entry("b", "b", "brake specific fuel consumption", "specificFuel"),
  lambda: entry(String.raw`\lambda`, "λ", "relative air-fuel ratio", "ratio"),
  AFR_st: entry(String.raw`\mathrm{AFR}_\mathrm{st}`, "AFR_st", "stoichiometric air-fuel ratio", "ratio"),
  M_f: entry(String.raw`M_\mathrm{f}`, "M_f", "molar mass of the fuel", "molarMass"),
  n_C: entry(String.raw`n_\mathrm{C}`, "n_C", "atoms of carbon in the fuel", "ratio"),
  n_H: entry(String.raw`n_\mathrm{H}`, "n_H", "atoms of hydrogen in the fuel", "ratio"),
  n_O: entry(String.raw`n_\mathrm{O}`, "n_O", "atoms of oxygen in the fuel", "ratio"),
  n_O2: entry(String.raw`n_\mathrm{O_2}`, "n_O2", "moles of oxygen per mole of fuel", "ratio"),

  // stations
  p_0: entry("p_0", "p_0", "barometer, absolute pressure at the place itself", "pressure"),
  T_0: entry("T_0", "T_0", "ambient temperature, dry bulb", "temperature"),
  w_0: entry("w_0", "w_0", "ambient humidity ratio", "humidityRatio"),
  rho_0: entry(String.raw`\rho_0`, "ρ_0", "ambient density", "density"),
  rho_da_0: entry(
    String.raw`\rho_\mathrm{da,0}`,
    "ρ_da,0",
    "density of the dry air in the ambient air",
    "density",
  ),
  R_m_0: entry(String.raw`R_\mathrm{m,0}`, "R_m,0", "gas constant of the ambient air", "specificHeat"),
  varphi_0: entry(String.raw`\varphi_0`, "φ_0", "ambient relative humidity", "fraction"),
  p_v_0: entry(String.raw`p_\mathrm{v,0}`, "p_v,0", "ambient vapour pressure", "pressure"),
  T_dp_0: entry(String.raw`T_\mathrm{dp,0}`, "T_dp,0", "ambient dew point", "temperature"),
  T_wb_0: entry(String.raw`T_\mathrm{wb,0}`, "T_wb,0", "ambient wet-bulb temperature", "temperature"),
  Delta_p_01: entry(
    String.raw`\Delta p_{01}`,
    "Δp_01",
    "loss from ambient to the compressor",
    "pressureDifference",
  ),
  p_1: entry("p_1", "p_1", "pressure at the compressor inlet", "pressure"),
  T_1: entry("T_1", "T_1", "temperature at the compressor inlet", "temperature"),
  rho_1: entry(String.raw`\rho_1`, "ρ_1", "density at the compressor inlet", "density"),
  w_1: entry("w_1", "w_1", "humidity ratio at the compressor inlet", "humidityRatio"),
  p_2: entry("p_2", "p_2", "pressure at the compressor outlet", "pressure"),
  T_2: entry("T_2", "T_2", "temperature at the compressor outlet", "temperature"),
  T_2s: entry(
    String.raw`T_\mathrm{2s}`,
    "T_2s",
    "temperature after ideal compression, station 2",
    "temperature",
  ),
  rho_2: entry(String.raw`\rho_2`, "ρ_2", "density at the compressor outlet", "density"),
  w_2: entry("w_2", "w_2", "humidity ratio at the compressor outlet", "humidityRatio"),
  Delta_p_23: entry(
    String.raw`\Delta p_{23}`,
    "Δp_23",
    "loss of the cooler and its ducts",
    "pressureDifference",
  ),
  p_3: entry("p_3", "p_3", "pressure after the cooler", "pressure"),
  T_3: entry("T_3", "T_3", "temperature after the cooler", "temperature"),
  rho_3: entry(String.raw`\rho_3`, "ρ_3", "density after the cooler", "density"),
  w_3: entry("w_3", "w_3", "humidity ratio after the cooler", "humidityRatio"),
  T_dp_3: entry(
    String.raw`T_\mathrm{dp,3}`,
    "T_dp,3",
    "dew point of the charge at its own pressure",
    "temperature",
  ),
  p_m: entry(String.raw`p_\mathrm{m}`, "p_m", "pressure in the manifold", "pressure"),
  T_m: entry(String.raw`T_\mathrm{m}`, "T_m", "temperature in the manifold", "temperature"),
  rho_m: entry(String.raw`\rho_\mathrm{m}`, "ρ_m", "density in the manifold", "density"),

  // constants
  R_u: entry(String.raw`R_\mathrm{u}`, "R_u", "molar gas constant"),
  R_a: entry(String.raw`R_\mathrm{a}`, "R_a", "gas constant of dry air", "specificHeat"),
  R_w: entry(String.raw`R_\mathrm{w}`, "R_w", "gas constant of water vapour", "specificHeat"),
  R_sa: entry(
    String.raw`R_\mathrm{std}`,
    "R_std",
    "gas constant of air in the standard atmosphere",
    "specificHeat",
  ),
  M_a: entry(String.raw`M_\mathrm{a}`, "M_a", "molar mass of dry air", "molarMass"),
  M_w: entry(String.raw`M_\mathrm{w}`, "M_w", "molar mass of water", "molarMass"),
  M_N2: entry(String.raw`M_\mathrm{N_2}`, "M_N2", "molar mass of nitrogen", "molarMass"),
  M_O2: entry(String.raw`M_\mathrm{O_2}`, "M_O2", "molar mass of oxygen", "molarMass"),
  M_Ar: entry(String.raw`M_\mathrm{Ar}`, "M_Ar", "molar mass of argon", "molarMass"),
  M_CO2: entry(String.raw`M_\mathrm{CO_2}`, "M_CO2", "molar mass of carbon dioxide", "molarMass"),
  M_C: entry(String.raw`M_\mathrm{C}`, "M_C", "molar mass of carbon atoms", "molarMass"),
  M_H: entry(String.raw`M_\mathrm{H}`, "M_H", "molar mass of hydrogen atoms", "molarMass"),
  M_O: entry(String.raw`M_\mathrm{O}`, "M_O", "molar mass of oxygen atoms", "molarMass"),
  x_N2: entry(String.raw`x_\mathrm{N_2}`, "x_N2", "mole fraction of nitrogen in dry air", "ratio"),
  x_O2: entry(String.raw`x_\mathrm{O_2}`, "x_O2", "mole fraction of oxygen in dry air", "ratio"),
  x_Ar: entry(String.raw`x_\mathrm{Ar}`, "x_Ar", "mole fraction of argon in dry air", "ratio"),
  x_CO2: entry(String.raw`x_\mathrm{CO_2}`, "x_CO2", "mole fraction of carbon dioxide in dry air", "ratio"),
  T_C: entry(
    String.raw`T_{0\,^\circ\mathrm{C}}`,
    "T_0°C",
    "zero of the Celsius scale, 273.15 K",
    "temperature",
  ),
  T_t: entry(String.raw`T_\mathrm{t}`, "T_t", "triple point of water, temperature", "temperature"),
  p_t: entry(String.raw`p_\mathrm{t}`, "p_t", "triple point of water, pressure", "pressure"),
  g_0: entry("g_0", "g_0", "standard acceleration of gravity"),
  T_sl: entry(String.raw`T_\mathrm{sl}`, "T_sl", "standard temperature at sea level", "temperature"),
  p_sl: entry(String.raw`p_\mathrm{sl}`, "p_sl", "standard pressure at sea level", "pressure"),
  beta_T: entry(String.raw`\beta_T`, "β_T", "fall of temperature with altitude in the standard atmosphere"),
  psi_std: entry(
    String.raw`\psi_\mathrm{std}`,
    "ψ_std",
    "exponent of the standard atmosphere: gravity over gas constant and fall of temperature",
  ),
  r_E: entry(String.raw`r_\mathrm{E}`, "r_E", "radius of the earth for geopotential altitude", "altitude"),
  c_air: entry(
    String.raw`c_\mathrm{air}`,
    "c_air",
    "heat capacity of air in the wet-bulb equation",
    "specificHeat",
  ),
  c_vap: entry(
    String.raw`c_\mathrm{vap}`,
    "c_vap",
    "heat capacity of vapour in the wet-bulb equation",
    "specificHeat",
  ),
  h_fg0: entry(String.raw`h_{\mathrm{fg},0}`, "h_fg,0", "latent heat of water at 0 °C", "specificEnergy"),
  c_fg: entry(String.raw`c_\mathrm{fg}`, "c_fg", "fall of the latent heat with temperature", "specificHeat"),
} as const satisfies Readonly<Record<string, SymbolEntry>>;
