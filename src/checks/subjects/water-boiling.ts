import { waterState } from "../../../calc/fluids/water/water.ts";
import { subject } from "../subject.ts";

/** Cold water, asked for what it will need to boil. */
export default subject<{ p: number }>(({ p }, trace) => {
  const { T_sat, h_fg } = waterState({ T: 273.15, p }, trace);
  return { T_sat, h_fg };
});
