import type { Along, Layout } from "../layout.ts";
import { alongProfile } from "./along.ts";
import { circulate } from "./circulate.ts";
import { acceptFlow, cellsNeeded, noField } from "./limits.ts";
import { planOf } from "./plan.ts";
import { blockMeans, meansOf } from "./profile.ts";

/**
 * One bank of tubes: one pass of the water, or one row of a pass whose rows are fed side by side. It lies at `x`, from 0
 * where the air enters the core to 1 where it leaves, and at `y`, from the bottom to the top along the tubes.
 */
export interface Bank {
  readonly x: readonly [number, number];
  readonly y: readonly [number, number];
  /** 1 is the first that the water meets. */
  readonly pass: number;
  /** Across the air, up or down; or along with it, or against it. */
  readonly waterRuns: "up" | "down" | "against" | "along";
  /** Means of the cells, row by row from the bottom: iy * columns + ix. 1 is the entering air, 0 the entering water. */
  readonly airCells: Float64Array;
  readonly waterCells: Float64Array;
}

/** `columns` by `rows` cells in each bank; the banks in the order in which the air meets them, or from the bottom. */
export interface TemperatureField {
  readonly columns: number;
  readonly rows: number;
  readonly banks: readonly Bank[];
  /** Air that leaves the core, from the bottom to the top of the whole face. */
  readonly airOut: Float64Array;
  readonly effectiveness: number;
  /** The mean of the leaving water, R times the effectiveness. */
  readonly waterOut: number;
}

/** Where Gauss's rule of three points looks, from the middle of a cell, and what the points count. */
const LOOK = Math.sqrt(0.15);
const SIDE = 5 / 18;

function alongField({ water }: Along, NTU: number, R: number, cells: number): TemperatureField {
  const profile = alongProfile(water, NTU, R);
  const cellsOf = (T: (x: number) => number) => {
    const row = Float64Array.from({ length: cells }, (_, i) => {
      const [before, middle, after] = [i + 0.5 - LOOK, i + 0.5, i + 0.5 + LOOK].map((at) =>
        T(at / cells),
      ) as [number, number, number];
      return SIDE * (before + after) + (1 - 2 * SIDE) * middle;
    });
    // All rows are alike.
    return Float64Array.from({ length: cells * cells }, (_, i) => row[i % cells] as number);
  };
  return {
    columns: cells,
    rows: cells,
    banks: [
      {
        x: [0, 1],
        y: [0, 1],
        pass: 1,
        waterRuns: water === "with" ? "along" : "against",
        airCells: cellsOf(profile.air),
        waterCells: cellsOf(profile.water),
      },
    ],
    airOut: new Float64Array(cells).fill(profile.air(1)),
    effectiveness: 1 - profile.air(1),
    waterOut: profile.water(water === "with" ? 1 : 0),
  };
}

/**
 * Temperatures of air and water over the whole core, for air that enters at 1 and water that enters at 0, with the same
 * heat conductance everywhere. `NTU` and `R` are on the air, 0 or more. `cells` is the number of cells of each bank each
 * way, 1 or more.
 *
 * The air flows towards +x. The water's first pass enters at y = 0 and runs up; in counter order it is the bank that the
 * air meets last. Passes side by side stand one above the other, each half as high.
 *
 * Second order in the size of a cell: with 40 cells the effectiveness is good to about 1e-4, and `fieldEffectiveness` has
 * it exactly. Where a cell of many channels would hold more than one transfer unit, finer cells are computed and their
 * means given.
 *
 * Throws a DomainError where NTU or R is negative, no number, or beyond what can be computed, and a RangeError for a
 * layout without a field (shells) and for passes, rows or cells that are no counts.
 *
 * @example temperatureField(layouts["counter-cross-2"], 2, 0.5).effectiveness // 0.7523
 */
export function temperatureField(layout: Layout, NTU: number, R: number, cells = 40): TemperatureField {
  acceptFlow(NTU, R);
  if (!Number.isInteger(cells) || cells < 1) throw new RangeError(`a bank has no ${cells} cells`);
  if (layout.kind === "shell") throw noField();
  if (layout.kind === "along") return alongField(layout, NTU, R, cells);
  const plan = planOf(layout, NTU, R);
  const needed = cellsNeeded(plan, NTU, 1);
  // One channel never overshoots, and its grid would become huge for layers that no picture shows.
  const finer = plan.channels === "one" ? 1 : Math.max(1, Math.ceil(needed / cells));
  const fine = finer * cells;
  const painted = plan.banks.map((bank) => ({
    bank,
    air: new Float64Array(fine * fine),
    water: new Float64Array(fine * fine),
  }));
  const { airOut, effectiveness, waterOut } = circulate(plan, fine, painted);
  return {
    columns: cells,
    rows: cells,
    banks: painted.map(({ bank: { x, y, pass, waterRuns }, air, water }) => ({
      x,
      y,
      pass,
      waterRuns,
      airCells: blockMeans(air, finer, cells),
      waterCells: blockMeans(water, finer, cells),
    })),
    airOut: meansOf(airOut, finer),
    effectiveness,
    waterOut,
  };
}
