import { coolantProperties } from "../../../calc/exchanger/coolant-properties.ts";
import { subject } from "../subject.ts";

type Given = Parameters<typeof coolantProperties>[0];

/** Only what is held against fresh water, the margin to freezing and the volume. */
export default subject<Record<string, number | string>>((given, trace) => {
  const { X_C, X_mu, Pr, Delta_T_f, phi_g } = coolantProperties(given as unknown as Given, trace);
  return { X_C: X_C ?? null, X_mu: X_mu ?? null, Pr, Delta_T_f, phi_g: phi_g ?? null };
});
