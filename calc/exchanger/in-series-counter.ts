import { refuse } from "../quantity/accept.ts";
import { explicit } from "../relation/relation.ts";

/**
 * The same as a plain function. Sums what each unit leaves over, so that nothing is lost where both do nearly all that can
 * be done.
 */
export function inSeriesCounterOf(P_A: number, P_B: number, R: number): number {
  const leftOver = 1 - P_A + P_A * (1 - R * P_B);
  return leftOver === 0 ? 1 : (P_A * (1 - P_B) + P_B * (1 - R * P_A)) / leftOver;
}

/** Throws a DomainError for `field` where the water of a unit would leave hotter than the air enters. */
export function refuseHotterWater(field: string, P: number, R: number): void {
  refuse(
    P > 1 || R * P > 1,
    field,
    "With this effectiveness the water would leave hotter than the air enters, or the air colder than the water. It may be as high as the bound.",
    { value: Math.min(1, 1 / R), kind: "fraction" },
  );
}

/**
 * Temperature effectiveness (0 to 1) of two units in series through which the water runs against the air, each stream
 * mixed on its way from one to the other; R, on the air, is the same for both.
 *
 * Throws a DomainError naming P_A or P_B where P or R P is above 1.
 *
 * @example inSeriesCounter.compute({ P_A: 0.5, P_B: 0.4, R: 0.5 }) // 0.6667
 */
export const inSeriesCounter = explicit({
  id: "exchanger/in-series-counter",
  title: "Two units in series, water against the air",
  inputs: {
    P_A: { symbol: "P_A", kind: "fraction" },
    P_B: { symbol: "P_B", kind: "fraction" },
    R: { symbol: "R", kind: "ratio" },
  },
  result: { symbol: "P", kind: "fraction" },
  expression: "1 - (1 - P_A) * (1 - P_B) / (1 - R * P_A * P_B)",
  sources: [{ key: "shah-sekulic-2003", where: "chapter 3, exchangers in series", standing: "from memory" }],
  compute: ({ P_A, P_B, R }) => {
    refuseHotterWater("P_A", P_A, R);
    refuseHotterWater("P_B", P_B, R);
    return inSeriesCounterOf(P_A, P_B, R);
  },
});
