import { type WaterCircuitGiven, waterCircuit } from "../../../calc/circuit/water-circuit.ts";
import { saturationOverWater } from "../../../calc/fluids/saturation-over-water.ts";
import { subject } from "../subject.ts";

/** The branch that the checks describe, but for its valve's style and what is wanted. */
export const branch = {
  source: "pump",
  points: [
    [0, 30],
    [10 / 3600, 29],
    [20 / 3600, 26],
  ],
  h_z: 2,
  liquid: "water",
  T_w: 298.15,
  pipe: { L: 25, d: 0.0525, k_s: 45e-6, K: 9 },
  core: { Delta_p_ref: 18e3, V_ref: 12 / 3600, n_p: 2 },
  K_vs: 25 / 3600,
  R_0: 50,
  p_out: 106.3e3,
} as const satisfies Partial<WaterCircuitGiven>;

interface Given extends Record<string, number | string> {
  characteristic: "linear" | "equal-percentage";
  Q: number;
  F_L: number;
  T_hot: number;
}

export default subject<Given>(({ characteristic, Q, F_L, T_hot }, trace) => {
  const p_v_hot = trace.use(saturationOverWater, { T: T_hot }, "water in the valve");
  const found = waterCircuit(
    { ...branch, characteristic, F_L, p_v_hot, wanted: "position", V_w: Q / 3600 },
    trace,
  );
  const { V_full } = found;
  const open = waterCircuit({ ...branch, characteristic, F_L, wanted: "position", V_w: V_full });
  return {
    Q_full: 3600 * V_full,
    valve_open: open.Delta_p_v,
    authority: found.N_v,
    pipe: found.Delta_p_wall + found.Delta_p_other,
    core: found.Delta_p_core,
    valve: found.Delta_p_v,
    Kv: 3600 * found.K_v,
    lift: found.x_v,
    c: found.c,
    power: found.W_w,
    choked_at: found.Delta_p_ch,
    choked: found.isChoked ? "yes" : "no",
  };
});
