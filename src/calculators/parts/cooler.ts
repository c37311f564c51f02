import type { Choice, Field, When } from "../engine/calculator.ts";

/** A charge cooler known by what comes out of it. */
export const coolerInputs = {
  T_3: {
    label: "Cooler outlet temperature",
    symbol: "T_3",
    kind: "temperature",
    start: 323.15,
    limits: [233.15, 573.15],
    help: "",
  },
  Delta_p_23: {
    label: "Pressure lost in the cooler",
    symbol: "Delta_p_23",
    kind: "pressureDifference",
    start: 6000,
    limits: [0, 200_000],
    typical: [0, 12_000],
    help: "",
  },
} as const satisfies Record<string, Field>;

const ways = {
  temperature: "its outlet temperature is known",
  effectiveness: "its effectiveness is known",
  none: "none fitted",
} as const;

/** How good a cooler on a path is. */
export const effectivenessField = {
  label: "Temperature effectiveness of the cooler",
  kind: "fraction",
  start: 0.78,
  limits: [0, 1],
  typical: [0.4, 0.95],
  help: "The part of the way from the hot air to the water inlet that the air goes.",
} as const;

/** What it is fed with. */
export const waterInletField = {
  label: "Cooling water, inlet temperature",
  kind: "temperature",
  start: 298.15,
  limits: [233.15, 393.15],
  typical: [273.15, 363.15],
  help: "",
} as const;

const waterRiseField = {
  label: "Rise of the cooling water",
  kind: "temperatureDifference",
  start: 8,
  limits: [0.1, 100],
  typical: [3, 20],
  help: "How far it may warm. It sets the flow.",
} as const;

/**
 * A cooler on a path, under ids that are also the symbols of its numbers; `cooler` is the id of the choice how it is known. It
 * is in sight `when` the rest of the path has it.
 */
export const coolerAfter = <
  C extends string,
  P extends string,
  W extends string,
  T extends string,
  D extends string,
  R extends string,
>(ids: {
  readonly heading: string;
  readonly cooler: C;
  readonly P: P;
  readonly T_w_in: W;
  readonly T_out: T;
  readonly Delta_p: D;
  readonly Delta_T_w: R;
  readonly when?: When;
}) => {
  const known = (...kinds: readonly string[]): { readonly when: When } => ({
    when: { ...ids.when, [ids.cooler]: kinds },
  });
  const inputs = {
    [ids.cooler]: {
      label: "What is known of the cooler",
      heading: ids.heading,
      options: ways,
      start: "temperature",
      help: "",
      ...(ids.when && { when: ids.when }),
    } satisfies Choice,
    [ids.T_out]: { ...coolerInputs.T_3, symbol: ids.T_out, ...known("temperature") },
    [ids.P]: { ...effectivenessField, symbol: ids.P, ...known("effectiveness") },
    [ids.T_w_in]: { ...waterInletField, symbol: ids.T_w_in, ...known("effectiveness", "temperature") },
    [ids.Delta_p]: {
      ...coolerInputs.Delta_p_23,
      symbol: ids.Delta_p,
      ...known("effectiveness", "temperature"),
    },
    [ids.Delta_T_w]: { ...waterRiseField, symbol: ids.Delta_T_w, ...known("effectiveness", "temperature") },
  };
  return inputs as unknown as Readonly<Record<C, Choice> & Record<P | W | T | D | R, Field>>;
};
