import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { constants } from "../../../calc/constants.ts";
import { coolantProperties } from "../../../calc/exchanger/coolant-properties.ts";
import { ambient } from "../../../calc/fluids/ambient.ts";
import { waterState } from "../../../calc/fluids/water/water.ts";
import { fromSI, toSI, unitOf, units } from "../../../calc/quantity/units.ts";
import {
  type Cell,
  type Column,
  csvOf,
  type ReferenceTable,
  roundNumbers,
  type Sheet,
  writeCell,
} from "../../../src/components/reference-table.ts";
import { fileOfSheet, referenceTables } from "../../../src/components/reference-tables.ts";

const everySheet = referenceTables.flatMap((table) => table.sheets.map((sheet) => ({ table, sheet })));

function tableOf(id: string): ReferenceTable {
  const found = referenceTables.find((table) => table.id === id);
  if (!found) throw new Error(`no table ${id}`);
  return found;
}

function sheetOf(id: string, sheet: string): Sheet {
  const found = tableOf(id).sheets.find((one) => one.id === sheet);
  if (!found) throw new Error(`no sheet ${sheet} in ${id}`);
  return found;
}

const rowsOf = ({ bodies }: Sheet): readonly (readonly Cell[])[] => bodies.flatMap(({ rows }) => rows);

/** The numbers of a column, of those with the same words the one with `under`. */
function column(sheet: Sheet, words: string, under?: string): readonly number[] {
  const at = sheet.columns.findIndex(
    (one) => one.words === words && (under === undefined || one.under?.replaceAll("\u00a0", " ") === under),
  );
  if (at < 0) throw new Error(`no column ${words} ${under ?? ""}`);
  return rowsOf(sheet).map((row) => row[at] as number);
}

/** The number of a column in the row that begins with an SI value. */
function at(sheet: Sheet, first: number, words: string, under?: string): number {
  const row = rowsOf(sheet).findIndex(
    ([cell]) => Math.abs((cell as number) - first) < 1e-6 * Math.abs(first) + 1e-12,
  );
  if (row < 0) throw new Error(`no row of ${first}`);
  return column(sheet, words, under)[row] as number;
}

/** Numbers of an outside source that stand in a check. */
const casesOf = <In, Out>(id: string): readonly { in: In; out: Out }[] =>
  JSON.parse(readFileSync(join(import.meta.dirname, `../../../content/checks/${id}.json`), "utf8")).cases;

test("each table stands alone in the file that its id names, and so do their places", () => {
  expect(referenceTables.length).toBeGreaterThanOrEqual(10);
  for (const key of ["id", "order", "title"] as const)
    expect(new Set(referenceTables.map((table) => table[key])).size).toBe(referenceTables.length);
  const files = everySheet.map(({ table, sheet }) => fileOfSheet(table, sheet));
  expect(new Set(files).size).toBe(files.length);
});

describe.each(referenceTables.map((table) => [table.id, table] as const))("%s", (_, table) => {
  test("says what it is, for what it holds, where it comes from and where it is used", () => {
    expect(table.lead).toMatch(/^[A-Z].*[.]$/);
    for (const text of [...table.says, table.chart.caption, table.caution ?? "So."])
      expect(text).toMatch(/[.]$/);
    expect(table.says.length).toBeGreaterThan(0);
    expect(table.synonyms.length).toBeGreaterThan(2);
    expect(table.relations.length + (table.sources?.length ?? 0)).toBeGreaterThan(0);
    expect(table.numbers.length).toBeGreaterThan(0);
    expect(table.lessons.length).toBeGreaterThan(0);
  });

  test("its chart holds all of its curves", () => {
    const { x, y, curves } = table.chart;
    for (const { points } of curves) {
      expect(points.length).toBeGreaterThan(1);
      for (const [px, py] of points) {
        expect(px).toBeGreaterThanOrEqual(x.from - 1e-9);
        expect(px).toBeLessThanOrEqual(x.to + 1e-9);
        expect(py).toBeGreaterThanOrEqual(y.from - 1e-9);
        expect(py).toBeLessThanOrEqual(y.to + 1e-9);
      }
    }
  });
});

