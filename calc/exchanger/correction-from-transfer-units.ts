import { explicit } from "../relation/relation.ts";
import { counterflowTransferUnits } from "./counterflow-transfer-units.ts";

/**
 * Correction F of the mean temperature difference for an arrangement that reaches P (0 to 1) at R with NTU, all on the air:
 * 1 for counterflow, less for every other. No temperature is needed.
 *
 * Throws a DomainError naming P where it is out of reach of every arrangement.
 *
 * @example correctionFromTransferUnits.compute({ P: 0.752307, R: 0.5, NTU: 2 }) // 0.9237
 */
export const correctionFromTransferUnits = explicit({
  id: "exchanger/correction-from-transfer-units",
  title: "Correction of the mean temperature difference, from transfer units",
  inputs: {
    P: { symbol: "P", kind: "fraction" },
    R: { symbol: "R", kind: "ratio" },
    NTU: { symbol: "NTU", kind: "ratio" },
  },
  result: { symbol: "F", kind: "ratio" },
  expression: "NTU_c(P, R) / NTU",
  sources: [{ key: "shah-sekulic-2003", where: "chapter 3, correction factor F", standing: "from memory" }],
  // Without any area there is nothing to correct.
  compute: ({ P, R, NTU }) => (NTU === 0 ? 1 : counterflowTransferUnits.compute({ P, R }) / NTU),
});
