import { describe, expect, it } from "vitest";
import chargePath from "../../../src/calculators/charge-path.ts";
import { readLink } from "../../../src/calculators/engine/read-link.ts";
import { givenText, valueText } from "../../../src/components/value-text.ts";
import {
  changed,
  type Example,
  type Typed,
  work,
  workExample,
} from "../../../src/components/worked-example.ts";

const where = "content/examples/pump.mdx";

const pump: Example = {
  calculator: "charge-path",
  choices: {
    stages: "one",
    humidity: "dry",
    wanted: "ratio",
    efficiency: "isentropic",
    heatCapacity: "real",
    cooler: "temperature",
    cycle: "four-stroke",
  },
  barometer: "1 bar",
  given: {
    T_0: "77 °F",
    Delta_p_01: "1.0 kPa",
    r: "2.2",
    eta_s: "74 %",
    T_3: "50 °C",
    Delta_T_w: "8 K",
    T_w_in: "25 °C",
    Delta_p_23: "60 mbar",
    V_d: "4.4 L",
    n: "2000 rev/min",
    eta_v: "0.92",
    b: "210 g/kWh",
    lambda: "1.6",
    AFR_st: "14.5",
  },
  show: { given: ["r", "T_3"], steps: ["compression/density-ratio"] },
  asked: "D_rho",
};

const given = (changes: Record<string, string>): Example => ({
  ...pump,
  given: { ...pump.given, ...changes },
});

