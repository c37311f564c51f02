import { boreArea } from "../../../calc/flow/bore-area.ts";
import { ductSpeed } from "../../../calc/flow/duct-speed.ts";
import { fittingLoss } from "../../../calc/flow/fitting-loss.ts";
import { frictionArgument } from "../../../calc/flow/friction-argument.ts";
import { frictionFactorAllRegimes } from "../../../calc/flow/friction-factor-all-regimes.ts";
import { frictionPartBeyondLaminar } from "../../../calc/flow/friction-part-beyond-laminar.ts";
import { frictionTransitionPart } from "../../../calc/flow/friction-transition-part.ts";
import { frictionTurbulentPart } from "../../../calc/flow/friction-turbulent-part.ts";
import { pipeLoss } from "../../../calc/flow/pipe-loss.ts";
import { reynoldsNumber } from "../../../calc/flow/reynolds-number.ts";
import { massFlow } from "../../../calc/fluids/mass-flow.ts";
import type { AnyRelation } from "../../../calc/relation/relation.ts";
import type { Field } from "../engine/calculator.ts";

/** A straight pipe of one bore with its fittings, for water. */
export const pipeInputs = {
  L: {
    label: "Length of the pipe",
    symbol: "L",
    kind: "pipeLength",
    start: 10,
    limits: [0, 1e5],
    typical: [0.2, 200],
    help: "",
  },
  d: {
    label: "Bore of the pipe",
    symbol: "d",
    kind: "length",
    start: 0.0525,
    limits: [1e-3, 5],
    typical: [0.006, 0.3],
    help: "",
  },
  k_s: {
    label: "Roughness of the pipe",
    symbol: "k_s",
    kind: "length",
    start: 45e-6,
    limits: [0, 0.05],
    typical: [0.000001, 0.002],
    help: "Common practice: steel pipe 0.045 mm, drawn tube 0.0015 mm.",
  },
  K: {
    label: "Loss coefficient of its fittings",
    symbol: "K",
    kind: "ratio",
    start: 4,
    limits: [0, 1e6],
    typical: [0, 50],
    help: "",
  },
} as const satisfies Record<string, Field>;

/** Friction on the wall of a pipe in any regime, and its fittings. */
export const pipeRelations: readonly AnyRelation[] = [
  boreArea,
  massFlow,
  ductSpeed,
  reynoldsNumber,
  frictionArgument,
  frictionTurbulentPart,
  frictionTransitionPart,
  frictionPartBeyondLaminar,
  frictionFactorAllRegimes,
  pipeLoss,
  fittingLoss,
];
