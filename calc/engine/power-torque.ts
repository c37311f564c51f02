import { accept, refuse } from "../quantity/accept.ts";
import type { SI } from "../quantity/domain-error.ts";
import { type Model, plain, type Trace } from "../relation/trace.ts";
import { brakeEfficiency } from "./brake-efficiency.ts";
import { acceptSize, type Cycle, SPEEDS } from "./cycle.ts";
import { meanEffectivePressure } from "./mean-effective-pressure.ts";
import { powerFromMeanPressure } from "./power-from-mean-pressure.ts";
import { powerFromTorque } from "./power-from-torque.ts";
import { specificConsumption } from "./specific-consumption.ts";
import { speedFromPower } from "./speed-from-power.ts";
import { torqueFromPower } from "./torque-from-power.ts";

/**
 * Two of torque in N m, speed in rev/s, brake power in W and brake mean effective pressure in Pa; the engine's displacement
 * in m³ and its cycle; and, where they are known, the fuel flow in kg/s with the lower heating value in J/kg.
 */
export interface PowerTorqueGiven {
  readonly known: "torque" | "power" | "pressure" | "both";
  readonly M?: SI | undefined;
  readonly n?: SI | undefined;
  readonly W_e?: SI | undefined;
  readonly p_me?: SI | undefined;
  readonly V_d?: SI | undefined;
  readonly cycle?: Cycle | undefined;
  readonly fuel: "none" | "flow";
  readonly m_f?: SI | undefined;
  readonly LHV?: SI | undefined;
}

/** W, N m, rev/s, Pa, kg/J. What the fuel decides is missing without it. */
export interface PowerTorque {
  readonly W_e: SI;
  readonly M: SI;
  readonly n: SI;
  readonly p_me: SI;
  readonly b: SI | undefined;
  readonly eta_e: SI | undefined;
}

/**
 * Power, torque, speed and mean effective pressure of an engine from two of them: `torque`, `power` or `pressure` with the
 * speed, or `both` power and torque. Throws a DomainError for what cannot be.
 *
 * @example powerTorque({ known: "torque", M: 345.2, n: 6500 / 60, V_d: 2e-3, fuel: "none" }).W_e // 234 970 W
 */
export const powerTorque: Model<PowerTorqueGiven, PowerTorque> = (given, trace = plain) => {
  const { W_e, M, ...size } = motions[given.known](given, trace);
  const { n } = size;
  const p_me =
    given.known === "pressure"
      ? acceptPressure(given)
      : trace.use(meanEffectivePressure, { W_e, ...size }, "engine");
  return { W_e, M, n, p_me, ...fuelOf(given, W_e, trace) };
};

type Motion = ReturnType<typeof acceptSize> & { readonly W_e: SI; readonly M: SI };

const acceptPower = ({ W_e }: PowerTorqueGiven) =>
  accept("W_e", "The brake power", W_e, { kind: "power", above: 0, atMost: 1e9 });
const acceptTorque = ({ M }: PowerTorqueGiven) =>
  accept("M", "The torque", M, { kind: "torque", above: 0, atMost: 1e8 });
const acceptPressure = ({ p_me }: PowerTorqueGiven) =>
  accept("p_me", "The mean effective pressure", p_me, { kind: "pressureDifference", above: 0, atMost: 1e8 });

const fromTorque = (given: PowerTorqueGiven, trace: Trace): Motion => {
  const M = acceptTorque(given);
  const size = acceptSize(given);
  return { ...size, M, W_e: trace.use(powerFromTorque, { n: size.n, M }, "engine") };
};

const fromPower = (given: PowerTorqueGiven, trace: Trace): Motion => {
  const W_e = acceptPower(given);
  const size = acceptSize(given);
  return { ...size, W_e, M: trace.use(torqueFromPower, { W_e, n: size.n }, "engine") };
};

const fromPressure = (given: PowerTorqueGiven, trace: Trace): Motion => {
  const size = acceptSize(given);
  const W_e = trace.use(powerFromMeanPressure, { p_me: acceptPressure(given), ...size }, "engine");
  return { ...size, W_e, M: trace.use(torqueFromPower, { W_e, n: size.n }, "engine") };
};

const fromBoth = (given: PowerTorqueGiven, trace: Trace): Motion => {
  const W_e = acceptPower(given);
  const M = acceptTorque(given);
  const n = trace.use(speedFromPower, { W_e, M }, "engine");
  const bound = (speed: SI) => ({ value: M * (n / speed), kind: "torque" }) as const;
  refuse(
    n > SPEEDS.atMost,
    "M",
    "With so little torque no engine turns fast enough for this power. The torque has to be above the bound.",
    bound(SPEEDS.atMost),
  );
  refuse(
    n < SPEEDS.atLeast,
    "M",
    "With so much torque an engine of this power would hardly turn. The torque has to be below the bound.",
    bound(SPEEDS.atLeast),
  );
  return { ...acceptSize({ ...given, n }), W_e, M };
};

const motions = {
  torque: fromTorque,
  power: fromPower,
  pressure: fromPressure,
  both: fromBoth,
} satisfies Record<PowerTorqueGiven["known"], unknown>;

function fuelOf(given: PowerTorqueGiven, W_e: SI, trace: Trace): Pick<PowerTorque, "b" | "eta_e"> {
  if (given.fuel === "none") return { b: undefined, eta_e: undefined };
  const m_f = accept("m_f", "The fuel flow", given.m_f, { kind: "massFlow", above: 0, atMost: 100 });
  const LHV = accept("LHV", "The lower heating value", given.LHV, {
    kind: "specificEnergy",
    atLeast: 1e6,
    atMost: 2e8,
  });
  const least = W_e / LHV;
  refuse(
    m_f < least,
    "m_f",
    "This fuel holds less energy than the engine gives off as work. The fuel flow has to be above the bound.",
    { value: least, kind: "massFlow" },
  );
  return {
    b: trace.use(specificConsumption, { m_f, W_e }, "engine"),
    eta_e: trace.use(brakeEfficiency, { W_e, m_f, LHV }, "engine"),
  };
}
