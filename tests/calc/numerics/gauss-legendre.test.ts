import { describe, expect, it } from "vitest";
import { gaussLegendre } from "../../../calc/numerics/gauss-legendre.ts";

// Abramowitz and Stegun, table 25.4, from memory: places from -1 to 1 and their weights.
const printed = [
  [1, [0], [2]],
  [2, [0.5773502692], [1]],
  [3, [0, 0.7745966692], [0.8888888889, 0.5555555556]],
  [4, [0.3399810436, 0.8611363116], [0.6521451549, 0.3478548451]],
  [5, [0, 0.5384693101, 0.9061798459], [0.5688888889, 0.4786286705, 0.2369268851]],
] as const;

describe("Gauss's rule", () => {
  it.each(printed)("of %d points is the printed one", (count, places, weights) => {
    const rule = gaussLegendre(count);
    const first = Math.floor(count / 2);
    for (const [i, place] of places.entries()) {
      expect(2 * (rule.nodes[first + i] as number) - 1).toBeCloseTo(place, 9);
      expect(2 * (rule.weights[first + i] as number)).toBeCloseTo(weights[i] as number, 9);
    }
  });

  it.each([1, 2, 3, 7, 16, 41, 120])("of %d points is exact for every power that it can be", (count) => {
    const { nodes, weights } = gaussLegendre(count);
    for (let power = 0; power < 2 * count; power++) {
      const integral = nodes.reduce((sum, node, i) => sum + (weights[i] as number) * node ** power, 0);
      expect(Math.abs(integral * (power + 1) - 1), `power ${power}`).toBeLessThan(3e-14);
    }
    const beyond = nodes.reduce((sum, node, i) => sum + (weights[i] as number) * node ** (2 * count), 0);
    if (count < 8) expect(Math.abs(beyond * (2 * count + 1) - 1)).toBeGreaterThan(1e-9);
  });

  it("rises and is alike from both ends", () => {
    for (const count of [2, 5, 30, 77]) {
      const { nodes, weights } = gaussLegendre(count);
      expect([...nodes]).toEqual([...nodes].sort((a, b) => a - b));
      for (let i = 0; i < count; i++) {
        expect((nodes[i] as number) + (nodes[count - 1 - i] as number)).toBeCloseTo(1, 15);
        expect(weights[i]).toBe(weights[count - 1 - i]);
      }
    }
  });

  it("is refused for what is no count", () => {
    for (const count of [0, -1, 2.5, Number.NaN]) expect(() => gaussLegendre(count)).toThrow(RangeError);
  });
});
