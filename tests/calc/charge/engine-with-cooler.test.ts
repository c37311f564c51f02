import { expect, test } from "vitest";
import { engineWithCooler } from "../../../calc/charge/engine-with-cooler.ts";
import { arrangements } from "../../../calc/exchanger/arrangements.ts";

const engine = {
  T_1: 298.15,
  p_1: 99_000,
  r: 2.4,
  eta_s: 0.74,
  kappa: 1.4,
  R_m: 287.05,
  c_p: 1006,
  arrangement: "counter-cross-2",
  T_w_in: 303.15,
  m_w: 1.2,
  c_w: 4180,
  UA_ref: 900,
  n_h: 0.6,
  UA_w: 2500,
  Delta_p_ref: 6000,
  n_p: 1.8,
  m_ref: 0.3,
  V_d: 0.0087,
  n: 30,
  n_R: 2,
  eta_v: 0.94,
};

test("the flow is the one that its own charge makes the engine draw", () => {
  const { m_a, rho_3 } = engineWithCooler(engine);
  expect(0.94 * rho_3 * 0.0087 * 15).toBeCloseTo(m_a, 12);
});

test("every arrangement finds its flow", () => {
  for (const { id } of arrangements) {
    const { m_a, rho_3 } = engineWithCooler({ ...engine, arrangement: id });
    expect(0.94 * rho_3 * 0.0087 * 15).toBeCloseTo(m_a, 12);
  }
});

test("a larger cooler lets the engine breathe more, a greater loss less", () => {
  const flow = (change: Partial<typeof engine>) => engineWithCooler({ ...engine, ...change }).m_a;
  expect(flow({ UA_ref: 1800 })).toBeGreaterThan(flow({}));
  expect(flow({ Delta_p_ref: 12_000 })).toBeLessThan(flow({}));
  expect(flow({ arrangement: "parallel-cross-2" })).toBeLessThan(flow({}));
});
