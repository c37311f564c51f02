import { describe, expect, it } from "vitest";
import { fieldEffectiveness } from "../../../../calc/exchanger/field/field-effectiveness.ts";
import { type Bank, temperatureField } from "../../../../calc/exchanger/field/temperature-field.ts";
import type { Across, Layout } from "../../../../calc/exchanger/layout.ts";
import { layouts } from "../../../../calc/exchanger/layouts.ts";
import { DomainError } from "../../../../calc/quantity/domain-error.ts";

/** Layouts of the registry, and those that only the field knows. */
const core = (parts: Partial<Across>): Across => ({ ...layouts["counter-cross-2-rows"], ...parts });
const all: readonly (readonly [string, Layout])[] = [
  ...Object.entries(layouts as Readonly<Record<string, Layout>>).filter(([, { kind }]) => kind !== "shell"),
  ["one channel, air remixed", core({ rows: 1, air: "remixed" })],
  ["identical, air remixed", core({ air: "remixed", turn: "identical" })],
  ["inverted, air remixed", core({ air: "remixed", turn: "inverted" })],
  ["parallel, inverted, air remixed", core({ order: "parallel", air: "remixed", turn: "inverted" })],
  ["four passes of many channels", core({ passes: 4, turn: "inverted" })],
  ["three passes, the same way each", core({ passes: 3, next: "same way" })],
  ["two passes, air mixed everywhere", core({ air: "mixed" })],
  ["three passes of one channel, air mixed everywhere", core({ passes: 3, rows: 1, air: "mixed" })],
  ["two rows fed side by side, air mixed", { ...layouts["cross-two-rows"], air: "mixed" }],
];

const mean = (cells: Float64Array) => cells.reduce((sum, T) => sum + T, 0) / cells.length;
const at = (bank: Bank | undefined, of: "airCells" | "waterCells", index: number) =>
  bank?.[of].at(index) as number;
const flows = [
  [0.05, 1],
  [1, 0.5],
  [3, 1],
  [5, 2],
  [2, 4],
] as const;

describe("heat that the air gives off", () => {
  it.each(all)("is what the water takes up, and what the gaps between them let through: %s", (_, layout) => {
    for (const [NTU, R] of flows) {
      const { effectiveness, waterOut, airOut, banks } = temperatureField(layout, NTU, R, 24);
      expect(Math.abs(waterOut - R * effectiveness)).toBeLessThan(1e-12);
      expect(Math.abs(1 - mean(airOut) - effectiveness)).toBeLessThan(1e-12);
      const gaps = banks.map(({ airCells, waterCells }) => mean(airCells) - mean(waterCells));
      const passed = (NTU * gaps.reduce((sum, gap) => sum + gap, 0)) / gaps.length;
      expect(Math.abs(passed - effectiveness)).toBeLessThan(layout.kind === "along" ? 1e-8 : 1e-12);
    }
  });

  it.each(all)("leaves no temperature outside those of the entering streams: %s", (_, layout) => {
    for (const [NTU, R] of [...flows, [30, 0.2], [2, 60]] as const)
      for (const { airCells, waterCells } of temperatureField(layout, NTU, R, 16).banks)
        for (const cells of [airCells, waterCells]) {
          expect(Math.min(...cells)).toBeGreaterThan(-1e-12);
          expect(Math.max(...cells)).toBeLessThan(1 + 1e-12);
        }
  });

  it.each(all)("is none without surface, and 1 - exp(-NTU) where the water stays cold: %s", (_, layout) => {
    expect(temperatureField(layout, 0, 0.7, 8).effectiveness).toBeCloseTo(0, 14);
    expect(temperatureField(layout, 0, 0, 8).effectiveness).toBeCloseTo(0, 14);
    for (const NTU of [0.1, 1, 6]) {
      expect(fieldEffectiveness(layout, NTU, 0)).toBeCloseTo(1 - Math.exp(-NTU), 11);
      expect(fieldEffectiveness(layout, NTU, 1e-9)).toBeCloseTo(1 - Math.exp(-NTU), 8);
      expect(temperatureField(layout, NTU, 0, 8).waterOut).toBe(0);
    }
  });
});

