import type { SI } from "../quantity/domain-error.ts";
import type { Trace } from "../relation/trace.ts";
import type { NamedDevice } from "./contributions-chain.ts";
import { placesOf } from "./counterfactual-credit.ts";
import { aroundCooler, type Walk, walkWhole, walkWith } from "./counterfactual-path.ts";
import { creditOfFour } from "./credit-of-four.ts";
import { creditOfThree } from "./credit-of-three.ts";
import { creditOfTwo } from "./credit-of-two.ts";
import { densityGained } from "./density-gained.ts";
import { type DeviceSet, everything, outfitName, setsOf, thoseIn } from "./device-set.ts";
import { lossOfFitted } from "./loss-of-fitted.ts";
import { meanDensity } from "./mean-density.ts";
import type { AirState } from "./stage.ts";
import { timesDenser } from "./times-denser.ts";

/** The engine with a part of the hardware: Pa for the losses by device, and how many times denser its charge is than the inlet. */
export interface Outfit {
  readonly losses: ReadonlyMap<string, SI>;
  readonly end: AirState;
  readonly D_rho: SI;
}

export interface Hardware {
  /** By the name of what is fitted. Without those where no flow agrees. */
  readonly outfits: ReadonlyMap<string, Outfit>;
  /** By the id of the device; empty where an outfit is missing. */
  readonly credits: ReadonlyMap<string, SI>;
  /** The credits as parts of the gain; empty where that is too little to speak of shares. */
  readonly shares: ReadonlyMap<string, SI>;
}

/** A gain below this is no whole of which a part can be told. */
const LEAST_SHARED = 0.01;
const PLACES = ["first", "second", "third", "fourth"] as const;

/** What is fitted, in words. */
const inWords = (devices: readonly NamedDevice[]): string => devices.map(({ name }) => name).join(" and ");
/** What is fitted, as a name. */
const nameOf = (devices: readonly NamedDevice[]): string => outfitName(devices.map(({ id }) => id));

/** What all outfits share: the inlet, the density ratio with everything fitted, and the exponent of the losses over the flow. */
interface Common {
  readonly inlet: AirState;
  readonly D_rho_all: SI;
  readonly n_p: SI;
}

/** Every part of the hardware by itself and with others, and what each device is credited with over all orders of fitting. */
export function hardwareOf(devices: readonly NamedDevice[], common: Common, trace: Trace): Hardware {
  const { inlet, D_rho_all, n_p } = common;
  const chain = devices.map(({ device }) => device);
  const whole = walkWhole(chain, inlet);
  const all = everything(devices.length);
  const mean = (walked: Walk, i: number, where: string) =>
    trace.use(meanDensity, aroundCooler(walked, i), where);
  const references = new Map(
    [...whole.losses.keys()].map((i) => [i, mean(whole, i, `${devices[i]?.name}, everything fitted`)]),
  );

  const outfits = new Map<string, Outfit>();
  for (const set of setsOf(devices.length)) {
    const walked = walkWith(chain, set, { inlet, whole, n_p });
    if (!walked) continue;
    const fitted = thoseIn(devices, set);
    const where = `only ${inWords(fitted)}`;
    const isPart = set > 0 && set < all;
    const D_rho = isPart ? timesDenser(walked.end, inlet, trace, where) : set === 0 ? 1 : D_rho_all;
    // The loss that was found, by the law that it obeys.
    const lossOf = (i: number, Delta_p_ref: SI): SI => {
      const place = `${devices[i]?.name}, ${where}`;
      const rho_ref = references.get(i) ?? 0;
      const rho = mean(walked, i, place);
      return trace.use(lossOfFitted, { Delta_p_ref, rho_ref, rho, D_rho, D_rho_all, n_p }, place);
    };
    const losses = new Map(
      [...walked.losses].map(([i, Delta_p]) => [
        devices[i]?.id ?? "",
        isPart ? lossOf(i, whole.losses.get(i) ?? 0) : Delta_p,
      ]),
    );
    outfits.set(nameOf(fitted), { losses, end: walked.end, D_rho });
  }
  const credits = outfits.size > all ? creditsOf(devices, outfits, trace) : new Map<string, SI>();
  return { outfits, credits, shares: sharesOf(credits, D_rho_all - 1) };
}

const sharesOf = (credits: ReadonlyMap<string, SI>, gain: SI): ReadonlyMap<string, SI> =>
  new Map(gain < LEAST_SHARED ? [] : [...credits].map(([id, credit]) => [id, credit / gain]));

function creditsOf(
  devices: readonly NamedDevice[],
  outfits: ReadonlyMap<string, Outfit>,
  trace: Trace,
): ReadonlyMap<string, SI> {
  const value = (set: DeviceSet) => outfits.get(nameOf(thoseIn(devices, set)))?.D_rho ?? Number.NaN;
  return new Map(
    devices.map(({ id, name }, i) => {
      const added = placesOf(devices.length, i, value).map((place, k) =>
        trace.use(
          densityGained,
          { D_rho_with: place.with, D_rho_without: place.without },
          devices.length === 1 ? name : `${name}, fitted ${PLACES[k]}`,
        ),
      );
      return [id, meanOf(added, trace, name)];
    }),
  );
}

/** The mean over the places, by the relation for so many. */
function meanOf(added: readonly SI[], trace: Trace, where: string): SI {
  const [Delta_D_1 = 0, Delta_D_2 = 0, Delta_D_3 = 0, Delta_D_4 = 0] = added;
  switch (added.length) {
    case 1:
      return Delta_D_1;
    case 2:
      return trace.use(creditOfTwo, { Delta_D_1, Delta_D_2 }, where);
    case 3:
      return trace.use(creditOfThree, { Delta_D_1, Delta_D_2, Delta_D_3 }, where);
    default:
      return trace.use(creditOfFour, { Delta_D_1, Delta_D_2, Delta_D_3, Delta_D_4 }, where);
  }
}
