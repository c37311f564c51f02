import { refuse } from "../quantity/accept.ts";
import { explicit } from "../relation/relation.ts";

/** The same as a plain function, for P below 2/(1 + R + sqrt(1 + R^2)). */
export function shellTransferUnitsOf(P: number, R: number): number {
  const G = Math.sqrt(1 + R * R);
  return Math.log1p((2 * P * G) / (2 - P * (1 + R + G))) / G;
}

/**
 * Transfer units on the air that one shell with two tube passes needs for the temperature effectiveness P (0 to 1) at R.
 *
 * Throws a DomainError naming P where no size is enough.
 *
 * @example shellTransferUnits.compute({ P: 0.6931, R: 0.5 }) // 2
 */
export const shellTransferUnits = explicit({
  id: "exchanger/shell-transfer-units",
  title: "Transfer units that one shell, two tube passes needs",
  inputs: { P: { symbol: "P", kind: "fraction" }, R: { symbol: "R", kind: "ratio" } },
  result: { symbol: "NTU_s", kind: "ratio" },
  name: "NTU_s",
  expression: "log((2 - P * (1 + R - sqrt(1 + R^2))) / (2 - P * (1 + R + sqrt(1 + R^2)))) / sqrt(1 + R^2)",
  sources: [{ key: "bowman-1940", where: "one shell pass, two tube passes", standing: "from memory" }],
  compute: ({ P, R }) => {
    const most = 2 / (1 + R + Math.sqrt(1 + R * R));
    refuse(
      P >= most,
      "P",
      "One shell with two tube passes does not reach this effectiveness, however large. It has to be below the bound.",
      { value: most, kind: "fraction" },
    );
    return shellTransferUnitsOf(P, R);
  },
});