describe("the field without extrapolation", () => {
  const converging: readonly (readonly [string, Layout])[] = [
    ["one pass, unmixed", layouts["cross-unmixed"]],
    ["two rows", layouts["cross-two-rows"]],
    ["one channel a pass", layouts["counter-cross-2"]],
    ["five passes", layouts["counter-cross-5"]],
    ["mixed in the header", layouts["counter-cross-2-rows"]],
    ["identical", layouts["counter-cross-2-rows-identical"]],
    ["inverted, the wrong way round", layouts["parallel-cross-2-rows-inverted"]],
    ["side by side", layouts["face-split-rows"]],
  ];

  it.each(converging)("comes closer with the square of the cell size: %s", (_, layout) => {
    const exact = fieldEffectiveness(layout, 3, 0.7, 40, 5);
    const off = (cells: number) => temperatureField(layout, 3, 0.7, cells).effectiveness - exact;
    expect(Math.log2(off(20) / off(40))).toBeCloseTo(2, 1);
    expect(Math.log2(off(40) / off(80))).toBeCloseTo(2, 2);
  });

  it.each(all)("is good to a part in ten thousand with 40 cells: %s", (_, layout) => {
    for (const [NTU, R] of flows)
      expect(
        Math.abs(temperatureField(layout, NTU, R).effectiveness - fieldEffectiveness(layout, NTU, R)),
      ).toBeLessThan(1e-4);
  });
});

describe("extrapolated to cells of no size", () => {
  it.each(all)("does not depend on the grids: %s", (_, layout) => {
    for (const NTU of [0.05, 1, 5, 10])
      for (const R of [0.1, 1, 2, 4]) {
        const off = fieldEffectiveness(layout, NTU, R) - fieldEffectiveness(layout, NTU, R, 40, 4);
        expect(Math.abs(off), `NTU ${NTU}, R ${R}`).toBeLessThan(1e-9);
      }
  });

  it("stays right far outside what coolers have", () => {
    for (const id of ["counter-cross-2-rows", "counter-cross-2-rows-inverted", "cross-unmixed"] as const) {
      expect(
        Math.abs(fieldEffectiveness(layouts[id], 60, 1) - fieldEffectiveness(layouts[id], 60, 1, 60)),
      ).toBeLessThan(1e-9);
      expect(fieldEffectiveness(layouts[id], 4, 100)).toBeCloseTo(0.01, 12);
    }
  });
});

describe("streams that swap their parts", () => {
  /** P R = P' where P' is counted on the water: with the water as the air, NTU R and 1/R. */
  const swapped = [
    ["cross-unmixed", "cross-unmixed"],
    ["cross-one-row", "cross-air-mixed"],
    ["cross-mixed", "cross-mixed"],
    ["counterflow", "counterflow"],
    ["parallel-flow", "parallel-flow"],
  ] as const;

  it.each(swapped)("%s becomes %s", (id, other) => {
    for (const [NTU, R] of flows) {
      const onWater = fieldEffectiveness(layouts[other], NTU * R, 1 / R);
      expect(Math.abs(fieldEffectiveness(layouts[id], NTU, R) * R - onWater)).toBeLessThan(1e-11);
    }
  });

  it("mirror their field about its diagonal where both are alike", () => {
    const n = 20;
    const [bank] = temperatureField(layouts["cross-unmixed"], 2.5, 1, n).banks;
    for (let row = 0; row < n; row++)
      for (let column = 0; column < n; column++)
        expect(at(bank, "airCells", row * n + column)).toBeCloseTo(
          1 - at(bank, "waterCells", column * n + row),
          13,
        );
  });

  it("do not care which way the next pass runs where all is mixed between", () => {
    const layout = layouts["counter-cross-2-remixed"];
    expect(fieldEffectiveness({ ...layout, next: "same way" }, 3, 0.8)).toBeCloseTo(
      fieldEffectiveness(layout, 3, 0.8),
      12,
    );
  });
});

