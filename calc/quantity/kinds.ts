/** What kind of quantity a number is, and the units in which it is kept, worked with, shown and offered. */
export interface KindInfo {
  /** Plain words, without an article. */
  readonly name: string;
  /** The unit in which the number is kept. All units here and below are ids of calc/quantity/units.ts. */
  readonly si: string;
  /** The unit in which working shows the number. */
  readonly kilo: string;
  /** What a field shows until somebody chooses another unit. */
  readonly metric: string;
  readonly us: string;
  /** The units a field offers, in order. */
  readonly units: readonly string[];
}

const pressures = ["kPa", "bar", "psi", "inHg", "inH2O", "mbar", "mmHg", "Pa", "MPa", "atm"] as const;
const differences = [...pressures, "inH2O-60F", "mmH2O"] as const;

export const kinds = {
  pressure: {
    name: "absolute pressure",
    si: "Pa",
    kilo: "kPa",
    metric: "kPa",
    us: "psi",
    units: pressures.flatMap((id) => [id, `${id}-g`]),
  },
  /** Kept as the height above the barometer, so its units are the plain ones. */
  gaugePressure: {
    name: "gauge pressure",
    si: "Pa",
    kilo: "kPa",
    metric: "kPa",
    us: "psi",
    units: pressures,
  },
  pressureDifference: {
    name: "pressure difference",
    si: "Pa",
    kilo: "kPa",
    metric: "kPa",
    us: "psi",
    units: differences,
  },
  temperature: {
    name: "temperature",
    si: "K",
    kilo: "K",
    metric: "degC",
    us: "degF",
    units: ["degC", "degF", "K", "degR"],
  },
  temperatureDifference: {
    name: "temperature difference",
    si: "K",
    kilo: "K",
    metric: "K",
    us: "degF-d",
    units: ["K", "degF-d"],
  },
  density: {
    name: "density",
    si: "kg/m3",
    kilo: "kg/m3",
    metric: "kg/m3",
    us: "lb/ft3",
    units: ["kg/m3", "lb/ft3", "g/L", "kg/L"],
  },
  specificVolume: {
    name: "specific volume",
    si: "m3/kg",
    kilo: "m3/kg",
    metric: "m3/kg",
    us: "ft3/lb",
    units: ["m3/kg", "ft3/lb", "L/kg"],
  },
  massFlow: {
    name: "mass flow",
    si: "kg/s",
    kilo: "kg/s",
    metric: "kg/s",
    us: "lb/min",
    units: ["kg/s", "kg/min", "kg/h", "g/s", "lb/min", "lb/h", "lb/s"],
  },
  volumeFlow: {
    name: "volume flow",
    si: "m3/s",
    kilo: "m3/s",
    metric: "m3/min",
    us: "ft3/min",
    units: ["m3/s", "m3/min", "m3/h", "L/s", "L/min", "ft3/min", "gal/min", "impgal/min"],
  },
  liquidFlow: {
    name: "volume flow of a liquid",
    si: "m3/s",
    kilo: "m3/s",
    metric: "L/min",
    us: "gal/min",
    units: ["L/min", "L/s", "L/h", "m3/h", "gal/min", "gal/h", "impgal/min", "ft3/min", "m3/min", "m3/s"],
  },
  volume: {
    name: "volume",
    si: "m3",
    kilo: "m3",
    metric: "L",
    us: "in3",
    units: ["L", "cm3", "in3", "m3", "ft3", "gal", "impgal"],
  },
  mass: { name: "mass", si: "kg", kilo: "kg", metric: "kg", us: "lb", units: ["kg", "g", "lb"] },
  duration: { name: "time", si: "s", kilo: "s", metric: "s", us: "s", units: ["s", "min", "h"] },
  energy: {
    name: "energy",
    si: "J",
    kilo: "kJ",
    metric: "kJ",
    us: "BTU",
    units: ["kJ", "BTU", "MJ", "kWh", "J"],
  },
  ratio: { name: "ratio", si: "1", kilo: "1", metric: "1", us: "1", units: ["1"] },
  fraction: { name: "fraction", si: "1", kilo: "1", metric: "1", us: "1", units: ["1", "%"] },
  humidityRatio: {
    name: "humidity ratio",
    si: "kg/kg",
    kilo: "kg/kg",
    metric: "g/kg",
    us: "gr/lb",
    units: ["g/kg", "gr/lb", "kg/kg", "lb/lb"],
  },
  power: {
    name: "power",
    si: "W",
    kilo: "kW",
    metric: "kW",
    us: "hp",
    units: ["kW", "hp", "PS", "W", "MW"],
  },
  heatFlow: {
    name: "heat flow",
    si: "W",
    kilo: "kW",
    metric: "kW",
    us: "BTU/min",
    units: ["kW", "BTU/min", "BTU/h", "W", "MW", "hp"],
  },
  specificEnergy: {
    name: "specific energy",
    si: "J/kg",
    kilo: "kJ/kg",
    metric: "kJ/kg",
    us: "BTU/lb",
    units: ["kJ/kg", "BTU/lb", "J/kg", "MJ/kg"],
  },
  /** Also entropies and gas constants. */
  specificHeat: {
    name: "specific heat",
    si: "J/(kg K)",
    kilo: "kJ/(kg K)",
    metric: "kJ/(kg K)",
    us: "BTU/(lb degF)",
    units: ["kJ/(kg K)", "J/(kg K)", "BTU/(lb degF)", "ft lbf/(lb degR)"],
  },
  rotationalSpeed: {
    name: "rotational speed",
    si: "rev/s",
    kilo: "rev/s",
    metric: "rev/min",
    us: "rev/min",
    units: ["rev/min", "rev/s", "rad/s"],
  },
  specificFuel: {
    name: "specific fuel consumption",
    si: "kg/J",
    kilo: "kg/kJ",
    metric: "g/kWh",
    us: "lb/(hp h)",
    units: ["g/kWh", "kg/kWh", "lb/(hp h)", "g/MJ", "kg/kJ", "kg/J"],
  },
  altitude: {
    name: "altitude",
    si: "m",
    kilo: "m",
    metric: "m",
    us: "ft",
    units: ["m", "ft", "km"],
  },
  speed: {
    name: "speed",
    si: "m/s",
    kilo: "m/s",
    metric: "m/s",
    us: "ft/s",
    units: ["m/s", "km/h", "ft/s", "ft/min", "mi/h"],
  },
  viscosity: {
    name: "dynamic viscosity",
    si: "Pa s",
    kilo: "Pa s",
    metric: "uPa s",
    us: "lb/(ft h)",
    units: ["Pa s", "mPa s", "uPa s", "cP", "lb/(ft h)", "lb/(ft s)"],
  },
  conductivity: {
    name: "thermal conductivity",
    si: "W/(m K)",
    kilo: "W/(m K)",
    metric: "W/(m K)",
    us: "BTU/(h ft degF)",
    units: ["W/(m K)", "mW/(m K)", "BTU/(h ft degF)"],
  },
  conductance: {
    name: "heat conductance",
    si: "W/K",
    kilo: "kW/K",
    metric: "W/K",
    us: "BTU/(min degF)",
    units: ["W/K", "kW/K", "BTU/(min degF)", "BTU/(h degF)"],
  },
  /** Mass flow times heat capacity. */
  capacityRate: {
    name: "heat-capacity rate",
    si: "W/K",
    kilo: "kW/K",
    metric: "W/K",
    us: "BTU/(min degF)",
    units: ["W/K", "kW/K", "BTU/(min degF)", "BTU/(h degF)"],
  },
  /** Of one side of a wall, per area. */
  filmCoefficient: {
    name: "heat transfer coefficient",
    si: "W/(m2 K)",
    kilo: "kW/(m2 K)",
    metric: "W/(m2 K)",
    us: "BTU/(h ft2 degF)",
    units: ["W/(m2 K)", "kW/(m2 K)", "BTU/(h ft2 degF)"],
  },
  thermalResistance: {
    name: "thermal resistance",
    si: "K/W",
    kilo: "K/kW",
    metric: "K/kW",
    us: "h degF/BTU",
    units: ["K/kW", "K/W", "h degF/BTU"],
  },
  /** Thermal resistance times area: what a layer of dirt is given as. */
  foulingFactor: {
    name: "fouling factor",
    si: "m2 K/W",
    kilo: "m2 K/kW",
    metric: "m2 K/kW",
    us: "h ft2 degF/BTU",
    units: ["m2 K/kW", "m2 K/W", "h ft2 degF/BTU"],
  },
  length: {
    name: "length",
    si: "m",
    kilo: "m",
    metric: "mm",
    us: "in",
    units: ["mm", "cm", "m", "in", "ft"],
  },
  /** A length that is paced out, not measured with a calliper. */
  pipeLength: {
    name: "length of pipe",
    si: "m",
    kilo: "m",
    metric: "m",
    us: "ft",
    units: ["m", "cm", "mm", "ft", "in"],
  },
  area: {
    name: "area",
    si: "m2",
    kilo: "m2",
    metric: "cm2",
    us: "in2",
    units: ["cm2", "mm2", "m2", "in2", "ft2"],
  },
  angle: {
    name: "angle",
    si: "rad",
    kilo: "rad",
    metric: "deg",
    us: "deg",
    units: ["deg", "rad"],
  },
  force: {
    name: "force",
    si: "N",
    kilo: "kN",
    metric: "N",
    us: "lbf",
    units: ["N", "kN", "lbf"],
  },
  torque: {
    name: "torque",
    si: "N m",
    kilo: "kN m",
    metric: "N m",
    us: "lbf ft",
    units: ["N m", "lbf ft", "kN m"],
  },
  massFlux: {
    name: "mass flow per area",
    si: "kg/(m2 s)",
    kilo: "kg/(m2 s)",
    metric: "kg/(m2 s)",
    us: "lb/(ft2 s)",
    units: ["kg/(m2 s)", "lb/(ft2 s)", "lb/(ft2 h)"],
  },
  molarMass: {
    name: "molar mass",
    si: "kg/mol",
    kilo: "kg/mol",
    metric: "g/mol",
    us: "g/mol",
    units: ["g/mol", "kg/mol", "kg/kmol", "lb/lbmol"],
  },
  /** Of a valve: the flow of water at a difference of 1 bar. */
  flowCoefficient: {
    name: "flow coefficient",
    si: "m3/s",
    kilo: "m3/s",
    metric: "m3/h",
    us: "Cv",
    units: ["m3/h", "Cv"],
  },
  /** The height of a column of the liquid itself. */
  head: {
    name: "head of liquid",
    si: "m",
    kilo: "m",
    metric: "m",
    us: "ft",
    units: ["m", "ft"],
  },
  expansivity: {
    name: "thermal expansion",
    si: "per K",
    kilo: "per K",
    metric: "um/(m K)",
    us: "uin/(in degF)",
    units: ["um/(m K)", "uin/(in degF)", "per K"],
  },
  modulus: {
    name: "modulus of elasticity",
    si: "Pa",
    kilo: "kPa",
    metric: "GPa",
    us: "Mpsi",
    units: ["GPa", "MPa", "Mpsi", "psi"],
  },
  /** Part of a volume for each unit of pressure. */
  compliance: {
    name: "compliance",
    si: "per Pa",
    kilo: "per kPa",
    metric: "per GPa",
    us: "per GPa",
    units: ["per GPa", "per MPa", "per kPa", "per Pa"],
  },
} as const satisfies Record<string, KindInfo>;

export type Kind = keyof typeof kinds;

export type UnitSystem = "metric" | "us";

/** The unit in which a field of this kind shows its number until somebody chooses another. */
export const defaultUnit = (kind: Kind, system: UnitSystem): string => kinds[kind][system];

/** Whether a field of this kind offers the unit with this id; for ids that come from a link or a file. */
export const isUnitOf = (kind: Kind, id: string): boolean =>
  (kinds[kind].units as readonly string[]).includes(id);
