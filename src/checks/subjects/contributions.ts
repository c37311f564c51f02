import { type ContributionsGiven, contributions } from "../../../calc/charge/contributions.ts";
import { subject } from "../subject.ts";

/* Both splits of one chain. What is fitted stands in the names: D_C1, D_K1, D_C1K1. */
export default subject<ContributionsGiven & Record<string, number | string>>((given, trace) => {
  const byChanges = contributions({ ...given, split: "changes" }, trace);
  const byHardware = contributions({ ...given, split: "hardware" }, trace);
  const { hardware } = byHardware;
  const outfits = [...(hardware?.outfits ?? [])];
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
    ...Object.fromEntries(outfits.map(([name, { D_rho }]) => [`D_${name}`, D_rho])),
    ...Object.fromEntries(
      outfits.flatMap(([name, { losses }]) =>
        [...losses].map(([id, loss]) => [`loss_${id}_of_${name}`, loss]),
      ),
    ),
  };
});
