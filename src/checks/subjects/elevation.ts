import { geopotentialAltitude } from "../../../calc/atmosphere/geopotential-altitude.ts";
import { standardPressure } from "../../../calc/atmosphere/standard-pressure.ts";
import { standardTemperature } from "../../../calc/atmosphere/standard-temperature.ts";
import { subject } from "../subject.ts";

/** The standard atmosphere at a geometric altitude, as the printed tables of the standard list it. */
export default subject<{ z: number }>(({ z }, trace) => {
  const H = trace.use(geopotentialAltitude, { z }, "station");
  return {
    H,
    T: trace.use(standardTemperature, { H }, "station"),
    p: trace.use(standardPressure, { H }, "station"),
  };
});