describe.each(everySheet.map(({ table, sheet }) => [fileOfSheet(table, sheet), sheet] as const))(
  "%s",
  (_, sheet) => {
    const rows = rowsOf(sheet);

    test("every cell is a number or a name, as its column says, and every unit is known", () => {
      expect(rows.length).toBeGreaterThan(3);
      for (const row of rows) {
        expect(row.length).toBe(sheet.columns.length);
        row.forEach((cell, i) => {
          const { unit } = sheet.columns[i] as Column;
          if (unit === undefined) expect(typeof cell).toBe("string");
          else {
            expect(units[unit]).toBeDefined();
            expect(Number.isFinite(cell)).toBe(true);
          }
        });
      }
    });

    test("its rows come in order, each once", () => {
      if (sheet.columns[0]?.unit === undefined) {
        for (const { rows } of sheet.bodies)
          expect(new Set(rows.map(([name]) => name)).size).toBe(rows.length);
        return;
      }
      rows.forEach(([cell], i) => {
        if (i > 0) expect(cell).toBeGreaterThan(rows[i - 1]?.[0] as number);
      });
    });

    test("no two rows look alike, and no number is lost in rounding", () => {
      const written = rows.map((row) => row.map((cell, i) => writeCell(cell, sheet.columns[i] as Column)));
      expect(new Set(written.map((row) => row.join())).size).toBe(rows.length);
      expect(written.flat().filter((text) => text === "" || /NaN|Infinity/.test(text))).toEqual([]);
    });

    test("its file reads back as its numbers", () => {
      const [, ...lines] = csvOf(sheet).trimEnd().split("\r\n");
      expect(lines.length).toBe(rows.length);
      lines.forEach((line, i) => {
        // Names with commas stand in quotes and hold no numbers.
        const fields = line.replace(/"[^"]*"/g, "name").split(",");
        const own = fields.slice(fields.length - sheet.columns.length);
        sheet.columns.forEach(({ unit }, j) => {
          if (unit === undefined) return;
          const value = fromSI(rows[i]?.[j] as number, unit);
          expect(Math.abs(Number(own[j]) - value)).toBeLessThanOrEqual(0.6e-7 * Math.abs(value) + 1e-9);
        });
      });
    });
  },
);

const rising = (values: readonly number[]): boolean =>
  values.every((value, i) => i === 0 || value > (values[i - 1] ?? 0));
const falling = (values: readonly number[]): boolean => rising(values.map((value) => -value));

test.each(["metric", "us"])("what physics says rises and falls does so, in %s", (system) => {
  const air = sheetOf("dry-air", system);
  for (const words of ["Viscosity", "Thermal conductivity"]) expect(rising(column(air, words))).toBe(true);
  expect(falling(column(air, "Density"))).toBe(true);
  const moist = sheetOf("moist-air", `saturated-${system}`);
  for (const words of ["Vapour pressure in the air", "Humidity ratio", "Enthalpy per dry air"])
    expect(rising(column(moist, words))).toBe(true);
  for (const [i, saturated] of column(moist, "Density, saturated").entries())
    expect(saturated).toBeLessThan(column(moist, "Density, dry")[i] ?? 0);
  for (const row of rowsOf(sheetOf("moist-air", `humidity-${system}`)))
    expect(rising(row.slice(1) as number[])).toBe(true);
  expect(rising(column(sheetOf("water-vapour", system), "Vapour pressure"))).toBe(true);
  for (const row of rowsOf(sheetOf("water-vapour", `dew-point-${system}`)))
    expect(rising(row as number[])).toBe(true);
  const water = sheetOf("water", system);
  expect(falling(column(water, "Viscosity"))).toBe(true);
  expect(rising(column(water, "Thermal conductivity"))).toBe(true);
  const boiling = sheetOf("boiling", system);
  expect(rising(column(boiling, "Boiling temperature"))).toBe(true);
  expect(falling(column(boiling, "Heat of vaporisation"))).toBe(true);
  expect(falling(column(sheetOf("boiling", `altitude-${system}`), "Boiling temperature"))).toBe(true);
  const sea = sheetOf("seawater", system);
  for (const row of rowsOf(sea)) {
    expect(rising(row.slice(1, 6) as number[])).toBe(true);
    expect(falling(row.slice(6) as number[])).toBe(true);
  }
  const atmosphere = sheetOf("standard-atmosphere", system);
  for (const words of ["Pressure", "Temperature", "Density"])
    expect(falling(column(atmosphere, words))).toBe(true);
});

