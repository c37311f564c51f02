import { constants } from "../../../calc/constants.ts";
import { argon, carbonDioxide, gas, nitrogen, oxygen, water } from "../../../calc/fluids/nasa-gas.ts";
import { subject } from "../subject.ts";

const { M_N2, M_O2, M_Ar, M_CO2, M_w } = constants;
const gases = {
  N2: { molarMass: M_N2.value, species: nitrogen },
  O2: { molarMass: M_O2.value, species: oxygen },
  Ar: { molarMass: M_Ar.value, species: argon },
  CO2: { molarMass: M_CO2.value, species: carbonDioxide },
  H2O: { molarMass: M_w.value, species: water },
};
const TABLE_ZERO = 298.15;

/** One gas of the air alone, per mole. */
export default subject<{ gas: keyof typeof gases; T: number }>(({ gas: name, T }) => {
  const { molarMass, species } = gases[name];
  const { cp, h } = gas([[1, species]], molarMass);
  return { cp: molarMass * cp(T), cp_monatomic: molarMass * cp(T), dh: molarMass * (h(T) - h(TABLE_ZERO)) };
});
