import { describe, expect, test } from "vitest";
import { type CoolersOnOnePumpGiven, coolersOnOnePump } from "../../../calc/circuit/coolers-on-one-pump.ts";
import { DomainError } from "../../../calc/quantity/domain-error.ts";
import { recording } from "../../../calc/relation/trace.ts";

const rig = {
  wanted: "settings",
  source: "pump",
  points: [
    [0, 24],
    [12 / 3600, 21.6],
    [24 / 3600, 13.5],
  ],
  h_z: 1,
  pipes: "shared",
  liquid: "water",
  T_w: 303.15,
  L_shared: 20,
  d_shared: 0.0525,
  K_shared: 6,
  k_s: 45e-6,
  Delta_p_ref_one: 20e3,
  V_ref_one: 10 / 3600,
  Delta_p_ref_two: 15e3,
  V_ref_two: 5 / 3600,
  n_p: 1.85,
  K_v_one: 8 / 3600,
  K_v_two: 3.5 / 3600,
  V_w_one: 9 / 3600,
  V_w_two: 4 / 3600,
  F_L: 0.9,
  p_out: 104e3,
} as const satisfies CoolersOnOnePumpGiven;

function refusal(more: Partial<CoolersOnOnePumpGiven>): DomainError {
  try {
    coolersOnOnePump({ ...rig, ...more });
  } catch (error) {
    if (error instanceof DomainError) return error;
    throw error;
  }
  throw new Error("not refused");
}

describe("the most that a cooler can have beside the other", () => {
  test("a little less is had, a little more is refused at its field", () => {
    const { V_most } = coolersOnOnePump(rig);
    const [one, two] = V_most as readonly [number, number];
    expect(coolersOnOnePump({ ...rig, V_w_one: one * (1 - 1e-6) }).one.K_v).toBeGreaterThan(0.01);
    expect(refusal({ V_w_one: one * (1 + 1e-6) }).field).toMatch(/^V_w_/);
    expect(coolersOnOnePump({ ...rig, V_w_two: two * (1 - 1e-6) }).two.K_v).toBeGreaterThan(0.01);
    expect(refusal({ V_w_two: two * (1 + 1e-6) }).field).toMatch(/^V_w_/);
  });

  test("flows past the end of the pump are refused with that", () => {
    const { field, limit } = refusal({ V_w_one: 40 / 3600 });
    expect([field, limit?.kind]).toEqual(["V_w_one", "liquidFlow"]);
  });
});

describe("what both branches have in common", () => {
  test("is refused at its one field", () => {
    expect(refusal({ k_s: 0.01 }).field).toBe("k_s");
    expect(refusal({ n_p: undefined }).field).toBe("n_p");
    expect(refusal({ F_L: undefined, K_v_one: undefined, wanted: "flows" }).field).toBe("K_v_one");
    expect(refusal({ F_L: 2 }).field).toBe("F_L");
  });

  test("pipes of their own take some of the flow", () => {
    const own = { L_one: 4, d_one: 0.05, K_one: 3, L_two: 9, d_two: 0.04, K_two: 5 };
    const flows = { ...rig, ...own, wanted: "flows" } as const;
    expect(coolersOnOnePump({ ...flows, pipes: "own" }).V_w).toBeLessThan(coolersOnOnePump(flows).V_w);
  });
});

test("a note says the order, and in one line that one valve sets the flow", () => {
  const said = (more: Partial<CoolersOnOnePumpGiven>) => {
    const trace = recording();
    coolersOnOnePump({ ...rig, ...more }, trace);
    return trace.notes.map(({ says }) => says).join(" ");
  };
  expect(said({ wanted: "flows" })).toContain("Set valve one first");
  expect(said({ wanted: "flows", K_v_one: 3 / 3600, K_v_two: 9 / 3600 })).toContain("Set valve two first");
  expect(said({ wanted: "flows", d_shared: 0.025 })).toContain("pull hard");
  expect(said({ wanted: "series" })).toContain("one flow");
});
