import { waterState } from "../../../calc/fluids/water/water.ts";
import { subject } from "../subject.ts";

export default subject<{ T: number; p: number }>((given, trace) => {
  const { rho, c_p, h, s, a, mu, k } = waterState(given, trace);
  return { rho, cp: c_p, h, s, w: a, mu, k };
});
