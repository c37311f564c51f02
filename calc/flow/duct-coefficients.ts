import { accept, refuse } from "../quantity/accept.ts";
import type { SI } from "../quantity/domain-error.ts";
import type { Trace } from "../relation/trace.ts";
import { bendLength } from "./bend-length.ts";
import { bendLoss } from "./bend-loss.ts";
import { bendLossAtAngle } from "./bend-loss-at-angle.ts";
import { bendSeparationLoss } from "./bend-separation-loss.ts";
import { bendWallLoss } from "./bend-wall-loss.ts";
import { conicalContractionLoss } from "./conical-contraction-loss.ts";
import { contractionJet } from "./contraction-jet.ts";
import { diameterRatio } from "./diameter-ratio.ts";
import { diffuserLoss } from "./diffuser-loss.ts";
import { roughnessOf } from "./duct-surface.ts";
import { entranceJet } from "./entrance-jet.ts";
import { entranceLoss } from "./entrance-loss.ts";
import { lossOfLength } from "./loss-of-length.ts";
import { mitreLength, TABLED_MITRES } from "./mitre-length.ts";
import { mitreLoss } from "./mitre-loss.ts";
import { roughFrictionFactor } from "./rough-friction-factor.ts";
import { sharpContractionLoss } from "./sharp-contraction-loss.ts";
import { suddenExpansionLoss } from "./sudden-expansion-loss.ts";

/** Bends, inlet and outlet of a duct. Lengths in m, angles in rad, radii over the bore. */
export interface DuctPartsGiven {
  readonly d: SI;
  readonly N_b: SI;
  readonly bend: "smooth" | "mitre";
  readonly theta: SI;
  readonly R_b?: SI | undefined;
  readonly inlet: "none" | "sharp" | "rounded" | "step" | "cone";
  readonly R_l?: SI | undefined;
  readonly d_before?: SI | undefined;
  readonly theta_before?: SI | undefined;
  readonly outlet: "none" | "step" | "cone" | "plenum";
  readonly d_after?: SI | undefined;
  readonly theta_after?: SI | undefined;
}

/** A duct's parts whose data were checked. */
export interface DuctParts {
  readonly N_b: SI;
  readonly bend:
    | { readonly kind: "smooth"; readonly theta: SI; readonly R_b: SI }
    | { readonly kind: "mitre"; readonly theta: SI };
  readonly inlet:
    | { readonly kind: "none" }
    | { readonly kind: "entrance"; readonly R_l: SI }
    | { readonly kind: "step"; readonly d_l: SI }
    | { readonly kind: "cone"; readonly d_l: SI; readonly theta_c: SI };
  readonly outlet:
    | { readonly kind: "none" }
    | { readonly kind: "plenum" }
    | { readonly kind: "step"; readonly d_l: SI }
    | { readonly kind: "cone"; readonly d_l: SI; readonly theta_c: SI };
}

const WIDEST = 10;
const degree = Math.PI / 180;
/** A longer cone is a pipe. */
const SLIMMEST = degree;

function acceptLarger(field: "d_before" | "d_after", value: SI | undefined, d: SI): SI {
  const d_l = accept(field, "The larger bore", value, { kind: "length", above: 0, atMost: WIDEST });
  refuse(
    d_l < d,
    field,
    "The larger bore is smaller than the bore of the duct. It has to be at least the bound.",
    { value: d, kind: "length" },
  );
  return d_l;
}

const acceptCone = (field: "theta_before" | "theta_after", value: SI | undefined): SI =>
  accept(field, "The full angle of the cone", value, { kind: "angle", atLeast: SLIMMEST, atMost: Math.PI });

function acceptBend({ bend, theta, R_b }: DuctPartsGiven): DuctParts["bend"] {
  const what = "The angle of the bends";
  if (bend === "mitre")
    return {
      kind: "mitre",
      theta: accept("theta", what, theta, { kind: "angle", atLeast: 0, atMost: 150 * degree }),
    };
  return {
    kind: "smooth",
    theta: accept("theta", what, theta, { kind: "angle", atLeast: 0, atMost: Math.PI }),
    R_b: accept("R_b", "The radius of the bends over the bore", R_b, {
      kind: "ratio",
      atLeast: 0.5,
      atMost: 100,
    }),
  };
}

function acceptInlet(given: DuctPartsGiven): DuctParts["inlet"] {
  const { inlet, d } = given;
  if (inlet === "none") return { kind: "none" };
  if (inlet === "sharp") return { kind: "entrance", R_l: 0 };
  if (inlet === "rounded") {
    const R_l = accept("R_l", "The radius of the lip over the bore", given.R_l, {
      kind: "ratio",
      atLeast: 0,
      atMost: 10,
    });
    return { kind: "entrance", R_l };
  }
  const d_l = acceptLarger("d_before", given.d_before, d);
  if (inlet === "step") return { kind: "step", d_l };
  return { kind: "cone", d_l, theta_c: acceptCone("theta_before", given.theta_before) };
}

