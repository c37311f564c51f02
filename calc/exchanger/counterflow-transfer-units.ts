import { decayLength } from "../numerics/decay-area.ts";
import { refuse } from "../quantity/accept.ts";
import { explicit } from "../relation/relation.ts";

/** The same as a plain function, for P < 1 and R P < 1. */
export const counterflowTransferUnitsOf = (P: number, R: number): number => decayLength(R - 1, P / (1 - P));

/**
 * Transfer units on the air that pure counterflow would need for the temperature effectiveness P (0 to 1) at R.
 *
 * Throws a DomainError naming P where no size is enough: at P = 1, and at R P = 1.
 *
 * @example counterflowTransferUnits.compute({ P: 0.7746, R: 0.5 }) // 2
 */
export const counterflowTransferUnits = explicit({
  id: "exchanger/counterflow-transfer-units",
  title: "Transfer units that counterflow would need",
  inputs: { P: { symbol: "P", kind: "fraction" }, R: { symbol: "R", kind: "ratio" } },
  result: { symbol: "NTU_c", kind: "ratio" },
  name: "NTU_c",
  expression: "log((1 - R * P) / (1 - P)) / (1 - R)",
  sources: [{ key: "shah-sekulic-2003", where: "chapter 3, table of NTU formulas", standing: "from memory" }],
  compute: ({ P, R }) => {
    refuse(
      P >= 1 || R * P >= 1,
      "P",
      "No cooler of any size or kind reaches this effectiveness. It has to be below the bound.",
      { value: Math.min(1, 1 / R), kind: "fraction" },
    );
    return counterflowTransferUnitsOf(P, R);
  },
});
