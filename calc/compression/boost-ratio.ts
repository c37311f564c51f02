import { absolutePressure } from "../atmosphere/absolute-pressure.ts";
import { gaugePressure } from "../atmosphere/gauge-pressure.ts";
import { pressureAfterLoss } from "../flow/pressure-after-loss.ts";
import { pressureBeforeLoss } from "../flow/pressure-before-loss.ts";
import { accept, refuse } from "../quantity/accept.ts";
import type { SI } from "../quantity/domain-error.ts";
import { type Model, plain, type Trace } from "../relation/trace.ts";
import { acceptRatio, MOST_OF_ONE } from "./accept-ratio.ts";
import { outletPressure } from "./outlet-pressure.ts";
import { pressureRatio } from "./pressure-ratio.ts";

/**
 * Barometer in Pa absolute, loss before the compressor in Pa, and the boost in Pa on the gauge or the ratio. `at` says where
 * the gauge is: at the compressor outlet, or after the cooler, which costs Delta_p_23 in Pa.
 */
export interface BoostRatioGiven {
  readonly find: "ratio" | "boost";
  readonly at: "outlet" | "cooler";
  readonly p_0: SI;
  readonly Delta_p_01: SI;
  readonly p_g?: SI | undefined;
  readonly r?: SI | undefined;
  readonly Delta_p_23?: SI | undefined;
}

/** Pa, absolute but for p_g. */
export interface BoostRatio {
  readonly r: SI;
  readonly p_g: SI;
  readonly p_1: SI;
  readonly p_2: SI;
}

/**
 * The pressure ratio of a compressor from the boost that a gauge reads, or the boost from the ratio.
 *
 * Throws a DomainError for losses that leave no pressure, and for a boost below what stands at the compressor inlet.
 *
 * @example boostRatio({ find: "ratio", at: "outlet", p_0: 98e3, Delta_p_01: 1e3, p_g: 120e3 }).r // 2.2474
 */
export const boostRatio: Model<BoostRatioGiven, BoostRatio> = (given, trace = plain) => {
  const p_0 = accept("p_0", "The barometer, as an absolute pressure,", given.p_0, {
    kind: "pressure",
    above: 0,
    atMost: 200e3,
  });
  const inletLoss = accept("Delta_p_01", "The pressure lost before the compressor", given.Delta_p_01, {
    kind: "pressureDifference",
    atLeast: 0,
    below: p_0,
  });
  const p_1 = trace.use(pressureAfterLoss, { p_in: p_0, Delta_p: inletLoss }, "filter and inlet duct");
  return given.find === "ratio" ? fromBoost(given, p_1, trace) : fromRatio(given, p_1, trace);
};

function fromBoost(given: BoostRatioGiven, p_1: SI, trace: Trace): BoostRatio {
  const { p_0 } = given;
  const p_g = accept("p_g", "The boost on the gauge", given.p_g, {
    kind: "gaugePressure",
    above: -p_0,
    atMost: 5e6,
  });
  const p = trace.use(absolutePressure, { p_g, p_0 }, "at the gauge");
  const p_2 =
    given.at === "outlet"
      ? p
      : trace.use(
          pressureBeforeLoss,
          { p_out: p, Delta_p: coolerLoss(given, Number.POSITIVE_INFINITY) },
          "cooler",
        );
  refuse(
    p_2 < p_1,
    "p_g",
    "With this boost the compressor outlet is below its inlet, and a compressor does not lower the pressure. The boost has to be at or above the bound.",
    { value: p_g + p_1 - p_2, kind: "gaugePressure" },
  );
  const r = trace.use(pressureRatio, { p_out: p_2, p_in: p_1 }, "compressor");
  if (r > MOST_OF_ONE)
    trace.note({
      about: "r",
      says: "One compressor hardly reaches so much; two stages share it. Look whether the boost was typed as an absolute pressure. One stage is looked at up to the bound.",
      limit: { value: MOST_OF_ONE, kind: "ratio" },
    });
  return { r, p_g, p_1, p_2 };
}

function fromRatio(given: BoostRatioGiven, p_1: SI, trace: Trace): BoostRatio {
  const r = acceptRatio(given.r);
  const p_2 = trace.use(outletPressure, { r, p_in: p_1 }, "compressor");
  const p =
    given.at === "outlet"
      ? p_2
      : trace.use(pressureAfterLoss, { p_in: p_2, Delta_p: coolerLoss(given, p_2) }, "cooler");
  return { r, p_g: trace.use(gaugePressure, { p, p_0: given.p_0 }, "at the gauge"), p_1, p_2 };
}

const coolerLoss = (given: BoostRatioGiven, below: SI): SI =>
  accept("Delta_p_23", "The pressure lost in the cooler", given.Delta_p_23, {
    kind: "pressureDifference",
    atLeast: 0,
    below: Math.min(below, 1e6),
  });
