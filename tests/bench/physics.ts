import { spawnSync } from "node:child_process";
import psychrolib from "psychrolib";
import { chargePath } from "../../calc/charge/charge-path.ts";
import { compressorOutlet } from "../../calc/compression/compressor-outlet.ts";
import { ambient } from "../../calc/fluids/ambient.ts";
import { conductivity } from "../../calc/fluids/conductivity.ts";
import { density } from "../../calc/fluids/density.ts";
import { enthalpy } from "../../calc/fluids/enthalpy.ts";
import { gasConstant } from "../../calc/fluids/gas-constant.ts";
import { heatCapacity } from "../../calc/fluids/heat-capacity.ts";
import { viscosity } from "../../calc/fluids/viscosity.ts";
import { perSecond, times } from "./per-second.ts";
import { figure, heading, skipped } from "./report.ts";

/** Another value each time, so that nothing can be kept from one run to the next. */
const step = (i: number) => (i % 97) / 97;

const compressor = { efficiency: "isentropic", eta_s: 0.74, heatCapacity: "real" } as const;

const outlet = (i: number) =>
  compressorOutlet({ ...compressor, p_in: 99e3, T_in: 298.15, boost: "ratio", r: 2 + step(i) });

const path = (i: number) =>
  chargePath({
    ...compressor,
    p_0: 99e3,
    T_0: 298.15,
    humidity: "relative",
    varphi_0: 0.5,
    Delta_p_01: 1000,
    wanted: "ratio",
    r: 2 + step(i),
    cooler: "effectiveness",
    P: 0.78,
    T_w_in: 298.15,
    Delta_p_23: 6000,
    V_d: 0.0044,
    n: 2000 / 60,
    cycle: "four-stroke",
    eta_v: 0.92,
    b: 210 / 3.6e9,
    lambda: 1.6,
    AFR_st: 14.5,
  });

const moistAir = (i: number) =>
  ambient({ p_0: 99e3, T_0: 293 + 10 * step(i), humidity: "relative", varphi_0: 0.5 });

const dryAir = (i: number) => {
  const T = 300 + 100 * step(i);
  const R_m = gasConstant.compute({ w: 0 });
  return [
    density.compute({ p: 2e5, R_m, T }),
    enthalpy.compute({ T, w: 0 }),
    heatCapacity.compute({ T, w: 0 }),
    viscosity.compute({ T }),
    conductivity.compute({ T }),
  ];
};

/** The moist-air state of the open library psychrolib: humidity ratio, wet bulb, dew point, enthalpy, volume. */
function psychrolibPerSecond(): number {
  psychrolib.SetUnitSystem(psychrolib.SI);
  return perSecond((i) => psychrolib.CalcPsychrometricsFromRelHum(20 + 10 * step(i), 0.5, 99e3));
}

const iapwsProgram = `
import time
from iapws.humidAir import Air
count, start = 0, time.perf_counter()
while time.perf_counter() - start < 3:
    Air(T=300 + count % 97, P=0.2)
    count += 1
print(count / (time.perf_counter() - start))
`;

/** Why a comparison is left out. */
export const noIapws = "skipped: no Python here has iapws (Debian: python3-iapws)";

/** States of dry air per second of the open library iapws, or null where it is not installed. */
function iapwsPerSecond(): number | null {
  // Debian's packages belong to its own Python, which need not be the first on the path.
  for (const python of ["/usr/bin/python3", "python3"]) {
    const { status, stdout } = spawnSync(python, ["-c", iapwsProgram], { encoding: "utf8" });
    if (status === 0) return Number(stdout);
  }
  return null;
}

/** Prints how fast the models are, and open libraries for the same in the same run. */
export function benchPhysics(): void {
  heading("models of air");
  figure("compressor outlet", perSecond(outlet), "per second");
  figure("charge path, moist air", perSecond(path), "per second");
  const ours = perSecond(moistAir);
  const theirs = psychrolibPerSecond();
  figure("moist-air state", ours, "per second");
  figure("moist-air state, psychrolib", theirs, "per second", `ours is ${times(ours, theirs)} as fast`);
  const air = perSecond(dryAir);
  const reference = iapwsPerSecond();
  figure("dry-air state", air, "per second");
  if (reference === null) skipped("dry-air state, iapws", noIapws);
  else figure("dry-air state, iapws", reference, "per second", `ours is ${times(air, reference)} as fast`);
}
