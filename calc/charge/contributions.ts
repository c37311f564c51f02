import { noteFog } from "../fluids/fog-note.ts";
import { noteRealGas } from "../fluids/real-gas-note.ts";
import { accept } from "../quantity/accept.ts";
import type { SI } from "../quantity/domain-error.ts";
import { type Model, plain, type Trace } from "../relation/trace.ts";
import { acceptChain, type Chain, type ChainGiven, devicesOf, throughChain } from "./contributions-chain.ts";
import { type Change, factorsOf } from "./contributions-factors.ts";
import { type Hardware, hardwareOf } from "./contributions-hardware.ts";
import { densityGained } from "./density-gained.ts";
import { noteBelowInlet } from "./manifold-note.ts";
import type { AirState, StagePath } from "./stage.ts";
import { timesDenser } from "./times-denser.ts";

/** The chain of compressors and coolers; how the gain is split; and with hardware, the exponent of the losses over the flow. */
export interface ContributionsGiven extends ChainGiven {
  readonly split: "hardware" | "changes";
  readonly n_p?: SI | undefined;
}

/** The gain of the charge as a multiple of the density at the inlet, and its parts by one of the two splits. */
export interface Contributions {
  readonly D_rho: SI;
  readonly Delta_D: SI;
  /** J/kg, one for each compressor. */
  readonly works: readonly SI[];
  readonly inlet: AirState;
  readonly paths: readonly StagePath[];
  /** One for each stage; only with the split by changes. */
  readonly changes: readonly Readonly<Record<Change, SI>>[] | undefined;
  /** Only with the split by hardware. */
  readonly hardware: Hardware | undefined;
  /** Ids of all devices, in the order of the air. */
  readonly devices: readonly string[];
}

/**
 * Who contributes what to the density of a charge: split among the changes of the air, or among the hardware.
 *
 * Among the changes the gain is split by logarithms. Among the hardware each device is credited with the mean of what it adds over
 * all orders of fitting; ratios, efficiencies, effectiveness, water, speed and volumetric efficiency are held, and losses follow
 * the flow. Throws a DomainError for what cannot be. Both splits add up to the gain.
 *
 * @example
 * contributions({ stages: "one", split: "hardware", p_1: 98e3, T_1: 298.15, r_1: 2.24936, eta_s: 0.72,
 *   cooler: "effectiveness", P: 0.78, T_w_in: 298.15, Delta_p_23: 9e3, n_p: 2 }).Delta_D // 0.99907
 */
export const contributions: Model<ContributionsGiven, Contributions> = (given, trace = plain) => {
  const chain = acceptChain(given, trace);
  const paths = throughChain(chain, trace);
  const { inlet } = chain;
  const end = paths.at(-1)?.after ?? inlet;
  const D_rho = timesDenser(end, inlet, trace, "over the whole chain");
  const Delta_D = trace.use(
    densityGained,
    { D_rho_with: D_rho, D_rho_without: 1 },
    "everything fitted, over nothing fitted",
  );
  noteFog(inlet, "w", trace);
  noteRealGas({ p: end.p, T: end.T }, "rho_m", trace);
  noteBelowInlet({ p_m: end.p, p_1: inlet.p }, "p_m", trace, paths.length);
  const isByHardware = given.split === "hardware";
  return {
    D_rho,
    Delta_D,
    works: paths.map(({ compressed }) => compressed.Delta_h),
    inlet,
    paths,
    changes: isByHardware ? undefined : changesOf(chain, paths, D_rho, trace),
    hardware: isByHardware ? byHardware(given, chain, D_rho, trace) : undefined,
    devices: devicesOf(chain).map(({ id }) => id),
  };
};

const changesOf = (chain: Chain, paths: readonly StagePath[], D_rho: SI, trace: Trace) =>
  chain.stages.flatMap(({ words }, i) => {
    const path = paths[i];
    return path ? [factorsOf(path, D_rho, words, trace)] : [];
  });

function byHardware(given: ContributionsGiven, chain: Chain, D_rho: SI, trace: Trace): Hardware {
  const devices = devicesOf(chain);
  const n_p = accept("n_p", "The exponent of the losses", given.n_p ?? 2, {
    kind: "ratio",
    atLeast: 1,
    atMost: 2,
  });
  const hardware = hardwareOf(devices, { inlet: chain.inlet, D_rho_all: D_rho, n_p }, trace);
  if (hardware.credits.size < devices.length)
    trace.note({
      about: "Delta_D",
      says: "With losses so great, an engine with only some of this hardware finds no flow. No credit is given, since that engine is needed for it.",
    });
  return hardware;
}
