import { spawnSync } from "node:child_process";
import { arrangements } from "../../calc/exchanger/arrangements.ts";
import { temperatureField } from "../../calc/exchanger/field/temperature-field.ts";
import { layouts } from "../../calc/exchanger/layouts.ts";
import { rateCooler } from "../../calc/exchanger/rate-cooler.ts";
import { sizeCooler } from "../../calc/exchanger/size-cooler.ts";
import { transferUnitsNeeded } from "../../calc/exchanger/transfer-units-needed.ts";
import { waterState } from "../../calc/fluids/water/water.ts";
import { perSecond, rate, times } from "./per-second.ts";

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

/** Effectiveness per second, of the fastest arrangement, the middle one and the slowest. */
function spread(run: (arrangement: (typeof arrangements)[number], i: number) => unknown): string {
  const rates = arrangements
    .map((one) => ({ name: one.id, rate: perSecond((i) => run(one, i), 50) }))
    .sort((a, b) => b.rate - a.rate);
  const say = (at: number) => `${rate(rates[at]?.rate ?? 0)} (${rates[at]?.name})`;
  return [say(0), say(Math.floor(rates.length / 2)), say(rates.length - 1)].join(
    "\n                          ",
  );
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
  console.log(
    "closed forms and others   " +
      spread(({ effectiveness }, i) => effectiveness.compute({ NTU: 1 + step(i), R: 0.5 })),
  );
  console.log(
    "transfer units needed     " +
      spread((one, i) => transferUnitsNeeded(one, { P: 0.4 + 0.1 * step(i), R: 0.5 })),
  );
  for (const arrangement of ["counter-cross-2", "counter-cross-2-rows", "counter-cross-2-rows-identical"]) {
    const rated = perSecond((i) => rateCooler({ ...streams, arrangement, UA: 500 + 100 * step(i) }));
    const sized = perSecond((i) => sizeCooler({ ...streams, arrangement, T_3: 330 + 10 * step(i) }));
    console.log(`rating, ${arrangement.padEnd(30)} ${rate(rated)}, ${micro(rated)} each`);
    console.log(`size,   ${arrangement.padEnd(30)} ${rate(sized)}, ${micro(sized)} each`);
  }
  const layout = layouts["counter-cross-2-rows-identical"];
  const fields = perSecond((i) => temperatureField(layout, 2 + step(i), 0.5, cells));
  console.log(`field, two passes of ${cells} × ${cells}   ${rate(fields)}, ${micro(fields)} each`);

  const water = perSecond((i) => waterState({ T: 300 + 90 * step(i), p: 3e5 }));
  console.log(`water state               ${rate(water)}`);
  const { status, stdout } = spawnSync("/usr/bin/python3", ["-c", iapwsProgram], { encoding: "utf8" });
  console.log(
    status === 0
      ? `  iapws                   ${rate(Number(stdout))}; ours is ${times(water, Number(stdout))} as fast`
      : "  iapws                   skipped: no Python here has iapws (Debian: python3-iapws)",
  );
}

const micro = (perSecondRate: number) => `${Number((1e6 / perSecondRate).toPrecision(2))} µs`;