test("losses rise with the angle and fall with the radius of a lip and with likeness of the bores", () => {
  for (const row of rowsOf(sheetOf("loss-coefficients", "bends")))
    expect(rising(row.slice(1, 6) as number[])).toBe(true);
  expect(rising(column(sheetOf("loss-coefficients", "mitres"), "Loss coefficient"))).toBe(true);
  expect(falling(column(sheetOf("loss-coefficients", "entrances"), "Loss coefficient"))).toBe(true);
  expect(falling(column(sheetOf("loss-coefficients", "narrowing"), "Step"))).toBe(true);
  expect(falling(column(sheetOf("loss-coefficients", "widening"), "Step"))).toBe(true);
});

test("valves pass more further open, and further shut with less authority", () => {
  for (const id of ["linear", "equal-percentage", "quick-opening"]) {
    const sheet = sheetOf("valve-characteristics", id);
    for (const N of [1, 0.3, 0.05]) {
      const flows = column(sheet, "Part of the full flow", `N = ${N}`);
      expect(rising(flows)).toBe(true);
      expect(flows.at(-1)).toBeCloseTo(1, 12);
    }
    for (const row of rowsOf(sheet).slice(1, -1)) expect(rising(row.slice(1) as number[])).toBe(true);
  }
});

describe("against what others print", () => {
  test("the standard atmosphere has the printed temperatures and pressures", () => {
    const cases = casesOf<{ H: number }, { T: number; p: number }>("standard-atmosphere-printed");
    expect(cases.length).toBeGreaterThan(3);
    const sheet = sheetOf("standard-atmosphere", "metric");
    for (const { in: given, out } of cases) {
      expect(at(sheet, given.H, "Temperature")).toBeCloseTo(out.T, 6);
      expect(Math.abs(at(sheet, given.H, "Pressure") - out.p)).toBeLessThan(0.5);
    }
    // US Standard Atmosphere 1976, from memory: 1.2250 kg/m³ at sea level and 0.36392 kg/m³ at 11 km.
    expect(writeCell(at(sheet, 0, "Density"), { words: "", unit: "kg/m3" })).toBe("1.225");
    expect(at(sheet, 11_000, "Density")).toBeCloseTo(0.36392, 4);
  });

  test("saturated air has the handbook's humidity ratio", () => {
    const cases = casesOf<{ T: number; p: number }, { Ws: number }>("saturated-humidity-handbook");
    const sheet = sheetOf("moist-air", "saturated-metric");
    for (const { in: given, out } of cases) {
      expect(given.p).toBe(constants.p_sl.value);
      expect(Math.abs(at(sheet, given.T, "Humidity ratio") / out.Ws - 1)).toBeLessThan(0.005);
    }
  });

  test("saturated air has the handbook's enthalpy", () => {
    const cases = casesOf<{ T: number }, { value: number }>("saturated-enthalpy-handbook");
    const sheet = sheetOf("moist-air", "saturated-metric");
    for (const { in: given, out } of cases)
      expect(Math.abs(at(sheet, given.T, "Enthalpy per dry air") / out.value - 1)).toBeLessThan(0.003);
  });

  test("Prandtl numbers stand on both sides of a textbook's at 300 K", () => {
    const [air, water] = casesOf<object, { value: number }>("prandtl-number").map(({ out }) => out.value);
    const inAir = sheetOf("dry-air", "metric");
    for (const t of [20, 40])
      expect(Math.abs(at(inAir, toSI(t, "degC"), "Prandtl number") - (air ?? 0))).toBeLessThan(0.01);
    const inWater = sheetOf("water", "metric");
    expect(at(inWater, toSI(20, "degC"), "Prandtl number")).toBeGreaterThan(water ?? Infinity);
    expect(at(inWater, toSI(30, "degC"), "Prandtl number")).toBeLessThan(water ?? 0);
  });

  // IAPWS tables, from memory: water boils at 99.974 °C under one atmosphere and takes 2256.5 kJ/kg.
  test("water boils where everybody knows", () => {
    const sheet = sheetOf("boiling", "metric");
    expect(fromSI(at(sheet, constants.p_sl.value, "Boiling temperature"), "degC")).toBeCloseTo(99.974, 2);
    expect(at(sheet, constants.p_sl.value, "Heat of vaporisation") / 1000).toBeCloseTo(2256.5, 0);
  });

  // UNESCO 1983, from memory: 1024.763 kg/m³ at 20 °C and a practical salinity of 35, which is 35.165 g of salt in a kilogram.
  test("ocean water at 20 °C weighs what oceanographers say", () => {
    expect(
      Math.abs(at(sheetOf("seawater", "metric"), toSI(20, "degC"), "Density", "3.5 %") - 1024.763),
    ).toBeLessThan(0.25);
  });

  // Heywood, from memory: petrol 14.6, methane 17.23, ethanol 9.00, methanol 6.47.
  test.each([
    ["Petrol", 14.6],
    ["Methane", 17.23],
    ["Ethanol", 9],
    ["Methanol", 6.47],
  ])("%s needs the air that textbooks say", (name, expected) => {
    const sheet = sheetOf("fuels", "fuels");
    const row = rowsOf(sheet).findIndex(([cell]) => String(cell).startsWith(name));
    expect(Math.abs((column(sheet, "Stoichiometric air-fuel ratio")[row] ?? 0) / expected - 1)).toBeLessThan(
      0.01,
    );
  });

  // NIST SP 811, appendix B.8, from memory. What is printed in bold there is exact.
  test.each([
    ["psi", 6894.757, "rounded"],
    ["atm", 101325, "exact"],
    ["inHg (0 °C)", 3386.389, "rounded"],
    ["inH₂O (60 °F)", 248.84, "convention"],
    ["hp", 745.6999, "rounded"],
    ["BTU", 1055.056, "exact"],
    ["kWh", 3.6e6, "exact"],
    ["ft³", 0.02831685, "exact"],
    ["US gal", 0.003785412, "exact"],
    ["lb", 0.45359237, "exact"],
    ["lbf", 4.448222, "rounded"],
    ["mi/h", 0.44704, "exact"],
    ["lb/ft³", 16.01846, "rounded"],
    ["BTU/(lb·°F)", 4186.8, "exact"],
    ["°", 0.01745329, "rounded"],
  ])("one %s is %d of the SI unit, %s", (label, factor, figures) => {
    const row = rowsOf(sheetOf("conversions", "factors")).find(([name]) => name === label);
    expect(Math.abs((row?.[1] as number) / factor - 1)).toBeLessThan(2e-6);
    expect(row?.[2]).toBe(figures);
  });
});

