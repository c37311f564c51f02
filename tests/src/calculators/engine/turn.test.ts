import { describe, expect, test } from "vitest";
import { exampleBarometer } from "../../../../src/calculators/engine/barometer.ts";
import { type Entries, type Surroundings, startEntries } from "../../../../src/calculators/engine/entry.ts";
import { evaluate } from "../../../../src/calculators/engine/evaluate.ts";
import { turned } from "../../../../src/calculators/engine/turn.ts";
import powerAir from "../../../../src/calculators/power-air.ts";

const around: Surroundings = { system: "metric", barometer: { value: exampleBarometer, isExample: true } };
const start = startEntries(powerAir, "metric");
const turn = (entries: Entries, find: string) =>
  turned(powerAir, entries, evaluate(powerAir, entries, around), around, { ...entries.choices, find });
const typed = (id: string, text: string) => {
  const entry = start.fields[id];
  if (!entry) throw new Error(id);
  return { ...entry, typed: text };
};

describe("a question turned round", () => {
  test("starts from its own answer, and comes back to where it was", () => {
    const there = turn(start, "power");
    const air = evaluate(powerAir, start, around).outcome?.values["m_found"];
    expect(there.fields["m_da"]).toMatchObject({ typed: null, example: air });
    const power = evaluate(powerAir, there, around).outcome?.values["W_found"];
    expect(power).toBeCloseTo(235_000, 6);
    const back = turn(there, "air");
    expect(back.fields["W_e"]?.example).toBeCloseTo(235_000, 6);
    expect(evaluate(powerAir, back, around).outcome?.values["m_found"]).toBeCloseTo(air ?? 0, 12);
  });

  test("takes over what is all the visitor's own as typed, to five figures", () => {
    const fields = {
      ...start.fields,
      W_e: typed("W_e", "300"),
      b: typed("b", "310"),
      lambda: typed("lambda", "0.8"),
      AFR_st: typed("AFR_st", "14.7"),
    };
    const there = turn({ ...start, fields }, "power");
    expect(there.fields["m_da"]?.typed).toBe("0.3038");
    expect(evaluate(powerAir, there, around).outcome?.values["W_found"]).toBeCloseTo(300_000, -1);
  });

  test("leaves a field alone where the answer lies outside its limits", () => {
    const far = { ...start, fields: { ...start.fields, W_e: typed("W_e", "1e8"), b: typed("b", "1000") } };
    const { outcome } = evaluate(powerAir, far, around);
    expect(outcome?.values["m_found"] ?? 1e9).toBeGreaterThan(1000);
    expect(turn(far, "power").fields["m_da"]).toEqual(start.fields["m_da"]);
  });

  test("keeps what was typed where there is no answer", () => {
    const none = { ...start, fields: { ...start.fields, W_e: typed("W_e", "lots") } };
    expect(turn(none, "power")).toEqual({ ...none, choices: { ...none.choices, find: "power" } });
  });
});
