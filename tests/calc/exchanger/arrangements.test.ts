import { describe, expect, it } from "vitest";
import { arrangementOf, arrangements } from "../../../calc/exchanger/arrangements.ts";
import type { Layout } from "../../../calc/exchanger/layout.ts";
import { layouts } from "../../../calc/exchanger/layouts.ts";
import { reach } from "../../../calc/exchanger/reach.ts";
import { DomainError } from "../../../calc/quantity/domain-error.ts";

describe("the list of arrangements", () => {
  it("has every layout once, under a name of its own", () => {
    expect(arrangements.map(({ id }) => id).sort()).toEqual(Object.keys(layouts).sort());
    expect(new Set(arrangements.map(({ name }) => name)).size).toBe(arrangements.length);
    for (const { id, layout, effectiveness } of arrangements) {
      expect(layout).toBe((layouts as Readonly<Record<string, Layout>>)[id]);
      expect(effectiveness.id).toBe(`exchanger/effectiveness/${id}`);
    }
  });

  it("swaps hoses back and forth: the same layout, with the water from the other side", () => {
    const opposite: Readonly<Record<string, string>> = {
      counter: "parallel",
      parallel: "counter",
      against: "with",
      with: "against",
    };
    const pairs = arrangements.filter(({ swapped }) => swapped !== undefined);
    expect(pairs).toHaveLength(20);
    for (const { id, layout, swapped } of pairs) {
      const other = arrangementOf(swapped as string);
      expect(other.swapped).toBe(id);
      if (layout.kind === "across")
        expect(other.layout).toEqual({ ...layout, order: opposite[layout.order] });
      else if (layout.kind === "along")
        expect(other.layout).toEqual({ ...layout, water: opposite[layout.water] });
      else expect.unreachable();
    }
  });

  it("says of every layout with several passes across what swapped hoses make of it", () => {
    for (const { layout, swapped, id } of arrangements)
      if (layout.kind === "across" && layout.passes > 1) expect(swapped, id).toBeDefined();
  });

  it("says of those that peak that they do, and what peaks has its peak at a finite size", () => {
    for (const arrangement of arrangements) {
      expect(/more area makes it worse/.test(arrangement.says), arrangement.id).toBe(arrangement.peaks);
      const { P, NTU } = reach(arrangement, 1);
      expect(Number.isFinite(NTU), arrangement.id).toBe(arrangement.peaks);
      if (arrangement.peaks)
        expect(arrangement.effectiveness.compute({ NTU: 2 * NTU, R: 1 }), arrangement.id).toBeLessThan(
          P - 1e-3,
        );
    }
  });

  it("finds by id, and refuses an id that it does not know", () => {
    for (const arrangement of arrangements) expect(arrangementOf(arrangement.id)).toBe(arrangement);
    for (const id of ["", "counter", "toString"])
      try {
        arrangementOf(id);
        expect.unreachable();
      } catch (error) {
        expect(error).toBeInstanceOf(DomainError);
        expect((error as DomainError).field).toBe("arrangement");
      }
  });
});
