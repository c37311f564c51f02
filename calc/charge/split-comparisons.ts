import { MOST_OF_ONE } from "../compression/accept-ratio.ts";
import { leastWorkRatio } from "../compression/least-work-ratio.ts";
import { bracketedRoot } from "../numerics/bracketed-root.ts";
import type { SI } from "../quantity/domain-error.ts";
import { plain, type Trace } from "../relation/trace.ts";
import {
  equalRatio,
  type Pair,
  rangeOfFirst,
  type Split,
  singleStage,
  splitAt,
  workAt,
} from "./two-stages.ts";

/** The heat-capacity ratio of the rule for perfect cooling. Common practice, no source. */
const USUAL_KAPPA = 1.4;

/** What a split is worth against others: all W, K, Pa and ratios, as `TwoStageSplit` names them. */
export function compareSplit(pair: Pair, split: Split, r_1: SI, trace: Trace) {
  const { inlet, first, second } = pair;
  const better = first.machine.eta > second.machine.eta ? first.machine : second.machine;
  const single = singleStage(pair, better, trace);
  if (single.r > MOST_OF_ONE)
    trace.note({
      about: "W_single",
      says: "One compressor alone would need a ratio beyond the bound, which none gives. The number is only for comparison.",
      limit: { value: MOST_OF_ONE, kind: "ratio" },
    });
  const W_equal = workAt(pair, equalRatio(pair));
  if (first.cooler.kind !== "effectiveness")
    return {
      W_equal,
      W_single: single.W_c,
      T_single: single.T_out,
      W_no_cooler: undefined,
      T_4_no_cooler: undefined,
      Delta_p_even: undefined,
      r_1_rule: undefined,
    };

  const { T_w_in } = first.cooler;
  const without: Pair = { ...pair, first: { ...first, cooler: { kind: "none" } } };
  const r_most = rangeOfFirst(without, MOST_OF_ONE).to;
  const uncooled = r_1 <= r_most ? splitAt(without, r_1, plain) : undefined;
  const W_no_cooler = uncooled && uncooled.W_c1 + uncooled.W_c2;
  const rule = trace.use(
    leastWorkRatio,
    {
      r_t: single.r,
      eta_s_1: first.machine.eta,
      eta_s2: second.machine.eta,
      T_1: inlet.T,
      T_3: T_w_in,
      kappa: first.machine.heatCapacity === "constant" ? first.machine.kappa : USUAL_KAPPA,
    },
    "if the first cooler brought the air to its water at no loss",
  );
  return {
    W_equal,
    W_single: single.W_c,
    T_single: single.T_out,
    W_no_cooler,
    T_4_no_cooler: uncooled?.T_4,
    Delta_p_even:
      W_no_cooler === undefined
        ? undefined
        : evenLoss(pair, { r_1, p_2: split.first.before.p, p_4: split.second.before.p }, W_no_cooler),
    r_1_rule: rule >= 1 && rule <= single.r ? rule : undefined,
  };
}

/** The loss of the first cooler at which the pair needs `work` in W; none where even a cooler without loss needs more. */
function evenLoss(
  pair: Pair,
  { r_1, p_2, p_4 }: { readonly r_1: SI; readonly p_2: SI; readonly p_4: SI },
  work: SI,
): SI | undefined {
  const { cooler } = pair.first;
  if (cooler.kind !== "effectiveness") return undefined;
  const excess = (Delta_p: SI) =>
    workAt({ ...pair, first: { ...pair.first, cooler: { ...cooler, Delta_p, zeta: undefined } } }, r_1) -
    work;
  // Beyond this loss the second compressor's ratio is higher than any that is looked at.
  const most = p_2 - p_4 / MOST_OF_ONE;
  if (most <= 0 || excess(0) >= 0 || excess(most) <= 0) return undefined;
  return bracketedRoot(excess, 0, most, { tolerance: 1e-6 });
}
