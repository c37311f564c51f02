import { DomainError } from "../../../../calc/quantity/domain-error.ts";
import { explicit } from "../../../../calc/relation/relation.ts";
import { plain } from "../../../../calc/relation/trace.ts";
import { defineCalculator } from "../../../../src/calculators/engine/calculator.ts";

const density = explicit({
  id: "test/density",
  title: "Density",
  inputs: { m: { symbol: "m", kind: "ratio" }, V: { symbol: "V", kind: "volume" } },
  result: { symbol: "rho", kind: "density" },
  expression: "m / V",
  sources: [{ key: "nobody", where: "nowhere", standing: "common practice" }],
  ranges: [{ input: "V", from: 0.001, to: 0.5, says: "Nobody measured larger boxes." }],
  compute: ({ m, V }) => m / V,
});

/** A small calculator for tests: what fills a box, with a lid that may be shut. */
export const box = defineCalculator({
  id: "box",
  title: "A box",
  group: "Test",
  asks: "What is in the box?",
  inputs: {
    m: { label: "Filling", symbol: "m", kind: "ratio", start: 2, limits: [0, 100], help: "" },
    V: {
      label: "Size",
      symbol: "V",
      kind: "volume",
      start: 0.1,
      limits: [0, 10],
      typical: [0.01, 1],
      help: "",
    },
    p: {
      label: "Barometer",
      symbol: "p_0",
      kind: "pressure",
      start: 1e5,
      limits: [4e4, 1.1e5],
      help: "",
      barometer: true,
    },
    lid: { label: "Lid", options: { open: "open", shut: "shut" }, start: "open", help: "" },
    lock: {
      label: "Lock",
      options: { none: "none", brass: "of brass" },
      start: "none",
      help: "",
      when: { lid: ["shut"] },
    },
    T: {
      label: "Warmth of the lock",
      symbol: "T",
      kind: "temperature",
      start: 300,
      limits: [200, 400],
      help: "",
      when: { lock: ["brass"] },
    },
  },
  results: {
    rho: { label: "Density", symbol: "rho", kind: "density" },
    T_2: { label: "Lock", symbol: "T_2", kind: "temperature", when: { lock: ["brass"] } },
  },
  relations: [density],
  model: (given, trace = plain) => {
    const [m, V] = [Number(given["m"]), Number(given["V"])];
    if (m > 50) throw new DomainError("m", "The box bursts.", { value: 50, kind: "ratio" });
    if (m > 40) throw new DomainError("lid", "The lid lifts.");
    if (m > 30) trace.note({ about: "m", says: "The box bulges.", limit: { value: 30, kind: "ratio" } });
    const rho = trace.use(density, { m, V }, "in the box");
    return { rho, T_2: Number(given["T"]) };
  },
});
