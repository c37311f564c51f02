import type { Compressor } from "../compression/compress.ts";
import type { Cooler } from "../exchanger/cooler.ts";
import { bracketedRoot } from "../numerics/bracketed-root.ts";
import type { SI } from "../quantity/domain-error.ts";
import { plain } from "../relation/trace.ts";
import { type DeviceSet, everything, isIn } from "./device-set.ts";
import { meanDensity } from "./mean-density.ts";
import { type AirState, throughCompressor, throughCooler } from "./stage.ts";

type FittedCooler = Exclude<Cooler, { kind: "none" }>;

/** One thing that may be fitted or not. A cooler's loss is that with everything fitted. */
export type Device =
  | { readonly kind: "compressor"; readonly machine: Compressor; readonly r: SI }
  | { readonly kind: "cooler"; readonly cooler: FittedCooler };

/** The air before and after each device that is fitted, by its place in the chain, and at the end. Pa for the losses. */
export interface Walk {
  readonly before: ReadonlyMap<number, AirState>;
  readonly after: ReadonlyMap<number, AirState>;
  readonly losses: ReadonlyMap<number, SI>;
  readonly end: AirState;
}

const TOLERANCE = 1e-13;

/** Compression alone, as it always is: of what comes in. */
const compressedBy = ({ machine, r }: Extract<Device, { kind: "compressor" }>, air: AirState): AirState =>
  throughCompressor(machine, air, r, plain, "").before;

const cooledWith = (cooler: FittedCooler, Delta_p: SI, air: AirState): AirState =>
  throughCooler({ ...cooler, Delta_p }, air, plain, "").after;

/** The loss in Pa whose product with the mean density in the cooler is `product`; none where no loss is so great. */
function lossOf(cooler: FittedCooler, air: AirState, product: SI): SI | undefined {
  if (product === 0) return 0;
  const over = (Delta_p: SI) => {
    const { rho: rho_out } = cooledWith(cooler, Delta_p, air);
    return Delta_p * meanDensity.compute({ rho_in: air.rho, rho_out }) - product;
  };
  // Beyond this a greater loss makes the air thin faster than it grows itself.
  const { T, R_m } = cooledWith(cooler, 0, air);
  const most = Math.min(air.p, (air.p + air.rho * R_m * T) / 2);
  return over(most) < 0 ? undefined : bracketedRoot(over, 0, most, { tolerance: TOLERANCE * air.p });
}

/** The chain with some of its devices, and the loss of each cooler as `loss` has it; none where it has none. */
function walk(
  devices: readonly Device[],
  set: DeviceSet,
  inlet: AirState,
  loss: (i: number, cooler: FittedCooler, air: AirState) => SI | undefined,
): Walk | undefined {
  const before = new Map<number, AirState>();
  const after = new Map<number, AirState>();
  const losses = new Map<number, SI>();
  let air = inlet;
  for (const [i, device] of devices.entries()) {
    if (!isIn(set, i)) continue;
    before.set(i, air);
    if (device.kind === "compressor") air = compressedBy(device, air);
    else {
      const Delta_p = loss(i, device.cooler, air);
      if (Delta_p === undefined) return undefined;
      losses.set(i, Delta_p);
      air = cooledWith(device.cooler, Delta_p, air);
    }
    after.set(i, air);
  }
  return { before, after, losses, end: air };
}

/** Densities before and after a cooler, kg/m³. */
export const aroundCooler = (
  { before, after }: Walk,
  i: number,
): { readonly rho_in: SI; readonly rho_out: SI } => ({
  rho_in: before.get(i)?.rho ?? 0,
  rho_out: after.get(i)?.rho ?? 0,
});

/**
 * The air in the same engine with only some of the devices fitted. Ratios, efficiencies, effectiveness and water are as they
 * were. The flow goes with the density at the end of the chain; each loss times the mean density in its cooler goes with the
 * power n_p of the flow, and both are made to agree by search.
 *
 * `whole` is the chain with everything fitted. `undefined` where no flow agrees: with losses so great that the chain chokes.
 */
export function walkWith(
  devices: readonly Device[],
  set: DeviceSet,
  { inlet, whole, n_p }: { readonly inlet: AirState; readonly whole: Walk; readonly n_p: SI },
): Walk | undefined {
  if (set === everything(devices.length)) return whole;
  if (!devices.some(({ kind }, i) => kind === "cooler" && isIn(set, i)))
    return walk(devices, set, inlet, () => 0);
  const at = (flow: SI) =>
    walk(devices, set, inlet, (i, cooler, air) => {
      const product = (whole.losses.get(i) ?? 0) * meanDensity.compute(aroundCooler(whole, i));
      return lossOf(cooler, air, product * flow ** n_p);
    });
  const drawn = (flow: SI) => (at(flow)?.end.rho ?? 0) / whole.end.rho;
  const most = drawn(0) * (1 + 1e-9);
  const flow = bracketedRoot((x) => drawn(x) - x, 0, most, { tolerance: TOLERANCE * most });
  return Math.abs(drawn(flow) - flow) > 1e-6 * flow ? undefined : at(flow);
}

/** The chain with everything fitted and the losses as they are given. */
export const walkWhole = (devices: readonly Device[], inlet: AirState): Walk =>
  walk(devices, everything(devices.length), inlet, (_, cooler) => cooler.Delta_p) as Walk;