describe("where what lies", () => {
  it("the bank that the air meets first holds the last pass, and its outlet the hottest water", () => {
    const { banks, columns, airOut } = temperatureField(layouts["counter-cross-2"], 2, 0.5, 10);
    const [first, last] = banks;
    expect(first).toMatchObject({ x: [0, 0.5], y: [0, 1], pass: 2, waterRuns: "down" });
    expect(last).toMatchObject({ x: [0.5, 1], y: [0, 1], pass: 1, waterRuns: "up" });
    const hottest = Math.max(...banks.flatMap(({ waterCells }) => [...waterCells]));
    const coldest = Math.min(...banks.flatMap(({ waterCells }) => [...waterCells]));
    expect(at(first, "waterCells", 0)).toBe(hottest);
    expect(at(last, "waterCells", 0)).toBe(coldest);
    // At the top the water turns, at the temperature that it has there in both banks.
    expect(Math.abs(at(first, "waterCells", -1) - at(last, "waterCells", -1))).toBeLessThan(0.05);
    expect(airOut).toHaveLength(10);
    expect(airOut[0]).toBeLessThan(airOut[9] as number);
    expect(at(first, "airCells", 0)).toBeGreaterThan(at(first, "airCells", columns - 1));
  });

  it("with the hoses swapped the coldest water meets the hottest air", () => {
    const { banks } = temperatureField(layouts["parallel-cross-2"], 2, 0.5, 10);
    const [first, last] = banks;
    expect(first).toMatchObject({ x: [0, 0.5], pass: 1, waterRuns: "up" });
    expect(last).toMatchObject({ x: [0.5, 1], pass: 2, waterRuns: "down" });
    expect(at(first, "waterCells", 0)).toBe(Math.min(...banks.flatMap(({ waterCells }) => [...waterCells])));
    expect(Math.min(...(last?.waterCells ?? []))).toBeGreaterThan(
      Math.max(...(first?.waterCells ?? [])) - 0.05,
    );
  });

  it("a pipe across makes the second pass run the same way", () => {
    const { banks } = temperatureField(layouts["counter-cross-2-crossover"], 2, 0.5, 4);
    expect(banks.map(({ pass, waterRuns }) => [pass, waterRuns])).toEqual([
      [2, "up"],
      [1, "up"],
    ]);
  });

  it("channels come back in the same place, or in nested bends in the opposite one", () => {
    const n = 60;
    for (const [id, mirrored] of [
      ["parallel-cross-2-rows-identical", false],
      ["parallel-cross-2-rows-inverted", true],
    ] as const) {
      const [first, last] = temperatureField(layouts[id], 2, 1, n).banks;
      const top = (n - 1) * n;
      for (let column = 0; column < n; column++) {
        const before = at(first, "waterCells", top + column);
        const after = at(last, "waterCells", top + (mirrored ? n - 1 - column : column));
        expect(Math.abs(before - after)).toBeLessThan(0.02);
      }
    }
  });

  it("passes side by side stand one above the other, the first below, and the air leaves in two stripes", () => {
    const { banks, airOut } = temperatureField(layouts["face-split"], 2, 0.5, 6);
    expect(banks.map(({ x, y, pass, waterRuns }) => ({ x, y, pass, waterRuns }))).toEqual([
      { x: [0, 1], y: [0, 0.5], pass: 1, waterRuns: "up" },
      { x: [0, 1], y: [0.5, 1], pass: 2, waterRuns: "down" },
    ]);
    expect(airOut).toHaveLength(12);
    expect(Math.max(...airOut.subarray(0, 6))).toBeLessThan(Math.min(...airOut.subarray(6)));
  });

  it("rows fed side by side are banks of the same pass", () => {
    const { banks } = temperatureField(layouts["cross-three-rows"], 2, 0.5, 6);
    expect(banks.map(({ pass, waterRuns, x }) => [pass, waterRuns, x[0]])).toEqual([
      [1, "up", 0],
      [1, "up", 1 / 3],
      [1, "up", 2 / 3],
    ]);
  });

  it("streams along one another have the profile of a double pipe", () => {
    const { banks, airOut } = temperatureField(layouts.counterflow, 2, 1, 8);
    // With equal capacity rates the gap is the same everywhere, 1/(1 + NTU), and both lines are straight.
    for (let column = 0; column < 8; column++) {
      expect(at(banks[0], "airCells", column)).toBeCloseTo(1 - (2 / 3) * ((column + 0.5) / 8), 12);
      expect(at(banks[0], "airCells", column) - at(banks[0], "waterCells", column)).toBeCloseTo(1 / 3, 12);
    }
    expect(airOut[0]).toBeCloseTo(1 / 3, 12);
    expect(banks[0]?.waterRuns).toBe("against");
    expect(temperatureField(layouts["parallel-flow"], 2, 1, 8).banks[0]?.waterRuns).toBe("along");
  });

  it("finer cells than asked for are averaged, where one would hold more than one transfer unit", () => {
    const coarse = temperatureField(layouts["cross-unmixed"], 20, 1, 10);
    const fine = temperatureField(layouts["cross-unmixed"], 20, 1, 20);
    expect(coarse.columns).toBe(10);
    expect(coarse.banks[0]?.airCells).toHaveLength(100);
    expect(coarse.effectiveness).toBe(fine.effectiveness);
    const [a, b, c, d] = [0, 1, 20, 21].map((i) => at(fine.banks[0], "airCells", i)) as [
      number,
      number,
      number,
      number,
    ];
    expect(at(coarse.banks[0], "airCells", 0)).toBeCloseTo((a + b + c + d) / 4, 14);
    expect(coarse.airOut[9]).toBeCloseTo(((fine.airOut[18] as number) + (fine.airOut[19] as number)) / 2, 14);
  });
});

