import { renderToString } from "preact-render-to-string";
import { describe, expect, test } from "vitest";
import { DomainError, type SI } from "../../../calc/quantity/domain-error.ts";
import type { Kind } from "../../../calc/quantity/kinds.ts";
import {
  type Calculator,
  defineCalculator,
  type Picture,
} from "../../../src/calculators/engine/calculator.ts";
import { startEntries } from "../../../src/calculators/engine/entry.ts";
import { evaluate } from "../../../src/calculators/engine/evaluate.ts";
import { fetchDrawers } from "../../../src/widgets/drawing.ts";
import { DrawnPicture } from "../../../src/widgets/picture.tsx";
import { walk } from "./pictures/svg.ts";

await fetchDrawers();

type Values = Readonly<Record<string, SI | undefined>>;

/** A calculator of one input that is what its results say: enough to be drawn. */
const calculator = (kinds: Readonly<Record<string, Kind>>, model: (x: SI) => Values): Calculator =>
  defineCalculator({
    id: "drawn",
    title: "Drawn",
    group: "Flow",
    asks: "What is seen?",
    inputs: { x: { label: "X", symbol: "r", kind: "ratio", start: 2, limits: [1, 5], help: "" } },
    results: Object.fromEntries(
      Object.entries(kinds).map(([id, kind]) => [id, { label: `Result ${id}`, symbol: "r", kind }]),
    ),
    relations: [],
    model: ({ x }) => model(Number(x)),
  });

function drawn(
  one: Calculator,
  picture: Picture<string, string>,
  system: "metric" | "us" = "metric",
): string {
  const around = { system, barometer: { value: 100_000, isExample: true } };
  const { outcome, given } = evaluate(one, startEntries(one, system), around);
  if (!outcome) throw new Error("nothing to draw");
  const state = { calculator: one, given, values: outcome.values, around };
  return renderToString(<DrawnPicture picture={picture} state={state} isStale={false} />);
}

const sentence = (html: string): string => html.match(/aria-label="([^"]*)"/)?.[1] ?? "";
const cells = (html: string): string[][] =>
  [...html.matchAll(/<tr>(.*?)<\/tr>/gs)].map(([, row = ""]) =>
    [...row.matchAll(/<t[hd][^>]*>(.*?)<\/t[hd]>|<td\/?>/gs)].map(([, cell = ""]) => cell),
  );

describe("a sum", () => {
  const kinds: Record<string, Kind> = {
    a: "pressureDifference",
    b: "pressureDifference",
    all: "pressureDifference",
  };
  const picture = {
    draw: "shares",
    rows: [
      { label: "core", y: "a" },
      { label: "hose", y: "b" },
    ],
    sum: { label: "in all", y: "all" },
    title: "Where it goes.",
  } as const;
  test("is in the visitor's unit", () => {
    const one = calculator(kinds, () => ({ a: 3000, b: 1000, all: 4000 }));
    expect(sentence(drawn(one, picture))).toBe(
      "Where it goes. The largest part is core, 3.000 kPa, 75 % of the sum. The sum is in all, 4.000 kPa.",
    );
    expect(cells(drawn(one, picture, "us"))).toEqual([
      ["core", "0.4351 psi"],
      ["hose", "0.1450 psi"],
      ["in all", "0.5802 psi"],
    ]);
  });
  test("leaves out what has no value, and says so where nothing has", () => {
    const one = calculator(kinds, () => ({ a: 3000, all: 3000 }));
    expect(cells(drawn(one, picture)).map(([label]) => label)).toEqual(["core", "in all"]);
    expect(
      drawn(
        calculator(kinds, () => ({})),
        picture,
      ),
    ).toContain("There is nothing to add up");
  });
  test("refuses parts of another kind", () => {
    const one = calculator({ ...kinds, b: "power" }, () => ({ a: 3000, all: 3000 }));
    expect(() => drawn(one, picture)).toThrow("“b” is not of the kind of its sum");
    expect(() => drawn(one, { ...picture, rows: [{ label: "c", y: "c" }] })).toThrow(
      "“c”, which is no result",
    );
  });
});

