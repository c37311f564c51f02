import { boreArea } from "../../flow/bore-area.ts";
import { ductSpeed } from "../../flow/duct-speed.ts";
import { fittingLoss } from "../../flow/fitting-loss.ts";
import { acceptAbsolutePressure, acceptAirTemperature, acceptFlow } from "../../fluids/accept-air.ts";
import { density } from "../../fluids/density.ts";
import { gasConstant } from "../../fluids/gas-constant.ts";
import { heatCapacity } from "../../fluids/heat-capacity.ts";
import { heatCapacityRatio } from "../../fluids/heat-capacity-ratio.ts";
import { noteRealGas } from "../../fluids/real-gas-note.ts";
import { accept, refuse } from "../../quantity/accept.ts";
import type { SI } from "../../quantity/domain-error.ts";
import { type Model, plain, type Trace } from "../../relation/trace.ts";
import { criticalPressureRatio } from "./critical-pressure-ratio.ts";
import { lossToAdd } from "./loss-to-add.ts";
import { restriction } from "./restriction.ts";

/**
 * The losses in Pa of a target and of the rig at one flow of dry air, `m_a` kg/s; the pressure before the plate in Pa absolute and
 * the temperature there in K; the bore of the pipe in m. With `part` "also", the same of a second flow.
 */
export interface AddedRestrictionGiven {
  readonly part: "none" | "also";
  readonly Delta_p_tgt?: SI | undefined;
  readonly Delta_p_rig?: SI | undefined;
  readonly m_a?: SI | undefined;
  readonly p_in?: SI | undefined;
  readonly T_in?: SI | undefined;
  readonly d_l?: SI | undefined;
  readonly m_part?: SI | undefined;
  readonly p_part?: SI | undefined;
  readonly T_part?: SI | undefined;
}

/** Pa, m, m/s, kg/m³. `Delta_p_part` is what the plate takes at the second flow. */
export interface AddedRestriction {
  readonly d: SI;
  readonly Delta_p_add: SI;
  readonly K: SI;
  readonly beta_d: SI;
  readonly rho: SI;
  readonly c: SI;
  readonly Delta_p_part: SI | undefined;
}

/** Less than can be read, Pa. */
const LEAST_LOSS = 0.1;
/** What a pipe of a test rig can be, m. */
const BORE = { kind: "length", atLeast: 1e-3, atMost: 5 } as const;

/**
 * The plate that lets a rig lose as much pressure as its target: what the target loses more than the rig at one air flow, as a
 * sharp-edged hole in the pipe.
 *
 * Throws a DomainError that names Delta_p_rig where the rig loses as much as the target or more, and Delta_p_tgt where a plate would
 * bring the air to the speed of sound. Notes where the air thins too much for the formula.
 *
 * @example
 * addedRestriction({ part: "none", Delta_p_tgt: 12e3, Delta_p_rig: 5.5e3, m_a: 0.35, p_in: 250e3, T_in: 330, d_l: 0.08 }).d // 0.052328 m
 */
export const addedRestriction: Model<AddedRestrictionGiven, AddedRestriction> = (given, trace = plain) => {
  const m = acceptFlow("m_a", "The air flow", given.m_a);
  const p_in = acceptAbsolutePressure("p_in", "The pressure before the plate, absolute,", given.p_in);
  const T = acceptAirTemperature("T_in", "The temperature before the plate", given.T_in);
  const d_l = accept("d_l", "The bore of the pipe", given.d_l, BORE);
  const R_m = trace.use(gasConstant, { w: 0 }, "dry air");
  const Delta_p_add = lossOf(given, mostLoss(p_in, T, R_m), trace);
  const rho = trace.use(density, { p: p_in, R_m, T }, "before the plate");
  noteRealGas({ p: p_in, T }, "rho", trace);
  const { K, beta_d, d } = restriction({ m, rho, d_l, Delta_p: Delta_p_add, p_in }, trace);
  const c = ductSpeed.compute({ m_a: m, rho, A: boreArea.compute({ d: d_l }) });
  return { d, Delta_p_add, K, beta_d, rho, c, Delta_p_part: partLoss(given, { K, d_l, R_m }, trace) };
};

/** With this lasting loss the air has come to the speed of sound in the hole for certain, Pa; with a wide hole it does so before. */
function mostLoss(p: SI, T: SI, R_m: SI): SI {
  const kappa = heatCapacityRatio.compute({ c_p: heatCapacity.compute({ T, w: 0 }), R_m });
  return p * (1 - criticalPressureRatio.compute({ kappa }));
}

function lossOf(given: AddedRestrictionGiven, most: SI, trace: Trace): SI {
  const loss = { kind: "pressureDifference", atMost: 1e7 } as const;
  const Delta_p_tgt = accept("Delta_p_tgt", "The loss of the target", given.Delta_p_tgt, {
    ...loss,
    atLeast: LEAST_LOSS,
  });
  const Delta_p_rig = accept("Delta_p_rig", "The loss of the rig", given.Delta_p_rig, {
    ...loss,
    atLeast: 0,
  });
  refuse(
    Delta_p_tgt - Delta_p_rig < LEAST_LOSS,
    "Delta_p_rig",
    "The rig already loses as much as its target, or more, and no plate takes a loss away. Its loss has to be below the bound, that of the target.",
    { value: Delta_p_tgt, kind: "pressureDifference" },
  );
  const Delta_p_add = trace.use(lossToAdd, { Delta_p_tgt, Delta_p_rig }, "plate");
  refuse(
    Delta_p_add >= most,
    "Delta_p_tgt",
    "For such a loss the air would come to the speed of sound in the hole, and then a plate takes no more. The target may lose less than the bound.",
    { value: Delta_p_rig + most, kind: "pressureDifference" },
  );
  return Delta_p_add;
}

interface Plate {
  readonly K: SI;
  readonly d_l: SI;
  readonly R_m: SI;
}

function partLoss(given: AddedRestrictionGiven, { K, d_l, R_m }: Plate, trace: Trace): SI | undefined {
  if (given.part === "none") return undefined;
  const where = "at the second flow";
  const m_a = acceptFlow("m_part", "The second air flow", given.m_part);
  const p = acceptAbsolutePressure(
    "p_part",
    "The pressure before the plate at the second flow, absolute,",
    given.p_part,
  );
  const T = acceptAirTemperature("T_part", "The temperature at the second flow", given.T_part);
  const rho = trace.use(density, { p, R_m, T }, where);
  const A = trace.use(boreArea, { d: d_l }, "pipe");
  const c = trace.use(ductSpeed, { m_a, rho, A }, where);
  const most = mostLoss(p, T, R_m);
  const loss = trace.use(fittingLoss, { K, rho, c }, where);
  refuse(
    loss >= most,
    "m_part",
    "So large a flow would come to the speed of sound in the hole of this plate. The second flow has to be below the bound.",
    { value: m_a * Math.sqrt(most / loss), kind: "massFlow" },
  );
  return loss;
}
