import type { Across, Along, Layout, SideBySide } from "./layout.ts";

const along = (water: Along["water"]): Along => ({ kind: "along", water });

/** One channel a pass, in one pass, with the air kept apart by the fins, unless the parts say otherwise. */
const across = (parts: Partial<Across>): Across => ({
  kind: "across",
  passes: 1,
  order: "counter",
  rows: 1,
  air: "unmixed",
  turn: "mixed",
  next: "back",
  ...parts,
});

const sideBySide = (rows: SideBySide["rows"]): SideBySide => ({ kind: "side by side", passes: 2, rows });

const shell = (shells: number, tubePasses: number): Layout => ({ kind: "shell", shells, tubePasses });

/** How the streams lie in each arrangement, by its id. */
export const layouts = {
  counterflow: along("against"),
  "parallel-flow": along("with"),

  "cross-unmixed": across({ rows: "many" }),
  "cross-one-row": across({}),
  "cross-two-rows": across({ rows: 2 }),
  "cross-three-rows": across({ rows: 3 }),
  "cross-four-rows": across({ rows: 4 }),
  "cross-air-mixed": across({ rows: "many", air: "mixed" }),
  "cross-mixed": across({ air: "mixed" }),

  "counter-cross-2": across({ passes: 2 }),
  "counter-cross-2-crossover": across({ passes: 2, next: "same way" }),
  "counter-cross-3": across({ passes: 3 }),
  "counter-cross-4": across({ passes: 4 }),
  "counter-cross-5": across({ passes: 5 }),
  "counter-cross-2-rows": across({ passes: 2, rows: "many" }),
  "counter-cross-2-rows-identical": across({ passes: 2, rows: "many", turn: "identical" }),
  "counter-cross-2-rows-inverted": across({ passes: 2, rows: "many", turn: "inverted" }),
  "counter-cross-2-remixed": across({ passes: 2, rows: "many", air: "remixed" }),

  "parallel-cross-2": across({ passes: 2, order: "parallel" }),
  "parallel-cross-2-crossover": across({ passes: 2, order: "parallel", next: "same way" }),
  "parallel-cross-3": across({ passes: 3, order: "parallel" }),
  "parallel-cross-4": across({ passes: 4, order: "parallel" }),
  "parallel-cross-5": across({ passes: 5, order: "parallel" }),
  "parallel-cross-2-rows": across({ passes: 2, order: "parallel", rows: "many" }),
  "parallel-cross-2-rows-identical": across({
    passes: 2,
    order: "parallel",
    rows: "many",
    turn: "identical",
  }),
  "parallel-cross-2-rows-inverted": across({ passes: 2, order: "parallel", rows: "many", turn: "inverted" }),
  "parallel-cross-2-remixed": across({ passes: 2, order: "parallel", rows: "many", air: "remixed" }),

  "face-split": sideBySide(1),
  "face-split-rows": sideBySide("many"),

  "shell-1-2": shell(1, 2),
  "shell-1-4": shell(1, 4),
  "shell-2-4": shell(2, 4),
  "shell-3-6": shell(3, 6),
} as const satisfies Readonly<Record<string, Layout>>;