describe("a table of states", () => {
  const kinds: Record<string, Kind> = {
    T_a: "temperature",
    p_a: "pressure",
    T_b: "temperature",
    p_b: "pressureDifference",
    T_c: "temperature",
    p_c: "power",
  };
  const picture = {
    draw: "states",
    columns: ["Temperature", "Pressure"],
    rows: [
      { label: "before", values: ["T_a", "p_a"] },
      { label: "after", values: ["T_b", "p_b"] },
      { label: "further on", values: ["T_c", "p_c"] },
    ],
    title: "The air.",
  } as const;
  const one = calculator(kinds, () => ({ T_a: 298.15, p_a: 100_000, T_b: 323.15 }));
  test("has a row a state with a value, its numbers as results are written, units over them", () => {
    expect(cells(drawn(one, picture))).toEqual([
      ["", "Temperature, °C", "Pressure, kPa"],
      ["before", "25.0", "100.0"],
      ["after", "50.0", "—"],
    ]);
    expect(cells(drawn(one, picture, "us"))[2]).toEqual(["after", "122.0", "—"]);
  });
  test("has the unit by the number where a column mixes them", () => {
    const mixed = calculator(kinds, () => ({ T_a: 298.15, p_a: 100_000, p_c: 5000 }));
    const rows = cells(drawn(mixed, picture));
    expect(rows[0]).toEqual(["", "Temperature, °C", "Pressure"]);
    expect(rows.slice(1)).toEqual([
      ["before", "25.0", "100.0 kPa"],
      ["further on", "—", "5.000 kW"],
    ]);
  });
  test("scrolls in a part that takes focus and has a name, with heads for rows and columns", () => {
    const html = drawn(one, picture);
    expect(html).toMatch(/<section class="scroll" tabindex="0" aria-label="The air\.">/i);
    expect(html.match(/<th scope="col"/g)).toHaveLength(2);
    expect(html.match(/<th scope="row"/g)).toHaveLength(2);
  });
  test("says so where there is no number at all", () => {
    const html = drawn(
      calculator(kinds, () => ({})),
      picture,
    );
    expect(html).not.toContain("<table");
    expect(html).toContain("There is nothing to list at this state.");
  });
});

describe("a chart", () => {
  const kinds: Record<string, Kind> = { y: "temperature", low: "ratio", high: "ratio", most: "ratio" };
  const picture = {
    draw: "chart",
    vary: "x",
    span: [1, 4],
    x: "x",
    y: "y",
    curves: [{ label: "" }],
    bands: [{ from: "low", to: "high", label: "as usual" }],
    bounds: [{ at: "most", label: "the most that it bears", wrong: "above" }],
    title: "Drawn.",
  } as const;
  const warm = (x: SI) => 300 + 10 * x;
  test("shades a band between two results, and hatches past a bound", () => {
    const html = drawn(
      calculator(kinds, (x) => ({ y: warm(x), low: 1.5, high: 2.5, most: 3 })),
      picture,
    );
    expect(html).toContain('class="shade"');
    expect(html).toContain('class="hatch"');
    expect(sentence(html)).toContain(
      "Shaded from 1.5 to 2.5: as usual. Hatched above 3: the most that it bears.",
    );
  });
  test("leaves them out where a result has no value", () => {
    const html = drawn(
      calculator(kinds, (x) => ({ y: warm(x), low: 1.5 })),
      picture,
    );
    expect(html).not.toMatch(/class="(shade|hatch)"/);
    expect(html).not.toMatch(/as usual|bears/);
  });
  test("has a gap where the model refuses, and an axis for what is left", () => {
    const html = drawn(
      calculator(kinds, (x) => {
        if (x > 2.5 && x < 3) throw new DomainError("x", "It cannot be between two and a half and three.");
        return { y: warm(x) };
      }),
      picture,
    );
    const [, d = ""] = html.match(/class="curve solid" d="([^"]*)"/) ?? [];
    expect(d.match(/M/g)).toHaveLength(2);
    expect(html).not.toMatch(/NaN|Infinity/);
    expect(sentence(html)).toContain("36.85 °C at 1, then 66.85 °C at 4.");
  });
  test("ends a little beyond the part that has values, with the state and what stands near it in sight", () => {
    const html = drawn(
      calculator(kinds, (x) => {
        if (x > 2.2) throw new DomainError("x", "It cannot be beyond.");
        return { y: warm(x), most: 2.2 };
      }),
      { ...picture, span: [1, 40] },
    );
    const [, left = "", right = ""] = html.match(/class="axis" d="M([\d.]+) [\d.]+V[\d.]+H([\d.]+)"/) ?? [];
    const points = walk(html.match(/class="curve solid" d="([^"]*)"/)?.[1] ?? "");
    expect(points[0]?.[0]).toBeCloseTo(Number(left), 0);
    const share = ((points.at(-1)?.[0] ?? 0) - Number(left)) / (Number(right) - Number(left));
    expect(share).toBeGreaterThan(0.8);
    expect(share).toBeLessThan(0.95);
    expect(sentence(html)).toContain("then 48.85 °C at 2.2.");
    expect(sentence(html)).toContain("Hatched above 2.2");
    expect(html).toContain('class="state"');
  });
  test("stands where the state at hand is not known", () => {
    const html = drawn(
      calculator({ ...kinds, z: "ratio" }, (x) => ({ y: warm(x) })),
      { ...picture, x: "z" },
    );
    expect(html).not.toMatch(/NaN|class="state"/);
    expect(html).toContain('class="curve solid"');
  });
  test("spans the best, wherever it lies, and as much beyond it", () => {
    const best = { at: "most", label: "best" };
    for (const most of [0.5, 3.9]) {
      const html = drawn(
        calculator(kinds, (x) => ({ y: warm(x), most })),
        { ...picture, bounds: [], best },
      );
      expect(sentence(html)).toContain(`best at ${most}.`);
      expect(sentence(html)).toContain(most < 1 ? "°C at 0.5, then" : "°C at 6.8.");
    }
  });
});

