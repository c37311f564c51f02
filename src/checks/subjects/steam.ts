import { steamDensity } from "../../../calc/fluids/water/steam-density.ts";
import { steamEnthalpy } from "../../../calc/fluids/water/steam-enthalpy.ts";
import { steamEntropy } from "../../../calc/fluids/water/steam-entropy.ts";
import { steamHeatCapacity } from "../../../calc/fluids/water/steam-heat-capacity.ts";
import { steamSpeedOfSound } from "../../../calc/fluids/water/steam-speed-of-sound.ts";
import { subject } from "../subject.ts";

export default subject<{ T: number; p: number }>((state, trace) => ({
  rho: trace.use(steamDensity, state, "steam"),
  cp: trace.use(steamHeatCapacity, state, "steam"),
  h: trace.use(steamEnthalpy, state, "steam"),
  s: trace.use(steamEntropy, state, "steam"),
  w: trace.use(steamSpeedOfSound, state, "steam"),
}));
