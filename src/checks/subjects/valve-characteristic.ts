import { type CharacteristicGiven, characteristicOf } from "../../../calc/circuit/valve/characteristic.ts";
import { subject } from "../subject.ts";

interface Given extends Record<string, number | string> {
  characteristic: "linear" | "equal-percentage" | "quick-opening";
  x: number;
  R0: number;
}

export default subject<Given>(({ characteristic, x, R0 }, trace) => {
  const given: CharacteristicGiven = { characteristic, R_0: R0 };
  return { phi: characteristicOf(given).opening(x, trace) };
});