describe("as the calculators have it", () => {
  test.each([0.2, 0.5, 1])("moist air at a relative humidity of %d", (varphi_0) => {
    const sheet = sheetOf("moist-air", "humidity-us");
    for (const T_0 of roundNumbers("degF", 50, [20, 110])) {
      const { w_0 } = ambient({ p_0: constants.p_sl.value, T_0, humidity: "relative", varphi_0 });
      expect(at(sheet, T_0, "Humidity ratio", `at ${100 * varphi_0} %`)).toBeCloseTo(w_0, 12);
    }
  });

  test("liquid water", () => {
    const sheet = sheetOf("water", "us");
    for (const T of roundNumbers("degF", 40, [20, 200])) {
      const { rho, c_p, mu, k } = waterState({ T, p: constants.p_sl.value });
      expect(at(sheet, T, "Density")).toBeCloseTo(rho, 9);
      expect(at(sheet, T, "Heat capacity")).toBeCloseTo(c_p, 9);
      expect(at(sheet, T, "Viscosity")).toBeCloseTo(mu, 12);
      expect(at(sheet, T, "Thermal conductivity")).toBeCloseTo(k, 12);
    }
  });

  test.each(["ethylene-glycol", "propylene-glycol"] as const)(
    "%s that is poured half and half",
    (coolant) => {
      const T = toSI(40, "degC");
      const found = coolantProperties({ coolant, amount: "volume", phi_g: 0.5, T, p_w: 2e5 });
      const under = coolant === "ethylene-glycol" ? "Ethylene glycol" : "Propylene glycol";
      expect(at(sheetOf("coolant-mixtures", "by-volume-metric"), 0.5, "Freezes at", under)).toBeCloseTo(
        found.T_f,
        9,
      );
      const [, , warm] = sheetOf("coolant-mixtures", `${coolant}-metric`).bodies;
      const [, x_g, rho, c_p, mu, k, Pr] = warm?.rows.at(-1) ?? [];
      expect([x_g, rho, c_p, mu, k, Pr]).toEqual([
        found.x_g,
        found.rho,
        found.c_p,
        found.mu,
        found.k,
        found.Pr,
      ]);
    },
  );

  // The dew point of charge that has been compressed and cooled to it again.
  test("the dew point of charge is where its vapour saturates it", () => {
    const sheet = sheetOf("water-vapour", "dew-point-metric");
    for (const [T_dp = 0, , at200 = 0] of rowsOf(sheet) as number[][]) {
      const outside = ambient({
        p_0: constants.p_sl.value,
        T_0: T_dp + 5,
        humidity: "dew-point",
        T_dp_0: T_dp,
      });
      const charge = ambient({ p_0: 200e3, T_0: at200, humidity: "relative", varphi_0: 1 });
      expect(charge.w_0).toBeCloseTo(outside.w_0, 8);
    }
  });
});

