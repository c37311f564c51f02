import { type ContributionsGiven, contributions } from "../../../calc/charge/contributions.ts";
import { subject } from "../subject.ts";

/* Both splits of one chain. The sets of the hardware are named by what is in them: v_C1, v_K1, v_C1K1. */
export default subject<ContributionsGiven & Record<string, number | string>>((given, trace) => {
  const byChanges = contributions({ ...given, split: "changes" }, trace);
  const byHardware = contributions({ ...given, split: "hardware" }, trace);
  const { devices, hardware } = byHardware;
  const sets = [...(hardware?.outfits ?? [])].map(
    ([set, outfit]) => [devices.filter((_, i) => (set >> i) % 2 === 1).join(""), outfit] as const,
  );
  return {
    D_rho: byHardware.D_rho,
    Delta_D: byHardware.Delta_D,
    rho_m: byHardware.paths.at(-1)?.after.rho ?? null,
    T_m: byHardware.paths.at(-1)?.after.T ?? null,
    ...Object.fromEntries(byHardware.works.map((work, i) => [`work_${i + 1}`, work])),
    ...Object.fromEntries(
      (byChanges.changes ?? []).flatMap((stage, i) =>
        Object.entries(stage).map(([change, part]) => [`${change}_${i + 1}`, part]),
      ),
    ),
    ...Object.fromEntries([...(hardware?.credits ?? [])].map(([id, credit]) => [`credit_${id}`, credit])),
    ...Object.fromEntries(sets.map(([name, { D_rho }]) => [`v_${name}`, D_rho])),
    ...Object.fromEntries(
      sets.flatMap(([name, { losses }]) => [...losses].map(([id, loss]) => [`loss_${id}_of_${name}`, loss])),
    ),
  };
});
