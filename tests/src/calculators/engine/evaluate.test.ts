import { describe, expect, test } from "vitest";
import { type Entries, type Surroundings, startEntries } from "../../../../src/calculators/engine/entry.ts";
import { evaluate, tryModel, withLimit } from "../../../../src/calculators/engine/evaluate.ts";
import { box } from "./box.ts";

const around: Surroundings = { system: "metric", barometer: { value: 1e5, isExample: true } };
const start = startEntries(box, "metric");

const typing = (typed: Readonly<Record<string, string>>, choices = {}): Entries => ({
  choices: { ...start.choices, ...choices },
  fields: Object.fromEntries(
    Object.entries(start.fields).map(([id, entry]) => [id, { ...entry, typed: typed[id] ?? entry.typed }]),
  ),
});

const saysAt = (id: string, entries: Entries) =>
  evaluate(box, entries, around).messages[id]?.map(({ says }) => says);

describe("evaluate", () => {
  test("computes from the example values, and counts them", () => {
    const { outcome, fields, examples } = evaluate(box, start, around);
    expect(outcome?.values["rho"]).toBe(20);
    expect(outcome?.steps.map(({ relation }) => relation)).toEqual(["test/density"]);
    expect([fields, examples]).toEqual([3, 3]);
  });

  test("counts the barometer as an example until the page has one", () => {
    const set: Surroundings = { ...around, barometer: { value: 99e3, isExample: false } };
    const { examples, given } = evaluate(box, start, set);
    expect(examples).toBe(2);
    expect(given["p"]).toBe(99e3);
  });

  test("refuses what lies outside the limits, and names them in the field's unit", () => {
    const { outcome, messages } = evaluate(box, typing({ V: "20000" }), around);
    expect(outcome).toBeNull();
    expect(messages["V"]).toEqual([
      {
        tone: "invalid",
        says: "20000\u00a0L cannot be used here. Accepted: 0\u00a0L to 10\u202f000\u00a0L.",
      },
    ]);
  });

  test("repeats of a long text only how it begins", () => {
    expect(saysAt("V", typing({ V: "9".repeat(200) }))).toEqual([
      `${"9".repeat(30)}…\u00a0L cannot be used here. Accepted: 0\u00a0L to 10\u202f000\u00a0L.`,
    ]);
  });

  test("keeps what is only unusual, and says so", () => {
    const { outcome, messages } = evaluate(box, typing({ V: "2000" }), around);
    expect(outcome?.values["rho"]).toBe(1);
    expect(messages["V"]?.[0]?.tone).toBe("outside");
  });

  test("puts the refusal of a model at the field that it names, with the bound", () => {
    expect(saysAt("m", typing({ m: "60" }))).toEqual(["The box bursts. The bound is 50."]);
  });

  test("says it for the whole calculator where the field is not shown or not a field", () => {
    const { outcome, trouble } = evaluate(box, typing({ m: "45" }, { lid: "shut" }), around);
    expect(outcome).toBeNull();
    expect([trouble, saysAt("lid", typing({ m: "45" }))].flat()).toContain("The lid lifts.");
  });

  test("keeps a result with a note on an input", () => {
    const { outcome, messages } = evaluate(box, typing({ m: "35" }), around);
    expect(outcome?.values["rho"]).toBe(350);
    expect(messages["m"]).toEqual([{ tone: "outside", says: "The box bulges. The bound is 30." }]);
  });

  test("keeps a result with a note where a relation leaves its range", () => {
    const { outcome } = evaluate(box, typing({ V: "600" }), around);
    expect(outcome?.notes).toMatchObject([{ says: "Nobody measured larger boxes.", limit: { value: 0.5 } }]);
  });

  test("never shows a result that is no number", () => {
    const { outcome, trouble } = evaluate(box, typing({ V: "0", m: "0" }), around);
    expect(outcome).toBeNull();
    expect(trouble).toMatch(/^These values give no density\./);
  });

  test("ignores what is wrong in a field that is not shown", () => {
    expect(evaluate(box, typing({ T: "rubbish" }), around).outcome?.values["rho"]).toBe(20);
    expect(
      evaluate(box, typing({ T: "rubbish" }, { lid: "shut", lock: "brass" }), around).outcome,
    ).toBeNull();
  });

  test("a hidden choice decides nothing", () => {
    const { fields, outcome } = evaluate(box, typing({}, { lock: "brass" }), around);
    expect(fields).toBe(3);
    expect(outcome).not.toBeNull();
  });

  test("says how a text with a unit was taken", () => {
    expect(saysAt("V", typing({ V: "0.2 m3" }))?.[0]).toMatch(/^Read as/);
  });
});

test("a bound is added to a sentence in the visitor's own unit", () => {
  const us: Surroundings = { ...around, system: "us" };
  const limit = { value: 273.15, kind: "temperature" } as const;
  expect(withLimit("Too cold.", limit, around)).toBe("Too cold. The bound is 0\u00a0°C.");
  expect(withLimit("Too cold.", limit, us)).toBe("Too cold. The bound is 32\u00a0°F.");
  expect(withLimit("Too cold.", undefined, us)).toBe("Too cold.");
});

test("tryModel gives null where the model refuses", () => {
  const { given } = evaluate(box, start, around);
  expect(tryModel(box, given, { m: 4 })).toMatchObject({ rho: 40 });
  expect(tryModel(box, given, { m: 60 })).toBeNull();
});
