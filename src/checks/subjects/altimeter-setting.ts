import { altimeterAltitude } from "../../../calc/atmosphere/altimeter-altitude.ts";
import { pressureAltitude } from "../../../calc/atmosphere/pressure-altitude.ts";
import { standardPressure } from "../../../calc/atmosphere/standard-pressure.ts";
import { subject } from "../subject.ts";

/** The pressure at a station, from the sea-level setting that an airfield reports. */
export default subject<{ H: number; p_Q: number }>(({ H, p_Q }, trace) => {
  const H_Q = trace.use(pressureAltitude, { p: p_Q }, "sea-level setting");
  const H_p = trace.use(altimeterAltitude, { H, H_Q }, "station");
  return { p: trace.use(standardPressure, { H: H_p }, "station") };
});
