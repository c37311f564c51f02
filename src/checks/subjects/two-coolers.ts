import { twoCoolers } from "../../../calc/circuit/two-coolers.ts";
import { subject } from "../subject.ts";
import { branch } from "./water-branch.ts";

interface Given extends Record<string, number | string> {
  layout: "parallel" | "series";
  Kv1: number;
  Kv2: number;
}

const { core, points, h_z } = branch;

export default subject<Given>(({ layout, Kv1, Kv2 }, trace) => {
  const { one, two, Delta_p_branches } = twoCoolers(
    {
      layout,
      wanted: "flows",
      source: "pump",
      points,
      h_z,
      liquid: "stated",
      rho_w: 997.047,
      mu_w: 0.890022e-3,
      p_v: 3170,
      shared: { L: 10, d: 0.0525, k_s: 45e-6, K: 4 },
      one: { core, K_v: Kv1 / 3600 },
      two: { core, pipe: { L: 20, d: 0.04, k_s: 45e-6, K: 3 }, K_v: Kv2 / 3600 },
    },
    trace,
  );
  return { Q1: 3600 * one.V_w, Q2: 3600 * two.V_w, branch: Delta_p_branches };
});
