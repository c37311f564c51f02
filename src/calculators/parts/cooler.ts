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
 * A cooler on a path, known in one of three ways, in sight `when` the rest of the path has it. The second one's ids have the
 * suffix, those of its outlet and its loss say their stations themselves; ids are the symbols of the numbers too.
 */
export function coolerAfter<S extends "" | "_45", T extends string, D extends string>(place: {
  readonly heading: string;
  readonly suffix: S;
  readonly T_out: T;
  readonly Delta_p: D;
  readonly when?: When;
}) {
  const { heading, suffix, T_out, Delta_p, when } = place;
  const known = (...kinds: readonly string[]) => ({ when: { ...when, [`cooler${suffix}`]: kinds } });
  const withWater = known("effectiveness", "temperature");
  const of = <N extends string>(name: N) => `${name}${suffix}` as const;
  const named = (label: string) => (suffix ? `${label}, second cooler` : label);
  const field = (one: Omit<Field, "symbol">, symbol: string, sight: { readonly when: When }): Field => ({
    ...one,
    label: named(one.label),
    symbol,
    ...sight,
  });
  return {
    [of("cooler")]: {
      label: named("What is known of the cooler"),
      heading,
      options: ways,
      start: "temperature",
      help: "",
      ...(when && { when }),
    },
    [T_out]: field(coolerInputs.T_3, T_out, known("temperature")),
    [of("P")]: field(effectivenessField, of("P"), known("effectiveness")),
    [of("T_w_in")]: field(waterInletField, of("T_w_in"), withWater),
    [Delta_p]: field(coolerInputs.Delta_p_23, Delta_p, withWater),
    [of("Delta_T_w")]: field(waterRiseField, of("Delta_T_w"), withWater),
  } as Readonly<Record<`cooler${S}`, Choice> & Record<`${"P" | "T_w_in" | "Delta_T_w"}${S}` | T | D, Field>>;
}
