import { barometerAltitude } from "../../../calc/atmosphere/barometer-altitude.ts";
import { modelSubject } from "../subject.ts";

export default modelSubject(barometerAltitude);
