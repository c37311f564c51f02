import { geopotentialAltitude } from "../../calc/atmosphere/geopotential-altitude.ts";
import { standardPressure } from "../../calc/atmosphere/standard-pressure.ts";
import type { SI } from "../../calc/quantity/domain-error.ts";

/** The pressure of the standard atmosphere (Pa) at an elevation (m). Fetched when somebody gives one. */
export const pressureAt = (z: SI): SI => standardPressure.compute({ H: geopotentialAltitude.compute({ z }) });
