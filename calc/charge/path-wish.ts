import { acceptRatio, MOST_OF_ONE } from "../compression/accept-ratio.ts";
import { type acceptEngine, acceptFuel, type FuelGiven } from "../engine/cycle.ts";
import { dryAirFromFuel } from "../engine/dry-air-from-fuel.ts";
import { fuelFlow } from "../engine/fuel-flow.ts";
import { neededDensity } from "../engine/needed-density.ts";
import { bracketedRoot } from "../numerics/bracketed-root.ts";
import { accept } from "../quantity/accept.ts";
import { DomainError, type Limit, type SI } from "../quantity/domain-error.ts";
import { plain, type Trace } from "../relation/trace.ts";
import { follow, type Site } from "./air-path.ts";

/**
 * What is given: the pressure ratios; or the pressure (Pa absolute), the density (kg/m³) or the brake power (W) that is wanted
 * in the manifold. With two compressors `division` says whether the first one's ratio `r_1` is given, or both are the same.
 */
export interface WishGiven extends FuelGiven {
  readonly wanted: "ratio" | "pressure" | "density" | "power";
  readonly r?: SI | undefined;
  readonly r_2?: SI | undefined;
  readonly division?: "first" | "equal" | undefined;
  readonly r_1?: SI | undefined;
  readonly p_m?: SI | undefined;
  readonly rho_m?: SI | undefined;
  readonly W_e?: SI | undefined;
}

type Sought =
  | { readonly kind: "pressure"; readonly aim: SI }
  | { readonly kind: "density"; readonly aim: SI }
  | { readonly kind: "power"; readonly aim: SI; readonly W_e: SI; readonly m_f: SI; readonly m_da: SI };

export type Wish = { readonly kind: "ratio"; readonly ratios: readonly SI[] } | Sought;

const SEARCHED_FROM = 1;
const SEARCHED_TO = MOST_OF_ONE;

/** Checks the wish; throws a DomainError that names its input. */
export function acceptWish(
  given: WishGiven,
  { engine, stages }: { readonly engine: ReturnType<typeof acceptEngine>; readonly stages: number },
  trace: Trace,
): Wish {
  switch (given.wanted) {
    case "ratio": {
      const r = acceptRatio(given.r);
      if (stages === 1) return { kind: "ratio", ratios: [r] };
      return {
        kind: "ratio",
        ratios: [r, acceptRatio(given.r_2, "r_2", "The ratio of the second compressor")],
      };
    }
    case "pressure": {
      const bounds = { kind: "pressure", above: 0, atMost: 1e8 } as const;
      return { kind: "pressure", aim: accept("p_m", "The wanted pressure, absolute,", given.p_m, bounds) };
    }
    case "density": {
      const bounds = { kind: "density", above: 0, atMost: 100 } as const;
      return { kind: "density", aim: accept("rho_m", "The wanted density", given.rho_m, bounds) };
    }
    case "power": {
      const W_e = accept("W_e", "The wanted power", given.W_e, { kind: "power", above: 0, atMost: 1e8 });
      const { b, lambda, AFR_st } = acceptFuel(given);
      const m_f = trace.use(fuelFlow, { b, W_e }, "engine");
      const m_da = trace.use(dryAirFromFuel, { lambda, AFR_st, m_f }, "engine");
      return { kind: "power", W_e, m_f, m_da, aim: neededDensity.compute({ m_a: m_da, ...engine }) };
    }
  }
}

const inWords = {
  pressure: ["p_m", "The wanted pressure"],
  density: ["rho_m", "The wanted density"],
  power: ["W_e", "The wanted power"],
} as const;

/** The pressure ratios that fulfil the wish; a DomainError names the wish and what can be had when none do. */
export function ratiosFor(site: Site, wish: Wish, given: WishGiven, trace: Trace): readonly SI[] {
  if (wish.kind === "ratio") return wish.ratios;
  const isSingle = site.stages.length === 1;
  const ratios = divided(given, isSingle);
  const had = (r: SI): SI => {
    const { p, w, rho } = follow(site, ratios(r), plain).end;
    return { pressure: p, density: rho, power: rho / (1 + w) }[wish.kind];
  };
  const [field, what] = inWords[wish.kind];
  const machine = isSingle
    ? "compressor"
    : given.division === "equal"
      ? "pair of compressors"
      : "second compressor";

  const least = had(SEARCHED_FROM);
  if (least > wish.aim) {
    throw new DomainError(
      field,
      `${what} would need a pressure ratio below ${SEARCHED_FROM}, which is a throttle and not a compressor. A ${machine} that does nothing already gives the bound, and the wish may be as low as that.`,
      limitOf(wish, least),
    );
  }
  const most = had(SEARCHED_TO);
  if (most < wish.aim) {
    throw new DomainError(
      field,
      `${what} would need a pressure ratio above ${SEARCHED_TO}, where this search ends; ${isSingle ? "one compressor does" : "these compressors do"} not reach it. At a ratio of ${SEARCHED_TO} this path gives the bound, and the wish may be as high as that.`,
      limitOf(wish, most),
    );
  }
  const r = bracketedRoot((x) => had(x) - wish.aim, SEARCHED_FROM, SEARCHED_TO, { tolerance: 1e-12 });
  trace.note({
    about: isSingle ? "r" : "r_2",
    says: `The pressure ratio was found by search: the whole path was computed for trial ratios from ${SEARCHED_FROM} to ${SEARCHED_TO} until the air at the engine met the wish. The working shows the last pass.`,
  });
  return ratios(r);
}

/** How the ratio that is sought is spread over the compressors. */
function divided(given: WishGiven, isSingle: boolean): (r: SI) => readonly SI[] {
  if (isSingle) return (r) => [r];
  if (given.division === "equal") return (r) => [r, r];
  const first = acceptRatio(given.r_1, "r_1", "The ratio of the first compressor");
  return (r) => [first, r];
}

/** What can be had, in the words of the wish. */
function limitOf(wish: Sought, had: SI): Limit {
  if (wish.kind === "power") return { value: (wish.W_e * had) / wish.aim, kind: "power" };
  return { value: Math.max(had, 0), kind: wish.kind };
}
