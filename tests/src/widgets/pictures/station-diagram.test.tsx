import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { describeStations, StationDiagram } from "../../../../src/widgets/pictures/StationDiagram.tsx";
import {
  layoutStations,
  narrowSize,
  waterLine,
  wideSize,
} from "../../../../src/widgets/pictures/station-layout.ts";
import type { Part, Station, StationDiagramProps, Water } from "../../../../src/widgets/pictures/types.ts";
import { broken, collisions, drawings, narrow, texts, wide } from "./svg.ts";

const celsius: StationDiagramProps["show"] = {
  temperature: (T) => ({ number: (T - 273.15).toFixed(1).replace("-", "−"), unit: "°C" }),
  pressure: (p) => ({ number: (p / 1000).toFixed(1), unit: "kPa" }),
  density: (rho) => ({ number: rho.toFixed(3), unit: "kg/m³" }),
  humidity: (w) => ({ number: (1000 * w).toFixed(2), unit: "g/kg" }),
  temperatureScale: { unit: "°C", shown: (T) => T - 273.15, kelvin: (t) => t + 273.15 },
};
const fahrenheit: StationDiagramProps["show"] = {
  ...celsius,
  temperature: (T) => ({ number: (1.8 * T - 459.67).toFixed(1).replace("-", "−"), unit: "°F" }),
  temperatureScale: { unit: "°F", shown: (T) => 1.8 * T - 459.67, kelvin: (t) => (t + 459.67) / 1.8 },
};

const station = (number: string, label: string, t: number, kPa: number, rho: number): Station => ({
  number,
  label,
  T: t + 273.15,
  p: 1000 * kPa,
  rho,
});
const pump: StationDiagramProps = {
  title: "Irrigation pump engine",
  stations: [
    station("0", "ambient", 25, 100, 1.168),
    station("1", "compressor inlet", 25, 99, 1.157),
    station("2", "compressor outlet", 126.4, 217.8, 1.899),
    station("3", "cooler outlet", 50, 211.8, 2.283),
  ],
  parts: [
    { kind: "duct", label: "air filter", after: 0 },
    { kind: "compressor", label: "compressor", after: 1, foot: true },
    { kind: "cooler", label: "charge cooler", after: 2 },
  ],
  ghost: {
    label: "without a cooler",
    stations: [
      station("0", "ambient", 25, 100, 1.168),
      station("1", "compressor inlet", 25, 99, 1.157),
      station("2", "compressor outlet", 126.4, 217.8, 1.899),
      station("3", "no cooler", 126.4, 217.8, 1.899),
    ],
  },
  show: celsius,
};

const path: readonly Omit<Part, "after">[] = [
  { kind: "duct", label: "air filter" },
  { kind: "compressor", label: "compressor", foot: true },
  { kind: "cooler", label: "intercooler" },
  { kind: "compressor", label: "compressor" },
  { kind: "cooler", label: "charge cooler" },
];
const longPath: typeof path = [
  { kind: "duct", label: "inlet silencer" },
  { kind: "compressor", label: "compressor of the first stage" },
  { kind: "cooler", label: "charge cooler after the first" },
  { kind: "compressor", label: "compressor of the second stage" },
  { kind: "cooler", label: "charge cooler after the second" },
];
const raw: Water = {
  in: { number: "24.0", unit: "°C" },
  out: { number: "31.5", unit: "°C" },
  flow: { number: "0.8123", unit: "kg/s" },
};
const anyShown = (unit: string) =>
  fc.double({ min: 0.1, max: 999.9, noNaN: true }).map((x) => ({ number: x.toPrecision(4), unit }));
const anyWater = fc.oneof(
  fc.constantFrom(undefined, false as const, raw),
  fc.record({ in: anyShown("°F"), out: anyShown("°F"), flow: anyShown("lb/min") }, { requiredKeys: [] }),
);
const anyAir = fc.record({
  T: fc.oneof(fc.double({ min: 233.15, max: 573.15, noNaN: true }), fc.constant(298.15)),
  p: fc.double({ min: 2e4, max: 1e6, noNaN: true }),
  rho: fc.double({ min: 0.02, max: 20, noNaN: true }),
});
const anyPath = fc
  .record({
    airs: fc.array(anyAir, { minLength: 2, maxLength: 6 }),
    w: fc.option(fc.double({ min: 0, max: 0.05, noNaN: true })),
    show: fc.constantFrom(celsius, fahrenheit),
    uncooled: fc.option(anyAir),
    names: fc.constantFrom(path, longPath),
    waters: fc.tuple(anyWater, anyWater),
  })
  .map(({ airs, w, show, uncooled, names, waters }): StationDiagramProps => {
    const stations = airs.map(
      (air, i): Station => ({ number: String(i), label: "place", ...air, ...(w === null ? {} : { w }) }),
    );
    return {
      title: "Any path",
      stations,
      parts: names.slice(0, stations.length - 1).map((part, after) => {
        const water = part.kind === "cooler" ? waters[after === 2 ? 0 : 1] : undefined;
        return { ...part, after, ...(water !== undefined && { water }) };
      }),
      show,
      ...(uncooled && {
        ghost: {
          label: "without a cooler",
          stations: stations.map((s, i) => (i === stations.length - 1 ? { ...s, ...uncooled } : s)),
        },
      }),
    };
  });

