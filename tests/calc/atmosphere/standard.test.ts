import { describe, expect, it } from "vitest";
import { barometerAltitude } from "../../../calc/atmosphere/barometer-altitude.ts";
import { geometricAltitude } from "../../../calc/atmosphere/geometric-altitude.ts";
import { geopotentialAltitude } from "../../../calc/atmosphere/geopotential-altitude.ts";
import { pressureAltitude } from "../../../calc/atmosphere/pressure-altitude.ts";
import { standardPressure } from "../../../calc/atmosphere/standard-pressure.ts";
import { standardTemperature } from "../../../calc/atmosphere/standard-temperature.ts";
import { DomainError } from "../../../calc/quantity/domain-error.ts";
import { plain, recording } from "../../../calc/relation/trace.ts";

describe("standard atmosphere", () => {
  // ISO 2533 and U.S. Standard Atmosphere 1976, from memory and recomputed by an independent program.
  it.each([
    [0, 288.15, 101325],
    [1000, 281.65, 89874.6],
    [2000, 275.15, 79495.2],
    [3000, 268.65, 70108.5],
    [5000, 255.65, 54019.9],
    [11000, 216.65, 22632.06],
  ])("at %d m geopotential", (H, T, p) => {
    expect(standardTemperature.compute({ H })).toBeCloseTo(T, 6);
    expect(Math.abs(standardPressure.compute({ H }) - p)).toBeLessThan(0.5);
  });

  it("altitude comes back from the pressure, and geometric from geopotential", () => {
    for (const H of [-400, 0, 1850, 5000, 11000]) {
      expect(pressureAltitude.compute({ p: standardPressure.compute({ H }) })).toBeCloseTo(H, 6);
      expect(geopotentialAltitude.compute({ z: geometricAltitude.compute({ H }) })).toBeCloseTo(H, 6);
    }
    // U.S. Standard Atmosphere 1976: 5000 m geopotential is 5003.936 m.
    expect(geometricAltitude.compute({ H: 5000 })).toBeCloseTo(5003.936, 3);
  });
});

describe("barometer and altitude", () => {
  it("from elevation alone: the standard atmosphere, with a note", () => {
    const trace = recording();
    const place = barometerAltitude({ known: "elevation", z: geometricAltitude.compute({ H: 1850 }) }, trace);
    // Generating set at 1850 m geopotential, worked by an independent program: 2.975 °C, 80.9870 kPa.
    expect(place.T_std - 273.15).toBeCloseTo(2.975, 6);
    expect(place.p_0).toBeCloseTo(80987.0, 0);
    expect(place.Delta_p_std).toBe(0);
    expect(place.p_Q).toBeCloseTo(101325, 6);
    expect(trace.notes.map((note) => note.about)).toContain("p_0");
  });

  it("station reading and sea-level setting undo each other", () => {
    for (const p_0 of [78e3, 80e3, 83e3]) {
      const station = barometerAltitude({ known: "station", z: 1850, p_0 });
      const back = barometerAltitude({ known: "sea-level", z: 1850, p_Q: station.p_Q });
      expect(back.p_0).toBeCloseTo(p_0, 6);
      expect(back.H_p).toBeCloseTo(station.H_p, 6);
      expect(back.Delta_p_std).toBeCloseTo(p_0 - station.p_std, 6);
    }
  });

  it("a sea-level setting of 1013.25 hPa gives the standard pressure, a higher one more", () => {
    const standard = barometerAltitude({ known: "sea-level", z: 500, p_Q: 101325 });
    expect(standard.p_0).toBeCloseTo(standard.p_std, 6);
    expect(barometerAltitude({ known: "sea-level", z: 500, p_Q: 103e3 }).p_0).toBeGreaterThan(standard.p_0);
    expect(barometerAltitude({ known: "sea-level", z: 0, p_Q: 103e3 }).p_0).toBeCloseTo(103e3, 6);
  });

  it("says when the reading and the elevation disagree", () => {
    const trace = recording();
    barometerAltitude({ known: "station", z: 1850, p_0: 101.3e3 }, trace);
    expect(trace.notes.some((note) => note.says.includes("disagree"))).toBe(true);
  });

  it("notes altitudes above 11 km and keeps the number", () => {
    const trace = recording();
    expect(barometerAltitude({ known: "elevation", z: 12e3 }, trace).p_0).toBeGreaterThan(15e3);
    expect(trace.notes.some((note) => note.limit?.value === 11e3)).toBe(true);
  });

  it("refuses the impossible and is the same with and without trace", () => {
    expect(() => barometerAltitude({ known: "station", z: 0, p_0: -1 })).toThrow(DomainError);
    expect(() => barometerAltitude({ known: "sea-level", z: 0, p_Q: 0 })).toThrow(DomainError);
    expect(() => barometerAltitude({ known: "elevation", z: 50e3 })).toThrow(DomainError);
    const given = { known: "sea-level", z: 700, p_Q: 100e3 } as const;
    expect(barometerAltitude(given, recording())).toEqual(barometerAltitude(given, plain));
  });
});