describe("a path", () => {
  const at = (n: string) => ({ T: `T_${n}`, p: `p_${n}`, rho: `rho_${n}`, w: `w_${n}` });
  const picture = {
    draw: "stations",
    stations: [
      { number: "0", label: "ambient", ...at("0") },
      { number: "2", label: "first outlet", ...at("2") },
      { number: "3", label: "cooled", ...at("3") },
      { number: "4", label: "second outlet", ...at("4") },
    ],
    parts: [
      { kind: "compressor", label: "first", after: 0 },
      { kind: "cooler", label: "cooler", after: 1, water: { T_in: "t_in", T_out: "t_out", m: "m" } },
      { kind: "compressor", label: "second", after: 2 },
    ],
    title: "On its way.",
  } as const;
  const kinds: Record<string, Kind> = { t_in: "temperature", t_out: "temperature", m: "massFlow" };
  for (const n of ["0", "2", "3", "4"]) {
    Object.assign(kinds, { [`T_${n}`]: "temperature", [`p_${n}`]: "pressure", [`rho_${n}`]: "density" });
    kinds[`w_${n}`] = "humidityRatio";
  }
  const air = (n: string, T: SI) => ({ [`T_${n}`]: T, [`p_${n}`]: 100_000, [`rho_${n}`]: 1.2 });
  const all = { ...air("0", 298.15), ...air("2", 398.15), ...air("3", 323.15), ...air("4", 423.15) };
  test("tells of the water in the visitor's units, and leaves out what is not known", () => {
    const one = calculator(kinds, () => ({ ...all, t_in: 298.15, m: 0.5 }));
    expect(sentence(drawn(one, picture))).toContain(
      "cooler; its water enters at 25.0 °C, flows at 0.5000 kg/s.",
    );
    expect(sentence(drawn(one, picture, "us"))).toContain("enters at 77.0 °F, flows at 66.14 lb/min.");
  });
  test("draws no water where nothing of it is known", () => {
    const html = drawn(
      calculator(kinds, () => all),
      picture,
    );
    expect(html).not.toMatch(/class="water/);
    expect(sentence(html)).toContain("Between 2 and 3: cooler.");
  });
  test("draws a station of which only something is known", () => {
    const html = drawn(
      calculator(kinds, () => ({ ...all, T_3: undefined, rho_3: undefined })),
      picture,
    );
    expect(sentence(html)).toContain("Station 3, cooled: 100.0 kPa.");
    expect(html).not.toContain('class="air"');
  });
});
