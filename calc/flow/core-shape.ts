import { accept } from "../quantity/accept.ts";
import type { SI } from "../quantity/domain-error.ts";

/**
 * Momentum of the flow in a passage over that at even speed. Interrupted fins start the flow anew so often that it stays
 * nearly even. Kays 1950 and Kays and London, from memory.
 */
export const momentumFactors = {
  interrupted: 1,
  channels: 1.2,
  "tubes-laminar": 1.33,
  turbulent: 1.04,
} as const satisfies Readonly<Record<string, number>>;

export type Passages = keyof typeof momentumFactors | "own";

/** What the kind of passages says of the flow in them, where it says anything. */
export const regimeOf = (surface: Passages): "laminar" | "turbulent" | undefined =>
  surface === "turbulent"
    ? "turbulent"
    : surface === "channels" || surface === "tubes-laminar"
      ? "laminar"
      : undefined;

/**
 * A core: free-flow area in m² and its share of the face, flow length and hydraulic diameter in m, Fanning factor, the kind
 * of surface (or the momentum factor itself), and the share of the face that is blocked. Headers with loss coefficients on
 * the dynamic pressure in bores in m, or none.
 */
export interface CoreGiven {
  readonly A_c?: SI | undefined;
  readonly sigma?: SI | undefined;
  readonly L?: SI | undefined;
  readonly D_h?: SI | undefined;
  readonly f_F?: SI | undefined;
  readonly surface: Passages;
  readonly K_d?: SI | undefined;
  readonly x_b?: SI | undefined;
  readonly headers: "none" | "own";
  readonly K_in?: SI | undefined;
  readonly d_in?: SI | undefined;
  readonly K_out?: SI | undefined;
  readonly d_out?: SI | undefined;
}

export interface Header {
  readonly K: SI;
  readonly d: SI;
}

export interface Core {
  readonly A_c: SI;
  readonly sigma: SI;
  readonly L: SI;
  readonly D_h: SI;
  readonly f_F: SI;
  readonly K_d: SI;
  readonly x_b: SI;
  readonly headers: { readonly inlet: Header; readonly outlet: Header } | undefined;
}

const LENGTH = { kind: "length", above: 0, atMost: 100 } as const;
const COEFFICIENT = { kind: "ratio", atLeast: 0, atMost: 1000 } as const;

/** Checks the core and its headers; throws a DomainError that names the input. */
export function acceptCore(given: CoreGiven): Core {
  const K_d = given.surface === "own" ? given.K_d : momentumFactors[given.surface];
  return {
    A_c: accept("A_c", "The free-flow area", given.A_c, { kind: "area", above: 0, atMost: 1000 }),
    sigma: accept("sigma", "The free-flow area over that of the face", given.sigma, {
      kind: "fraction",
      above: 0,
      atMost: 1,
    }),
    L: accept("L", "The flow length of the core", given.L, LENGTH),
    D_h: accept("D_h", "The hydraulic diameter", given.D_h, LENGTH),
    f_F: accept("f_F", "The friction factor", given.f_F, { kind: "ratio", atLeast: 0, atMost: 100 }),
    K_d: accept("K_d", "The momentum factor", K_d, { kind: "ratio", atLeast: 1, atMost: 1.6 }),
    x_b: accept("x_b", "The share of the face that is blocked", given.x_b ?? 0, {
      kind: "fraction",
      atLeast: 0,
      atMost: 0.9,
    }),
    headers:
      given.headers === "none"
        ? undefined
        : {
            inlet: {
              K: accept("K_in", "The loss coefficient of the inlet header", given.K_in, COEFFICIENT),
              d: accept("d_in", "The bore of the inlet header", given.d_in, LENGTH),
            },
            outlet: {
              K: accept("K_out", "The loss coefficient of the outlet header", given.K_out, COEFFICIENT),
              d: accept("d_out", "The bore of the outlet header", given.d_out, LENGTH),
            },
          },
  };
}