test("every unit that a kind offers has its factor, but gauge units, scales and plain numbers", () => {
  const rows = rowsOf(sheetOf("conversions", "factors"));
  const labels = new Set(rows.map(([label]) => label));
  const missing = Object.values(units).filter(
    ({ id, label, offset, gauge }) => !gauge && offset === undefined && !labels.has(label) && id !== "degR",
  );
  // SI units have no factor, and a percentage is a way to write a number.
  expect(missing.filter(({ factor, id }) => factor !== 1 && id !== "%").map(({ id }) => id)).toEqual([]);
  expect(unitOf("psi").factor).toBe(rows.find(([label]) => label === "psi")?.[1]);
});

test("round numbers run in equal steps from bound to bound, and a name with a comma stands in quotes", () => {
  expect(roundNumbers("kPa", 0, [10, 20], [50, 120])).toEqual([0, 10e3, 20e3, 70e3, 120e3]);
  const sheet: Sheet = {
    id: "any",
    title: "Any",
    columns: [{ words: "Name" }, { words: "Pressure", under: "at rest", unit: "kPa" }],
    bodies: [
      {
        title: 'One, "two"',
        rows: [
          ["a, b", 101325],
          ["c", undefined],
        ],
      },
    ],
  };
  expect(csvOf(sheet)).toBe(
    'kind,Name,Pressure at rest [kPa]\r\n"One, ""two""","a, b",101.325\r\n"One, ""two""",c,\r\n',
  );
  expect(writeCell(undefined, { words: "Pressure", unit: "kPa" })).toBe("none");
  expect(writeCell(-0.00001, { words: "Pressure", unit: "Pa", digits: { decimals: 2 } })).toBe("0.00");
});