function acceptOutlet(given: DuctPartsGiven): DuctParts["outlet"] {
  const { outlet, d } = given;
  if (outlet === "none" || outlet === "plenum") return { kind: outlet };
  const d_l = acceptLarger("d_after", given.d_after, d);
  if (outlet === "step") return { kind: "step", d_l };
  return { kind: "cone", d_l, theta_c: acceptCone("theta_after", given.theta_after) };
}

/** Checks bends, inlet and outlet; throws a DomainError that names the field. Only what is chosen is looked at. */
export function acceptParts(given: DuctPartsGiven): DuctParts {
  const N_b = accept("N_b", "The number of bends", given.N_b, { kind: "ratio", atLeast: 0, atMost: 1000 });
  refuse(
    !Number.isInteger(N_b),
    "N_b",
    "Bends are counted: a whole number is needed here. A bend of half the angle is one bend.",
  );
  return { N_b, bend: acceptBend(given), inlet: acceptInlet(given), outlet: acceptOutlet(given) };
}

/** Loss coefficient of one bend, friction along its own length with it. f is Darcy's friction factor. */
export function bendCoefficient(bend: DuctParts["bend"], f: SI, trace: Trace): SI {
  if (bend.kind === "mitre") return trace.use(mitreLoss, { theta: bend.theta }, "one bend");
  const { theta, R_b } = bend;
  const K_w = trace.use(bendWallLoss, { f, theta, R_b }, "one bend");
  const K_sep = trace.use(bendSeparationLoss, { f, theta, R_b }, "one bend");
  return trace.use(bendLoss, { K_w, K_sep }, "one bend");
}

/** Below this the other handbook's formula is far off: it still has a loss at no angle. */
const LEAST_BEND = 45 * degree;

/**
 * The same by the table of another handbook, which counts on steel pipe whatever the wall is. Missing outside the table: a
 * smooth bend below 45°, tighter than one bore or wider than twenty, or a mitre bend below 15° or above 90°.
 */
export function tabledBendCoefficient(bend: DuctParts["bend"], d: SI, trace: Trace): SI | undefined {
  const where = "one bend, by the table";
  const { theta } = bend;
  const isOnTable =
    bend.kind === "mitre"
      ? theta >= TABLED_MITRES.from && theta <= TABLED_MITRES.to
      : theta >= LEAST_BEND && bend.R_b >= 1 && bend.R_b <= 20;
  if (!isOnTable || d <= roughnessOf.steel) return undefined;
  const f_T = trace.use(roughFrictionFactor, { k_s: roughnessOf.steel, d }, where);
  if (bend.kind === "mitre") {
    const l_eq = trace.use(mitreLength, { theta }, where);
    return trace.use(lossOfLength, { f_T, l_eq }, where);
  }
  const { R_b } = bend;
  const l_eq = trace.use(bendLength, { R_b }, where);
  const K_90 = trace.use(lossOfLength, { f_T, l_eq }, where);
  return trace.use(bendLossAtAngle, { K_90, theta, f_T, R_b }, where);
}

/** Loss coefficient of the inlet, on the speed in the duct. */
export function inletCoefficient(inlet: DuctParts["inlet"], d: SI, f: SI, trace: Trace): SI {
  if (inlet.kind === "none") return 0;
  if (inlet.kind === "entrance") {
    const { R_l } = inlet;
    const lambda_j = trace.use(entranceJet, { R_l }, "inlet");
    return trace.use(entranceLoss, { R_l, lambda_j }, "inlet");
  }
  const beta_d = trace.use(diameterRatio, { d, d_l: inlet.d_l }, "inlet");
  const theta_c = inlet.kind === "cone" ? inlet.theta_c : Math.PI;
  const lambda_j = trace.use(contractionJet, { theta_c, beta_d }, "inlet");
  return inlet.kind === "cone"
    ? trace.use(conicalContractionLoss, { f, theta_c, beta_d, lambda_j }, "inlet")
    : trace.use(sharpContractionLoss, { lambda_j, beta_d }, "inlet");
}

/** Loss coefficient of the outlet, on the speed in the duct. A plenum takes all of it. */
export function outletCoefficient(outlet: DuctParts["outlet"], d: SI, trace: Trace): SI {
  if (outlet.kind === "none") return 0;
  if (outlet.kind === "plenum") return 1;
  const beta_d = trace.use(diameterRatio, { d, d_l: outlet.d_l }, "outlet");
  return outlet.kind === "cone"
    ? trace.use(diffuserLoss, { theta_c: outlet.theta_c, beta_d }, "outlet")
    : trace.use(suddenExpansionLoss, { beta_d }, "outlet");
}
