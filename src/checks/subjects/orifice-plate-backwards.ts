import { orificePlate, type Taps } from "../../../calc/circuit/orifice/orifice-plate.ts";
import { subject } from "../subject.ts";

/** By the names of the files; `kappa` is a number in a gas. */
export interface OrificeCase extends Record<string, number | string> {
  D: number;
  d: number;
  taps: string;
  p1: number;
  dp: number;
  rho: number;
  mu: number;
  kappa: number | string;
  m: number;
}

const taps: Readonly<Record<string, Taps>> = { corner: "corner", D: "radius", flange: "flange" };

/** What is known of a plate but flow, difference and bore. */
export const plateOfCase = ({ D, taps: where, p1, rho, mu, kappa }: OrificeCase) =>
  ({
    taps: taps[where] ?? "corner",
    d_l: D,
    rho,
    mu,
    ...(typeof kappa === "number"
      ? ({ fluid: "gas", p_in: p1, kappa } as const)
      : ({ fluid: "liquid" } as const)),
  }) as const;

export default subject<OrificeCase>((given, trace) => {
  const plate = plateOfCase(given);
  const { m, d, dp } = given;
  return {
    dp_found: orificePlate({ ...plate, wanted: "difference", d, m }, trace).Delta_p,
    d_found: orificePlate({ ...plate, wanted: "bore", m, Delta_p: dp }, trace).d,
  };
});