describe("the sentence", () => {
  const sentence = describeStations(pump);
  test("gives every number that is drawn, with its unit and its station", () => {
    expect(sentence).toContain("Station 0, ambient: 25.0 °C, 100.0 kPa, 1.168 kg/m³.");
    expect(sentence).toContain("Station 2, compressor outlet: 126.4 °C, 217.8 kPa, 1.899 kg/m³.");
    expect(sentence).toContain("Station 3, cooler outlet: 50.0 °C, 211.8 kPa, 2.283 kg/m³.");
  });
  test("names the parts in the path and the path not taken", () => {
    expect(sentence).toContain("Between 2 and 3: charge cooler.");
    expect(sentence).toContain("Dashed, without a cooler: 126.4 °C, 217.8 kPa, 1.899 kg/m³.");
  });
  test("tells of the water as far as it is known", () => {
    const withWater = (water: Part["water"]) =>
      describeStations({
        ...pump,
        parts: pump.parts.map((part) => ({ ...part, ...(water !== undefined && { water }) })).slice(2),
      });
    expect(withWater(raw)).toContain(
      "Between 2 and 3: charge cooler; its water enters at 24.0 °C, leaves at 31.5 °C, flows at 0.8123 kg/s.",
    );
    expect(withWater({ flow: raw.flow ?? { number: "", unit: "" } })).toContain(
      "charge cooler; its water flows at 0.8123 kg/s.",
    );
    for (const none of [undefined, false as const, {}]) expect(withWater(none)).toContain("charge cooler. ");
  });
  test("leaves out what is not known of the air", () => {
    const stations = pump.stations.map((s, i) => (i === 2 ? { ...s, T: Number.NaN, w: Number.NaN } : s));
    expect(describeStations({ ...pump, stations })).toContain("compressor outlet: 217.8 kPa, 1.899 kg/m³.");
    const nothing = {
      ...station("2", "compressor outlet", 0, 0, 0),
      T: Number.NaN,
      p: Number.NaN,
      rho: Number.NaN,
    };
    expect(describeStations({ ...pump, stations: [nothing] })).toContain("compressor outlet: not known.");
  });
  test("puts one full stop after each part, whether or not its text brings one", () => {
    for (const title of ["One kilogram of air", "One kilogram of air."]) {
      const parts = pump.parts.map((part) => ({ ...part, label: `${part.label}.` }));
      const said = describeStations({ ...pump, title, parts });
      expect(said).not.toMatch(/\.\s*\./);
      expect(said).toMatch(/^One kilogram of air\. Station 0, /);
      expect(said).toMatch(/kg\/m³\.$/);
    }
  });
  test("is what both drawings tell a screen reader", () => {
    for (const svg of drawings(<StationDiagram {...pump} />)) {
      expect(svg).toContain('role="img"');
      expect(svg).toContain(`aria-label="${sentence}"`);
    }
  });
  test("gives humidity where a station has it", () => {
    const moist = pump.stations.map((s) => ({ ...s, w: 0.012 }));
    expect(describeStations({ ...pump, stations: moist })).toContain("1.168 kg/m³, 12.00 g/kg.");
  });
});

describe("the ribbon", () => {
  test.each([wideSize, narrowSize])("is as thick as the room that one kilogram takes", (size) => {
    const { levels } = layoutStations(pump, size);
    const perVolume = levels.map(({ half }, i) => half * (pump.stations[i]?.rho ?? 0));
    for (const share of perVolume) expect(share).toBeCloseTo(perVolume[0] ?? 0, 9);
  });
  test.each([wideSize, narrowSize])("is as high as the printed scale says", (size) => {
    const { levels, ticks } = layoutStations(pump, size);
    const [a, b] = ticks;
    if (!a || !b) throw new Error("fewer than two ticks");
    const perPixel = (Number(b.text) - Number(a.text)) / (b.y - a.y);
    const read = levels.map(({ y }) => Number(a.text) + (y - a.y) * perPixel);
    pump.stations.forEach(({ T }, i) => {
      expect(read[i]).toBeCloseTo(T - 273.15, 6);
    });
  });
  test("of equal temperatures is level, in the middle", () => {
    const stations = pump.stations.slice(0, 2);
    const { levels } = layoutStations({ ...pump, stations }, wideSize);
    expect(levels[0]?.y).toBeCloseTo(levels[1]?.y ?? 0, 9);
    expect(levels[0]?.y).toBeCloseTo((wideSize.top + wideSize.bottom) / 2, 0);
  });
  test("and its labels stay inside the drawing, whatever the air", () => {
    fc.assert(
      fc.property(anyPath, (props) => {
        for (const size of [wideSize, narrowSize]) {
          const { levels, above, below, temperatures } = layoutStations(props, size);
          const edges = [...above, ...below].map(([, y]) => y);
          expect(Math.min(...edges)).toBeGreaterThan(size.top);
          expect(Math.max(...edges)).toBeLessThan(size.bottom);
          for (const { y } of temperatures) {
            expect(y).toBeGreaterThan(size.top);
            expect(y).toBeLessThan(size.bottom + 4);
          }
          for (const edge of [above, below]) {
            const xs = edge.map(([x]) => x);
            expect([...xs].sort((a, b) => a - b)).toEqual(xs);
          }
          expect(levels).toHaveLength(props.stations.length);
        }
      }),
    );
  });
});