describe("what has no field", () => {
  const refusal = (run: () => unknown): unknown => {
    try {
      run();
    } catch (error) {
      return error;
    }
    return undefined;
  };
  const layout = layouts["counter-cross-2-rows"];

  it.each([temperatureField, fieldEffectiveness])("is refused with its field and its bound", (run) => {
    for (const [NTU, R, field, bound] of [
      [-1, 1, "NTU", 0],
      [Number.NaN, 1, "NTU", undefined],
      [Number.POSITIVE_INFINITY, 1, "NTU", undefined],
      [1, -0.1, "R", 0],
      [1, Number.NaN, "R", undefined],
      [1, 1001, "R", 1000],
      [2001, 0.5, "NTU", 2000],
      [600, 4, "NTU", 500],
    ] as const) {
      const error = refusal(() => run(layout, NTU, R));
      expect(error).toBeInstanceOf(DomainError);
      expect(error).toMatchObject({ field });
      expect((error as DomainError).limit?.value).toBe(bound);
    }
  });

  it.each([temperatureField, fieldEffectiveness])("is refused where the layout has none", (run) => {
    for (const odd of [
      layouts["shell-1-2"],
      { ...layout, passes: 0 },
      { ...layout, passes: 1.5 },
      { ...layout, passes: 1, rows: 0 },
      { ...layout, passes: 2, rows: 3 },
    ])
      expect(() => run(odd, 1, 1)).toThrow(RangeError);
    expect(() => run(layout, 1, 1, 0)).toThrow(RangeError);
    expect(() => run(layout, 1, 1, 2.5)).toThrow(RangeError);
    expect(() => fieldEffectiveness(layout, 1, 1, 10, 0)).toThrow(RangeError);
  });

  it("one channel has a field at any size", () => {
    expect(fieldEffectiveness(layouts["counter-cross-2"], 1e6, 0.5)).toBeCloseTo(
      (1 - 1 / (0.5 + 0.5 * Math.E)) / 0.5,
      11,
    );
  });
});
