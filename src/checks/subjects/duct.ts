import { type DuctGiven, duct } from "../../../calc/flow/duct.ts";
import { subject } from "../subject.ts";

type Given = DuctGiven & Record<string, number | string>;

const radians = (degrees: number | undefined) =>
  degrees === undefined ? undefined : (degrees * Math.PI) / 180;

export default subject<Given>((given, trace) => {
  const found = duct(
    {
      ...given,
      theta: radians(given.theta) ?? Number.NaN,
      theta_before: radians(given.theta_before),
      theta_after: radians(given.theta_after),
    },
    trace,
  );
  return Object.fromEntries(Object.entries(found).map(([name, value]) => [name, value ?? null]));
});
