import { describe, expect, it } from "vitest";
import { counterCross2Rows } from "../../../../calc/exchanger/effectiveness/counter-cross-2-rows.ts";
import { counterCross2RowsIdentical } from "../../../../calc/exchanger/effectiveness/counter-cross-2-rows-identical.ts";
import { counterCross2RowsInverted } from "../../../../calc/exchanger/effectiveness/counter-cross-2-rows-inverted.ts";
import { parallelCross2Rows } from "../../../../calc/exchanger/effectiveness/parallel-cross-2-rows.ts";
import { parallelCross2RowsIdentical } from "../../../../calc/exchanger/effectiveness/parallel-cross-2-rows-identical.ts";
import { parallelCross2RowsInverted } from "../../../../calc/exchanger/effectiveness/parallel-cross-2-rows-inverted.ts";

const relations = [
  counterCross2Rows,
  counterCross2RowsIdentical,
  counterCross2RowsInverted,
  parallelCross2Rows,
  parallelCross2RowsIdentical,
  parallelCross2RowsInverted,
];

describe("two passes of many channels without end", () => {
  it.each(relations)("$id comes to its limit", ({ compute }) => {
    for (const R of [0, 0.2, 0.4, 0.8, 1, 1.5, 3]) {
      const limit = compute({ NTU: Number.POSITIVE_INFINITY, R });
      const most = 400 / Math.max(1, R);
      const off = (NTU: number) => Math.abs(compute({ NTU, R }) - limit);
      // The slowest fall with the root of NTU: those whose front ends in a corner.
      expect(off(most), `R ${R}`).toBeLessThanOrEqual(0.52 * off(most / 4) + 1e-12);
      expect(off(most), `R ${R}`).toBeLessThan(0.15);
    }
  });
});
