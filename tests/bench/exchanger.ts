import { spawnSync } from "node:child_process";
import { arrangements } from "../../calc/exchanger/arrangements.ts";
import { temperatureField } from "../../calc/exchanger/field/temperature-field.ts";
import { layouts } from "../../calc/exchanger/layouts.ts";
import { rateCooler } from "../../calc/exchanger/rate-cooler.ts";
import { sizeCooler } from "../../calc/exchanger/size-cooler.ts";
import { transferUnitsNeeded } from "../../calc/exchanger/transfer-units-needed.ts";
import { waterState } from "../../calc/fluids/water/water.ts";
import { perSecond, times } from "./per-second.ts";
import { noIapws } from "./physics.ts";
import { figure, heading, skipped } from "./report.ts";

/** Another value each time, so that nothing can be kept from one run to the next. */
const step = (i: number) => (i % 97) / 97;

const streams = {
  m_a: 0.35,
  T_2: 458.15,
  coolant: "water",
  p_w: 200_000,
  m_w: 0.9,
  T_w_in: 295.15,
} as const;

const cells = 80;

/** Prints how often a second something runs with the fastest arrangement, the middle one and the slowest. */
function spread(name: string, run: (arrangement: (typeof arrangements)[number], i: number) => unknown): void {
  const rates = arrangements
    .map((one) => ({ name: one.id, rate: perSecond((i) => run(one, i), 50) }))
    .sort((a, b) => b.rate - a.rate);
  const say = (which: string, at: number) =>
    figure(`${name}, ${which}`, rates[at]?.rate ?? 0, "per second", rates[at]?.name);
  say("fastest", 0);
  say("median", Math.floor(rates.length / 2));
  say("slowest", rates.length - 1);
}

const iapwsProgram = `
import time
from iapws import IAPWS97
count, start = 0, time.perf_counter()
while time.perf_counter() - start < 3:
    IAPWS97(T=300 + count % 90, P=0.3)
    count += 1
print(count / (time.perf_counter() - start))
`;

/** Prints how fast coolers are rated, sized and drawn, and water states beside those of an open library. */
export function benchExchanger(): void {
  heading("coolers");
  spread("effectiveness", ({ effectiveness }, i) => effectiveness.compute({ NTU: 1 + step(i), R: 0.5 }));
  spread("transfer units needed", (one, i) => transferUnitsNeeded(one, { P: 0.4 + 0.1 * step(i), R: 0.5 }));
  for (const arrangement of ["counter-cross-2", "counter-cross-2-rows", "counter-cross-2-rows-identical"]) {
    const rated = perSecond((i) => rateCooler({ ...streams, arrangement, UA: 500 + 100 * step(i) }));
    const sized = perSecond((i) => sizeCooler({ ...streams, arrangement, T_3: 330 + 10 * step(i) }));
    figure(`rating, ${arrangement}`, 1e6 / rated, "µs");
    figure(`size, ${arrangement}`, 1e6 / sized, "µs");
  }
  const layout = layouts["counter-cross-2-rows-identical"];
  const fields = perSecond((i) => temperatureField(layout, 2 + step(i), 0.5, cells));
  figure(`field, two passes of ${cells} × ${cells}`, 1e6 / fields, "µs");

  const water = perSecond((i) => waterState({ T: 300 + 90 * step(i), p: 3e5 }));
  figure("water state", water, "per second");
  const { status, stdout } = spawnSync("/usr/bin/python3", ["-c", iapwsProgram], { encoding: "utf8" });
  const theirs = Number(stdout);
  if (status === 0)
    figure("water state, iapws", theirs, "per second", `ours is ${times(water, theirs)} as fast`);
  else skipped("water state, iapws", noIapws);
}
