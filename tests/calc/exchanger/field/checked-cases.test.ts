import { describe, expect, it } from "vitest";
import { fieldEffectiveness } from "../../../../calc/exchanger/field/field-effectiveness.ts";
import unmixed from "../../../../content/checks/crossflow-field.json";
import remixed from "../../../../content/checks/crossflow-field-remixed.json";
import { type Given, layoutOf, onTheAirOf } from "../../../../src/checks/subjects/crossflow-field.ts";

// The subject of these checks asks the relation where there is one, which knows nothing of the field; here it is the field
// that meets all of them.
describe.each([unmixed, remixed])("$title, by a program of its own", ({ cases, faithful }) => {
  const configs = [...new Set(cases.map((one) => one.in.config))];

  it.each(configs)("%s", (config) => {
    for (const one of cases.filter((some) => some.in.config === config)) {
      const given = one.in as Given;
      const { NTU, R } = onTheAirOf(given);
      const P = fieldEffectiveness(layoutOf(given), NTU, R);
      const off = P * Math.max(1, R) - one.out.eff;
      expect(Math.abs(off), JSON.stringify(given)).toBeLessThan(faithful.relative);
    }
  });
});
