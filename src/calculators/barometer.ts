import { barometerAltitude } from "../../calc/atmosphere/barometer-altitude.ts";
import { barometerField, elevationField } from "./engine/barometer.ts";
import { type Calculator, defineCalculator } from "./engine/calculator.ts";
import { atmosphereRelations } from "./parts/relations.ts";

export default defineCalculator({
  id: "barometer",
  title: "Barometer and altitude",
  group: "Air",
  asks: "What should the barometer read here, and does the figure I have fit the place?",
  inputs: {
    known: {
      label: "What is known of the pressure",
      options: {
        elevation: "only the elevation",
        station: "the barometer on the spot",
        "sea-level": "a weather report, corrected to sea level",
      },
      start: "elevation",
      help: "",
    },
    z: { ...elevationField, limits: [elevationField.limits[0], 11_000], typical: elevationField.limits },
    p_0: { ...barometerField, when: { known: ["station"] } },
    p_Q: {
      label: "Pressure reported, at sea level",
      symbol: "p_Q",
      kind: "pressure",
      start: 101_500,
      limits: [85_000, 110_000],
      typical: [94_000, 106_000],
      help: "",
      when: { known: ["sea-level"] },
    },
  },
  results: {
    p_found: { label: "Station pressure", symbol: "p_0", kind: "pressure" },
    p_std: { label: "Standard atmosphere at this elevation", symbol: "p_std", kind: "pressure" },
    T_std: { label: "Its temperature", symbol: "T_std", kind: "temperature" },
    Delta_p_std: {
      label: "Station pressure above the standard",
      symbol: "Delta_p_std",
      kind: "pressureDifference",
    },
    H_p: { label: "Pressure altitude", symbol: "H_p", kind: "altitude" },
    p_Q_found: { label: "The same, corrected to sea level", symbol: "p_Q", kind: "pressure" },
  },
  relations: atmosphereRelations,
  model: (given, trace) => {
    const found = barometerAltitude(given as unknown as Parameters<typeof barometerAltitude>[0], trace);
    return { ...found, p_found: found.p_0, p_Q_found: found.p_Q } as unknown as ReturnType<
      Calculator["model"]
    >;
  },
  pictures: [
    {
      draw: "chart",
      vary: "z",
      span: [0, 5000],
      x: "z",
      y: "p_found",
      curves: [{ label: "standard atmosphere", y: "p_std" }],
      title: "The standard atmosphere against elevation; the ring is the station pressure here.",
    },
  ],
});
