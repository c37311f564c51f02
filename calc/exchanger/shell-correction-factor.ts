import { explicit } from "../relation/relation.ts";
import { counterflowTransferUnits } from "./counterflow-transfer-units.ts";
import { shellTransferUnits } from "./shell-transfer-units.ts";

/**
 * Correction F of the mean temperature difference for one shell with two tube passes, from P (0 to 1) and R on the air.
 *
 * Throws a DomainError naming P where such a shell does not reach it.
 *
 * @example shellCorrectionFactor.compute({ P: 0.6087, R: 0.28571 }) // 0.9438
 */
export const shellCorrectionFactor = explicit({
  id: "exchanger/shell-correction-factor",
  title: "Correction for one shell, two tube passes",
  inputs: { P: { symbol: "P", kind: "fraction" }, R: { symbol: "R", kind: "ratio" } },
  result: { symbol: "F", kind: "ratio" },
  expression: "NTU_c(P, R) / NTU_s(P, R)",
  sources: [{ key: "bowman-1940", where: "one shell pass, two tube passes", standing: "from memory" }],
  compute: ({ P, R }) => {
    const needed = shellTransferUnits.compute({ P, R });
    return needed === 0 ? 1 : counterflowTransferUnits.compute({ P, R }) / needed;
  },
});