describe("a worked example", () => {
  it("reads its values as a field does, and computes through the calculator", () => {
    const worked = workExample(pump, chargePath, where);
    expect(worked.given["T_0"]).toBeCloseTo(298.15, 10);
    expect(worked.given["eta_s"]).toBeCloseTo(0.74, 12);
    expect(worked.given["Delta_p_23"]).toBeCloseTo(6000, 8);
    // Ideal-gas law by hand: (2.2 - 6/99) * 298.15/323.15.
    expect(worked.asked.value).toBeCloseTo((2.2 - 6 / 99) * (298.15 / 323.15), 10);
    expect(worked.shownSteps.map(({ relation }) => relation)).toContain("compression/density-ratio");
    expect(new Set(worked.shownSteps.map(({ relation }) => relation)).size).toBe(1);
    expect(worked.shownFields).toEqual(["r", "T_3"]);
  });

  it("shows every step where none is named", () => {
    const worked = workExample({ ...pump, show: undefined }, chargePath, where);
    expect(worked.shownSteps).toEqual(worked.steps);
    expect(worked.shownFields.toSorted()).toEqual(["p_0", ...Object.keys(pump.given)].toSorted());
    expect(worked.steps.length).toBeGreaterThan(5);
  });

  it("has a link that opens the calculator with the same values", () => {
    const worked = workExample(pump, chargePath, where);
    expect(worked.link).toMatch(/^\/numbers\/charge-path\/#/);
    const opened = readLink(worked.link.replace(/^[^#]*/, ""), [chargePath]);
    expect(opened.unread).toEqual([]);
    const fields = opened.entries["charge-path"]?.fields ?? {};
    expect(fields["T_0"]).toMatchObject({ typed: "77", unit: "degF" });
    expect(opened.barometer).toMatchObject({ typed: "1", unit: "bar" });
    const asTyped = Object.fromEntries(
      Object.keys(pump.given).map((id) => [id, fields[id]?.typed ?? "left out"]),
    );
    expect(Object.values(asTyped)).not.toContain("left out");
  });

  it.each<[string, Example, string, RegExp]>([
    ["a text that is no number", given({ r: "two" }), "r", /“two” is not a number/],
    ["a unit of another kind", given({ T_0: "25 kPa" }), "T_0", /kPa is a unit of pressure/],
    ["a value past its limits", given({ eta_s: "1.2" }), "eta_s", /cannot be used here/],
    ["a barometer that cannot be", { ...pump, barometer: "2 bar" }, "barometer", /not a station pressure/],
    ["an input that is not there", given({ x: "1" }), "x", /no such input/],
    ["a choice among the values", given({ cycle: "four-stroke" }), "cycle", /belongs under “choices”/],
    ["the barometer among the values", given({ p_0: "1 bar" }), "p_0", /given once/],
    ["a value nobody asks for", given({ P: "0.8" }), "P", /does not ask for it/],
    [
      "an option that is not there",
      { ...pump, choices: { ...pump.choices, cycle: "six-stroke" } },
      "cycle",
      /no option “six-stroke”. Accepted: four-stroke/,
    ],
    ["a choice that is not there", { ...pump, choices: { y: "z" } }, "y", /no such choice/],
    ["a choice left open", { ...pump, choices: { wanted: "ratio" } }, "stages", /does not give it/],
    ["a result that is not there", { ...pump, asked: "Nu" }, "asked", /gives no “Nu”/],
    [
      "a step that is not there",
      { ...pump, show: { given: [], steps: ["fluids/viscosity"] } },
      "show",
      /no step/,
    ],
    ["showing what is not given", { ...pump, show: { given: ["P"], steps: [] } }, "show", /“P” is not given/],
  ])("refuses %s, and says where", (_, example, field, reason) => {
    expect(() => workExample(example, chargePath, where)).toThrow(reason);
    expect(() => workExample(example, chargePath, where)).toThrow(`${where}, ${field}: `);
  });

  it("refuses a value that is missing", () => {
    const { r: _, ...rest } = pump.given;
    expect(() => workExample({ ...pump, given: rest }, chargePath, where)).toThrow(
      `${where}, r: the calculator asks for it`,
    );
  });
});

describe("a change to an example", () => {
  const worked = (changes: Partial<Typed>) => work(chargePath, changed(pump, chargePath, changes), where);

  it("keeps the rest", () => {
    const { given } = worked({ given: { T_3: "60 °C" } });
    expect(given["T_3"]).toBeCloseTo(333.15, 10);
    expect(given["eta_s"]).toBeCloseTo(0.74, 12);
  });

  it("leaves out what its choices no longer ask for", () => {
    const { values } = worked({ choices: { cooler: "none" } });
    expect(values["p_3"]).toBeCloseTo(217_800, 6);
  });
});

describe("a number in a text", () => {
  const worked = workExample(pump, chargePath, where);

  it("stands in both unit systems where they differ", () => {
    expect(valueText(worked, { of: "T_3" })).toBe("50.0\u00a0°C (122\u00a0°F)");
    expect(valueText(worked, { of: "r" })).toBe("2.20");
    expect(valueText(worked, { of: "p_2", digits: 4, unit: "bar", in: "metric" })).toBe("2.178\u00a0bar");
  });

  it("can be a ratio, a difference or a gain", () => {
    expect(valueText(worked, { of: "p_2", over: "p_1" })).toBe("2.20");
    expect(valueText(worked, { of: "T_3", less: "T_0" })).toBe("25.0\u00a0K (45.0\u00a0°F)");
    expect(valueText(worked, { of: "p_2", over: "p_1", gain: true })).toBe("120\u00a0%");
  });

  it("shows what was given as it was typed", () => {
    expect(givenText(worked, "T_0")).toBe("77\u00a0°F (25.0\u00a0°C)");
    expect(givenText(worked, "Delta_p_23")).toBe("60\u00a0mbar (0.870\u00a0psi)");
    expect(givenText(worked, "p_0")).toBe("1\u00a0bar (14.5\u00a0psi)");
    expect(givenText(worked, "r")).toBe("2.2");
    expect(() => givenText(work(chargePath, { ...pump, given: {} }, where), "r")).toThrow("was not given");
  });

  it("is refused where there is none", () => {
    expect(() => valueText(worked, { of: "P" })).toThrow("no number “P”");
    expect(() => valueText(worked, { of: "cooler" })).toThrow("no number “cooler”");
    expect(() => valueText(worked, { of: "T_2", gain: true })).toThrow("is not a ratio");
  });
});