describe("the drawing", () => {
  test("has neither style attributes nor numbers that cannot be drawn, whatever the air", () => {
    fc.assert(
      fc.property(anyPath, (props) => {
        for (const svg of drawings(<StationDiagram {...props} />)) {
          expect(broken(svg)).toBeUndefined();
          expect(svg).not.toMatch(/style/);
        }
      }),
    );
  });
  test("keeps its labels apart, whatever the air", () => {
    fc.assert(
      fc.property(anyPath, (props) => {
        for (const svg of drawings(<StationDiagram {...props} />)) expect(collisions(svg)).toEqual([]);
      }),
    );
  });
  test("keeps its labels inside its width", () => {
    fc.assert(
      fc.property(anyPath, (props) => {
        [wideSize, narrowSize].forEach(({ width }, i) => {
          for (const { x, w } of texts(drawings(<StationDiagram {...props} />)[i] ?? "")) {
            expect(x).toBeGreaterThanOrEqual(0);
            expect(x + w).toBeLessThanOrEqual(width);
          }
        });
      }),
    );
  });
  test("has no text under 13 px where it is shown", () => {
    // The narrow drawing is shown from 326 px, a sheet on a phone of 390 px; the wide one from 43.5 rem.
    const [wideSvg = "", narrowSvg = ""] = drawings(<StationDiagram {...pump} />);
    for (const { size } of texts(narrowSvg)) expect(size * (326 / 350)).toBeGreaterThanOrEqual(13);
    for (const { size } of texts(wideSvg)) expect(size * (696 / 800)).toBeGreaterThanOrEqual(13);
  });
  test("draws a water line for a cooler, and none where the cooler has no water", () => {
    const dry = pump.parts.map((part) => ({ ...part, water: false as const }));
    expect(drawings(<StationDiagram {...pump} />)[wide]).toContain(">water<");
    expect(drawings(<StationDiagram {...pump} parts={dry} />)[wide]).not.toContain(">water<");
  });
  test("writes what is known of the water by its arrows, and leaves out what is not", () => {
    const withWater = (water: Water) =>
      drawings(<StationDiagram {...pump} parts={pump.parts.map((part) => ({ ...part, water }))} />);
    for (const svg of withWater(raw)) {
      for (const text of ["water", "in 24.0 °C", "out 31.5 °C", "0.8123 kg/s"])
        expect(svg).toContain(`>${text}<`);
    }
    for (const svg of withWater({ out: { number: "31.5", unit: "°C" } })) {
      expect(svg).toContain(">out 31.5 °C<");
      expect(svg).not.toContain(">in ");
    }
    // The table of numbers stands below it.
    for (const size of [wideSize, narrowSize]) {
      const parts = pump.parts.map((part) => ({ ...part, water: raw }));
      const layout = layoutStations({ ...pump, parts }, size);
      const water = layout.parts.at(-1)?.water;
      expect(water && water.y + 3 * waterLine).toBeLessThan((layout.rows[0]?.y ?? 0) - 4);
    }
  });
  test("wraps long names of parts where there is little room", () => {
    const stations = [...pump.stations, ...pump.stations.slice(2)];
    const parts = longPath.map((part, after) => ({ ...part, after }));
    const layout = layoutStations({ ...pump, stations, parts }, narrowSize);
    expect(layout.parts.every(({ names }) => names.length > 0)).toBe(true);
    expect(Math.max(...layout.parts.map(({ names }) => names.length))).toBeGreaterThan(1);
  });
  test("draws the path not taken dashed, and nothing where the paths are one", () => {
    const same = { label: "without a cooler", stations: pump.stations };
    expect(drawings(<StationDiagram {...pump} />)[narrow]?.match(/thin alternative/g)).toHaveLength(2);
    expect(drawings(<StationDiagram {...pump} ghost={same} />)[narrow]).not.toContain("thin alternative");
    expect(drawings(<StationDiagram {...pump} ghost={same} />)[narrow]).not.toContain("without a cooler: ");
  });
  test("leaves the ribbon away where a station is not known, and keeps the other numbers", () => {
    const stations = pump.stations.map((s, i) => (i === 2 ? { ...s, T: Number.NaN, rho: Number.NaN } : s));
    const [svg = ""] = drawings(<StationDiagram {...pump} stations={stations} />);
    const drawn = svg.replace(/aria-label="[^"]*"/, "");
    expect(drawn).not.toContain('class="air"');
    expect(broken(drawn.replace(/id="[^"]*"/, ""))).toBeUndefined();
    expect(drawn).toContain("2.283");
  });
  test("is nothing without stations", () => {
    expect(drawings(<StationDiagram {...pump} stations={[]} />)).toEqual([]);
  });
});
