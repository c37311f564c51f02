import type { Outcome, StationOf, When } from "../engine/calculator.ts";

const quantities = {
  p: { name: "Pressure", kind: "pressure" },
  T: { name: "Temperature", kind: "temperature" },
  rho: { name: "Density", kind: "density" },
  w: { name: "Humidity ratio", kind: "humidityRatio" },
} as const;

type Quantity = keyof typeof quantities;

/** The state at a station as results that stand in the picture alone; `only` some where the others are in the list. */
export const stationResults = <N extends string, Q extends Quantity = Quantity>(
  number: N,
  place: string,
  only: readonly Q[] = Object.keys(quantities) as Q[],
  when?: When,
) =>
  Object.fromEntries(
    only.map((quantity) => {
      const { name, kind } = quantities[quantity];
      const id = `${quantity}_${number}`;
      const outcome: Outcome = {
        label: `${name}, ${place}`,
        symbol: id,
        kind,
        inPicture: true,
        ...(when && { when }),
      };
      return [id, outcome];
    }),
  ) as Readonly<Record<`${Q}_${N}`, Outcome>>;

/** A station of a path whose state is in results of the usual names. */
export const stationOf = <N extends string>(number: N, label: string) =>
  ({
    number,
    label,
    T: `T_${number}`,
    p: `p_${number}`,
    rho: `rho_${number}`,
    w: `w_${number}`,
  }) as const satisfies StationOf<string>;
