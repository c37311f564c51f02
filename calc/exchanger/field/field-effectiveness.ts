import type { Layout } from "../layout.ts";
import { alongProfile } from "./along.ts";
import { circulate } from "./circulate.ts";
import { acceptFlow, cellsNeeded, noField } from "./limits.ts";
import { type Plan, planOf } from "./plan.ts";

/** Cells each way of the coarsest grid. */
const FEWEST = 10;
/** How often a stream may fall to a part of 1/e in one of them. Layers of one channel are thinner, and its grid is a line. */
const IN_A_CELL = { one: 0.5, many: 4 };

/** Grids of twice as many cells each, whose even powers of the cell size are taken out one after the other (Romberg). */
function extrapolated(plan: Plan, coarsest: number, levels: number): number {
  let row: readonly number[] = [];
  for (let level = 0; level < levels; level++) {
    const next = [circulate(plan, coarsest * 2 ** level).effectiveness];
    for (const [power, before] of row.entries()) {
      const better = next[power] as number;
      next.push(better + (better - before) / (4 ** (power + 1) - 1));
    }
    row = next;
  }
  return row.at(-1) as number;
}

/**
 * The temperature effectiveness of the air, 0 to 1, from the field of both streams; `NTU` and `R` are on the air, 0 or
 * more. `cells` is the number of cells of each bank each way in the coarsest grid, `levels` the number of grids.
 *
 * With the grids chosen here it is within 1e-9 of the exact solution for NTU to 10 and R to 4, and within 1e-8 beyond.
 *
 * Throws a DomainError where NTU or R is negative, no number, or beyond what can be computed, and a RangeError for a
 * layout without a field (shells) and for passes, rows, cells or levels that are no counts.
 *
 * @example fieldEffectiveness(layouts["counter-cross-2-rows"], 3, 1) // 0.7125272
 */
export function fieldEffectiveness(
  layout: Layout,
  NTU: number,
  R: number,
  cells?: number,
  levels = 4,
): number {
  acceptFlow(NTU, R);
  for (const count of [cells ?? 1, levels])
    if (!Number.isInteger(count) || count < 1)
      throw new RangeError(`${count} is no number of cells or levels`);
  if (layout.kind === "shell") throw noField();
  if (layout.kind === "along") return 1 - alongProfile(layout.water, NTU, R).air(1);
  const plan = planOf(layout, NTU, R);
  const coarsest = Math.max(FEWEST, cellsNeeded(plan, NTU, IN_A_CELL[plan.channels]));
  return extrapolated(plan, cells ?? coarsest, levels);
}
