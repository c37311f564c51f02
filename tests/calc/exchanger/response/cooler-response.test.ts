import { describe, expect, test } from "vitest";
import {
  type CoolerResponseGiven,
  coolerResponse,
} from "../../../../calc/exchanger/response/cooler-response.ts";
import { DomainError } from "../../../../calc/quantity/domain-error.ts";
import { recording } from "../../../../calc/relation/trace.ts";

const own = { M_core: 9.5, c_core: 900, UA_a: 900, UA_film: 1500, C_w: 2000, T_w_in: 303.15, V_ch: 0.022 };
const cell = {
  M_core_cell: 6,
  c_core_cell: 900,
  UA_a_cell: 1220,
  UA_film_cell: 1310,
  C_w_cell: 3763,
  T_w_in_cell: 295.15,
  V_ch_cell: 0.009,
};
const air = { m_a: 0.35, p_2: 260_000, T_2_from: 323.15, T_2: 458.15, t: 12, x_tol: 0.1 };
const given: CoolerResponseGiven = { ...air, ...own, ...cell };
const alike: CoolerResponseGiven = {
  ...air,
  ...own,
  ...Object.fromEntries(Object.entries(own).map(([id, value]) => [`${id}_cell`, value])),
};

/** One step of Runge and Kutta's rule of the fourth order. */
function step(f: (y: number) => number, y: number, h: number): number {
  const k1 = f(y);
  const k2 = f(y + (h / 2) * k1);
  const k3 = f(y + (h / 2) * k2);
  const k4 = f(y + h * k3);
  return y + (h / 6) * (k1 + 2 * k2 + 2 * k3 + k4);
}

/** Where a stream leaves a wall of one temperature, stretch by stretch. */
function leaves(C: number, UA: number, T_in: number, T_core: number, parts = 100): number {
  let T = T_in;
  for (let i = 0; i < parts; i++) T = step((y) => ((T_core - y) * UA) / C, T, 1 / parts);
  return T;
}

describe("a core that hot air warms", () => {
  test("follows its balance of heat, integrated in time and along both streams", () => {
    const { T_3_first, T_3_before, T_3_t, T_3_end, E_a, tau } = coolerResponse(given);
    // The heat-capacity rate of the air, from what it exchanges: E = C (1 - exp(-UA/C)).
    let C_a = E_a;
    for (let i = 0; i < 200; i++) C_a = E_a / (1 - Math.exp(-own.UA_a / C_a));
    const rate = (T_2: number) => (T_core: number) =>
      (C_a * (T_2 - leaves(C_a, own.UA_a, T_2, T_core)) -
        own.C_w * (leaves(own.C_w, own.UA_film, own.T_w_in, T_core) - own.T_w_in)) /
      (own.M_core * own.c_core);
    let T_core = own.T_w_in;
    for (let i = 0; i < 4000; i++) T_core = step(rate(air.T_2_from), T_core, 0.1);
    expect(leaves(C_a, own.UA_a, air.T_2_from, T_core)).toBeCloseTo(T_3_before, 5);
    expect(leaves(C_a, own.UA_a, air.T_2, T_core)).toBeCloseTo(T_3_first, 5);
    for (let i = 0; i < 120; i++) T_core = step(rate(air.T_2), T_core, 0.1);
    expect(leaves(C_a, own.UA_a, air.T_2, T_core)).toBeCloseTo(T_3_t, 5);
    for (let i = 0; i < 40 * tau; i++) T_core = step(rate(air.T_2), T_core, 0.5);
    expect(leaves(C_a, own.UA_a, air.T_2, T_core)).toBeCloseTo(T_3_end, 5);
  });

  test("begins at once and ends at rest", () => {
    const now = coolerResponse({ ...given, t: 0 });
    expect(now.T_3_t).toBeCloseTo(now.T_3_first, 9);
    const late = coolerResponse({ ...given, t: 1e5 });
    expect(late.T_3_t).toBeCloseTo(late.T_3_end, 9);
  });

  test("takes on the temperature of the air, where no water flows", () => {
    const { T_3_end, tau, E_a, E_w } = coolerResponse({ ...given, UA_film: 0 });
    expect(T_3_end).toBeCloseTo(air.T_2, 9);
    expect(E_w).toBe(0);
    expect(tau).toBeCloseTo((own.M_core * own.c_core) / E_a, 9);
  });
});

describe("what is missing in the cell", () => {
  test("makes it answer and fill alike, once it is added", () => {
    const { M_add = 0, V_add = 0, tau, t_fill } = coolerResponse(given);
    const mended = coolerResponse({
      ...given,
      M_core_cell: cell.M_core_cell + M_add,
      V_ch_cell: cell.V_ch_cell + V_add,
    });
    expect(mended.tau_cell).toBeCloseTo(tau, 9);
    expect(mended.t_fill_cell).toBeCloseTo(t_fill, 9);
  });

  test("is nothing where both coolers are one, and then nothing is said", () => {
    const trace = recording();
    const { M_add, V_add, r_tau, r_fill } = coolerResponse(alike, trace);
    expect([M_add, V_add, r_tau, r_fill].map((x) => x?.toFixed(9))).toEqual([
      "0.000000000",
      "0.000000000",
      "1.000000000",
      "1.000000000",
    ]);
    expect(trace.notes).toEqual([]);
  });

  test("is not told where the cell has too much, and a note says so", () => {
    const trace = recording();
    const found = coolerResponse({ ...given, M_core_cell: 60, V_ch_cell: 0.2 }, trace);
    expect(found.M_add).toBeUndefined();
    expect(found.V_add).toBeUndefined();
    expect(trace.notes.map(({ about }) => about)).toEqual(["r_tau", "r_fill", "T_3_end_cell"]);
  });
});

test("what cannot be is refused by its field", () => {
  const refused = (over: CoolerResponseGiven) => {
    try {
      coolerResponse({ ...given, ...over });
    } catch (error) {
      if (error instanceof DomainError) return error.field;
    }
    return undefined;
  };
  expect(refused({ M_core: 0 })).toBe("M_core");
  expect(refused({ UA_film_cell: -1 })).toBe("UA_film_cell");
  expect(refused({ t: -1 })).toBe("t");
  expect(refused({ V_ch_cell: Number.NaN })).toBe("V_ch_cell");
});
