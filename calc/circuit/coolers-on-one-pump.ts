import type { Points } from "../numerics/straight-lines.ts";
import { DomainError, type SI } from "../quantity/domain-error.ts";
import { type Model, plain, type Trace } from "../relation/trace.ts";
import type { LiquidGiven } from "./liquid.ts";
import { type CoolerBranchGiven, type TwoCoolers, type TwoCoolersGiven, twoCoolers } from "./two-coolers.ts";

/**
 * Two coolers by flat fields: side by side, with the flows or the valves wanted, or one behind the other. All pipes are of one
 * roughness, both cores have one exponent and both valves one recovery factor; with `pipes` of their own, each cooler has one.
 */
export interface CoolersOnOnePumpGiven extends LiquidGiven {
  readonly wanted: "flows" | "settings" | "series";
  readonly source: "pump" | "head";
  readonly points: Points;
  readonly h_z?: SI | undefined;
  readonly h_w?: SI | undefined;
  readonly pipes: "shared" | "own";
  readonly L_shared?: SI | undefined;
  readonly d_shared?: SI | undefined;
  readonly K_shared?: SI | undefined;
  readonly L_one?: SI | undefined;
  readonly d_one?: SI | undefined;
  readonly K_one?: SI | undefined;
  readonly L_two?: SI | undefined;
  readonly d_two?: SI | undefined;
  readonly K_two?: SI | undefined;
  readonly k_s?: SI | undefined;
  readonly Delta_p_ref_one?: SI | undefined;
  readonly V_ref_one?: SI | undefined;
  readonly Delta_p_ref_two?: SI | undefined;
  readonly V_ref_two?: SI | undefined;
  readonly n_p?: SI | undefined;
  readonly K_v_one?: SI | undefined;
  readonly K_v_two?: SI | undefined;
  readonly V_w_one?: SI | undefined;
  readonly V_w_two?: SI | undefined;
  readonly F_L?: SI | undefined;
  readonly p_out?: SI | undefined;
}

/** From this part of a miss on, one round more is worth a remark: a tenth of a miss of a tenth is within any meter. */
const SLOW = 0.1;

/**
 * Flows of two coolers on one pump or head, or the valves that two flows need, with the order in which to set them as a note.
 * Fails as `twoCoolers` does, with the names of the fields here.
 *
 * @example
 * coolersOnOnePump({ wanted: "flows", source: "head", points: [], h_w: 20, pipes: "shared", liquid: "water", T_w: 298.15,
 *   L_shared: 10, d_shared: 0.0525, K_shared: 4, k_s: 45e-6, Delta_p_ref_one: 18e3, V_ref_one: 12 / 3600, Delta_p_ref_two: 18e3,
 *   V_ref_two: 12 / 3600, n_p: 2, K_v_one: 6 / 3600, K_v_two: 3 / 3600, F_L: 0.9, p_out: 106e3 }).V_w // 0.0033547 m³/s
 */
export const coolersOnOnePump: Model<CoolersOnOnePumpGiven, TwoCoolers> = (given, trace = plain) => {
  const found = withOwnFields(() => twoCoolers(structured(given), trace));
  noteOrder(given, found, trace);
  return found;
};

function structured(given: CoolersOnOnePumpGiven): TwoCoolersGiven {
  const { wanted, pipes, k_s, n_p, F_L } = given;
  const cooler = (name: "one" | "two"): CoolerBranchGiven => ({
    core: { Delta_p_ref: given[`Delta_p_ref_${name}`], V_ref: given[`V_ref_${name}`], n_p },
    pipe: pipes === "own" ? pipe(name) : undefined,
    K_v: given[`K_v_${name}`],
    V_w: given[`V_w_${name}`],
    F_L,
  });
  const pipe = (name: "one" | "two" | "shared") => ({
    L: given[`L_${name}`],
    d: given[`d_${name}`],
    K: given[`K_${name}`],
    k_s,
  });
  const { liquid, T_w, rho_w, mu_w, p_v, p_crit, p_out, points, h_z, h_w } = given;
  return {
    ...(given.source === "pump" ? { source: "pump", points, h_z } : { source: "head", h_w }),
    ...{ liquid, T_w, rho_w, mu_w, p_v, p_crit, p_out },
    layout: wanted === "series" ? "series" : "parallel",
    wanted: wanted === "settings" ? "settings" : "flows",
    shared: pipe("shared"),
    one: cooler("one"),
    two: cooler("two"),
  };
}

/** What all branches have in common has one field. */
function withOwnFields<Out>(run: () => Out): Out {
  try {
    return run();
  } catch (error) {
    const common = error instanceof DomainError && /^(k_s|n_p|F_L)_/.exec(error.field)?.[1];
    if (!common) throw error;
    throw new DomainError(common, error.message, error.limit);
  }
}

function noteOrder({ wanted }: CoolersOnOnePumpGiven, { first, left }: TwoCoolers, trace: Trace): void {
  if (wanted === "series") {
    trace.note({
      about: "order of setting",
      says: "One behind the other, both coolers have one flow: set it with one valve, and leave the other open.",
    });
    return;
  }
  const order =
    first === "either"
      ? "Set the valves in any order: they move each other alike"
      : first === "one"
        ? "Set valve one first, then two: valve one moves the other cooler more"
        : "Set valve two first, then one: valve two moves the other cooler more";
  trace.note({
    about: "order of setting",
    says:
      left > SLOW
        ? `${order}. They pull hard on each other: go round again and again, until both flows stay.`
        : `${order}. Then go round once more.`,
  });
}
