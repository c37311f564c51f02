import { renderToString } from "preact-render-to-string";
import { describe, expect, test } from "vitest";
import type { SI } from "../../../calc/quantity/domain-error.ts";
import { defineCalculator } from "../../../src/calculators/engine/calculator.ts";
import { startEntries } from "../../../src/calculators/engine/entry.ts";
import { evaluate } from "../../../src/calculators/engine/evaluate.ts";
import { CalculatorSheet } from "../../../src/widgets/calculator-sheet.tsx";
import { fetchDrawers } from "../../../src/widgets/drawing.ts";
import { DrawnPicture, pictureFor, picturesFor } from "../../../src/widgets/picture.tsx";

await fetchDrawers();

/** A cooler that is what its results say: enough to be drawn. */
const cooler = (results: Readonly<Record<string, SI | undefined>>, draw: "field" | "ranking") =>
  defineCalculator({
    id: "cooler",
    title: "Cooler",
    group: "Cooling",
    asks: "What does it do?",
    inputs: {
      core: {
        label: "Arrangement",
        options: { "counter-cross-2": "two passes", "shell-1-2": "a shell" },
        start: "counter-cross-2",
        help: "",
        drawn: ({ core = "" }) => core,
      },
      T_2: { label: "Air", symbol: "T_2", kind: "temperature", start: 433.15, limits: [200, 800], help: "" },
      T_w_in: {
        label: "Water",
        symbol: "T_w_in",
        kind: "temperature",
        start: 297.15,
        limits: [200, 800],
        help: "",
      },
    },
    results: {
      NTU: { label: "Transfer units", symbol: "NTU", kind: "ratio" },
      R: { label: "Air over water", symbol: "R", kind: "ratio" },
      T_3: { label: "Air after it", symbol: "T_3", kind: "temperature" },
      T_other: { label: "Air after another", symbol: "T_3", kind: "temperature" },
    },
    relations: [],
    model: () => results,
    pictures: [
      draw === "field"
        ? {
            draw,
            arrangement: ({ core = "" }) => String(core),
            NTU: "NTU",
            R: "R",
            hot: "T_2",
            cold: "T_w_in",
            airOut: "T_3",
            title: "Inside.",
          }
        : {
            draw,
            best: "lowest",
            rows: [
              { label: "another", y: "T_other" },
              { label: "this one", y: "T_3", arrangement: "counter-cross-2" },
            ],
            title: "Compared.",
          },
    ],
  });

function drawn(calculator: ReturnType<typeof cooler>, system: "metric" | "us", core = "counter-cross-2") {
  const around = { system, barometer: { value: 100_000, isExample: true } };
  const start = startEntries(calculator, system);
  const choices = { core };
  const { outcome, given } = evaluate(calculator, { ...start, choices }, around);
  const picture = pictureFor(calculator, choices);
  if (!outcome || !picture) throw new Error("nothing to draw");
  const state = { calculator, given, values: outcome.values, around };
  return renderToString(<DrawnPicture picture={picture} state={state} isStale={false} />);
}

const text = (html: string) => html.replace(/<svg.*?<\/svg>|<[^>]*>/gs, " ").replace(/\s+/g, " ");

describe("a field", () => {
  const values = { NTU: 2.2, R: 0.4, T_3: 324.62 };
  test("speaks the visitor's unit, with the model's own outlet", () => {
    const html = drawn(cooler(values, "field"), "us");
    expect(text(html)).toContain("Inside. Air enters at 320.0 °F and leaves at 124.6 °F on average");
    expect(html.match(/<svg/g)).toHaveLength(2);
    expect(text(drawn(cooler(values, "field"), "metric"))).toContain("leaves at 51.5 °C on average");
  });
  test("is not drawn where a number is missing, nor in a shell", () => {
    expect(drawn(cooler({ ...values, R: undefined }, "field"), "metric")).not.toContain("<svg");
    expect(drawn(cooler(values, "field"), "metric", "shell-1-2")).not.toContain("<svg");
  });
  test("says why where it cannot be computed", () => {
    const says = text(drawn(cooler({ ...values, NTU: -1 }, "field"), "metric"));
    expect(says).toMatch(/The field is not drawn\. .*\. The bound is 0\./);
  });
});

describe("a ranking", () => {
  test("converts values, and shows the hoses of a row", () => {
    const html = drawn(cooler({ NTU: 2, R: 1, T_3: 324.15, T_other: 333.15 }, "ranking"), "us");
    expect(text(html)).toMatch(/this one 123\.8 °F another 140\.0 °F Compared\./);
    expect(html.match(/hoses bare/g)).toHaveLength(1);
  });
  test("names what has no value", () => {
    const html = drawn(cooler({ NTU: 2, R: 1, T_3: 324.15 }, "ranking"), "metric");
    expect(text(html)).toContain("Left out, since there is no value: another.");
  });
});

test("a choice of an arrangement shows its hoses and their sentence", () => {
  const html = renderToString(<CalculatorSheet calculator={cooler({ NTU: 2.2, R: 0.4 }, "field")} />);
  expect(html).toMatch(/<div class="chosen"><div class="picture hoses"><svg/);
  expect(text(html)).toContain("Water enters at the bottom of the second of two passes");
});

test("hoses say the name of the arrangement that they make", async () => {
  const rating = (await import("../../../src/calculators/cooler-rating.ts")).default;
  const withHoses = (hoses: string) => {
    const inputs = Object.entries(rating.inputs).map(([id, input]) => [
      id,
      id === "core"
        ? { ...input, start: "counter-cross-2" }
        : id === "hoses"
          ? { ...input, start: hoses }
          : input,
    ]);
    return text(
      renderToString(<CalculatorSheet calculator={{ ...rating, inputs: Object.fromEntries(inputs) }} />),
    );
  };
  expect(withHoses("right")).toContain("Counter-cross-flow, two passes, one channel each. Air from left");
  expect(withHoses("swapped")).toContain("Parallel-cross-flow, two passes, one channel each. Air from left");
});

describe("a chart of sizes", () => {
  const rating = async () => (await import("../../../src/calculators/cooler-rating.ts")).default;
  const chartOf = async (choices: Record<string, string>) => {
    const calculator = await rating();
    const start = startEntries(calculator, "metric");
    const around = { system: "metric", barometer: { value: 100_000, isExample: true } } as const;
    const entries = { ...start, choices: { ...start.choices, ...choices } };
    const { outcome, given } = evaluate(calculator, entries, around);
    const chart = picturesFor(calculator, entries.choices).find(({ draw }) => draw === "chart");
    if (!outcome || !chart) throw new Error("nothing to draw");
    const state = { calculator, given, values: outcome.values, around };
    return renderToString(<DrawnPicture picture={chart} state={state} isStale={false} />);
  };
  test("marks the best size where more area makes it worse, and shows the fall", async () => {
    const html = await chartOf({ core: "counter-cross-2", hoses: "swapped" });
    expect(html).toContain("best size");
    expect(html).toContain("hoses the right way");
  });
  test("marks none where there is none", async () => {
    expect(await chartOf({ core: "counter-cross-2", hoses: "right" })).not.toContain("best size");
    expect(await chartOf({ core: "cross-one-row" })).not.toContain("hoses");
  });
});
