import { describe, expect, test } from "vitest";
import { arrangementOf } from "../../../calc/exchanger/arrangements.ts";
import {
  type ConductancePoint,
  fitBothSides,
  fitWaterSide,
} from "../../../calc/exchanger/fit-conductance.ts";
import { transferUnitsNeeded } from "../../../calc/exchanger/transfer-units-needed.ts";
import { DomainError } from "../../../calc/quantity/domain-error.ts";
import tables from "./wilson-tables.json" with { type: "json" };

// Tables without noise, computed with a second program for known coolers in counterflow: heat capacities 1008 and 4180 J/(kg K).
const points = (rows: readonly (readonly number[])[]): ConductancePoint[] =>
  rows.map(([m_a = 0, m_w = 0, T_2 = 0, T_3 = 0, T_w_in = 0]) => {
    const C_a = m_a * 1008;
    const R = C_a / (m_w * 4180);
    const NTU = transferUnitsNeeded(arrangementOf("counterflow"), { P: (T_2 - T_3) / (T_2 - T_w_in), R });
    return { m_a, m_w, UA: NTU * C_a };
  });

const off = (found: number, known: number | undefined) => Math.abs(found / (known ?? Number.NaN) - 1);

describe("a fit finds the cooler that a table was made with", () => {
  test.each(tables.map((table, i) => [`${i + 1}, ${table.kind}`, table] as const))("table %s", (_, table) => {
    const { found, m_a_ref = 0, m_w_ref } = { ...table, m_a_ref: table.ma_ref, m_w_ref: table.mw_ref };
    if (table.kind === "wilson_water") {
      const fit = fitWaterSide(points(table.rows), { n_w: table.nw ?? 0, m_w_ref });
      expect(off(fit.R_rest, found.R0)).toBeLessThan(1e-6);
      expect(off(fit.UA_w_ref, found.UAw)).toBeLessThan(1e-6);
      expect(fit.deviation).toBeLessThan(1e-9);
    } else {
      const fit = fitBothSides(points(table.rows), { R_wall: table.Rw ?? 0, m_a_ref, m_w_ref });
      expect(off(fit.UA_a_ref, found.UAa)).toBeLessThan(1e-4);
      expect(off(fit.n_a, found.na)).toBeLessThan(1e-4);
      expect(off(fit.UA_w_ref, found.UAw)).toBeLessThan(1e-4);
      expect(off(fit.n_w, found.nw)).toBeLessThan(1e-4);
      expect(fit.deviation).toBeLessThan(1e-9);
    }
  });
});

describe("points that show nothing are refused at `points`", () => {
  const [a, b] = [
    { m_a: 0.3, m_w: 0.5, UA: 400 },
    { m_a: 0.3, m_w: 1, UA: 500 },
  ];
  const known = { n_w: 0.8, m_w_ref: 1 };
  const both = { R_wall: 0, m_a_ref: 0.3, m_w_ref: 1 };
  test.each([
    ["one point", () => fitWaterSide([a], known)],
    ["one water flow", () => fitWaterSide([a, { ...a, UA: 410 }], known)],
    ["air that was not steady", () => fitWaterSide([a, { ...b, m_a: 0.4 }], known)],
    ["no flow", () => fitWaterSide([a, { ...b, m_w: 0 }], known)],
    ["less conductance with more water", () => fitWaterSide([a, { ...b, UA: 300 }], known)],
    ["conductance that grows faster than the water", () => fitWaterSide([a, { ...b, UA: 4000 }], known)],
    ["three points for both sides", () => fitBothSides([a, b, a], both)],
    ["one air flow for both sides", () => fitBothSides([a, b, a, b], both)],
    [
      "two flows of each side",
      () =>
        fitBothSides(
          [a, b, { ...a, m_a: 0.6, UA: 480 }, { ...b, m_a: 0.6, UA: 650 }, { ...b, m_a: 0.603, UA: 650 }],
          both,
        ),
    ],
    [
      "points that no powers describe",
      () =>
        fitBothSides(
          [a, b, { ...a, m_a: 0.6, UA: 100 }, { ...b, m_a: 0.6, UA: 2000 }, { ...b, m_a: 0.9, UA: 50 }],
          both,
        ),
    ],
  ])("%s", (_, run) => {
    expect(run).toThrow(DomainError);
    expect(run).toThrow(/[a-z]\. .*\.$/);
  });
});
