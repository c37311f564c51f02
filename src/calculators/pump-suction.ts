import { pressureOfHead } from "../../calc/circuit/pump/pressure-of-head.ts";
import { pumpSuction, STRAINER } from "../../calc/circuit/pump/pump-suction.ts";
import { suctionHead } from "../../calc/circuit/pump/suction-head.ts";
import { suctionLoss } from "../../calc/circuit/pump/suction-loss.ts";
import { suctionMargin } from "../../calc/circuit/pump/suction-margin.ts";
import { suctionPipeLoss } from "../../calc/circuit/pump/suction-pipe-loss.ts";
import { barometerField } from "./engine/barometer.ts";
import { type Calculator, defineCalculator } from "./engine/calculator.ts";
import { liquidInputs, liquidRelations } from "./parts/liquid.ts";
import { pipeInputs, pipeRelations } from "./parts/pipe.ts";

const byPipe = { loss: ["pipe"] } as const;

const head = {
  kind: "head",
  limits: [-200, 50],
  typical: [-10, 7],
} as const;

const { T_w, rho_w, mu_w, p_v } = liquidInputs;

export default defineCalculator({
  id: "pump-suction",
  title: "Suction of a pump",
  group: "Water",
  asks: "Does the pump get its water without cavitation, and how warm may the water be?",
  inputs: {
    surface: {
      label: "Water that it draws",
      options: { open: "open to the air", closed: "in a closed tank or line" },
      start: "open",
      help: "",
      heading: "Suction side",
    },
    p_0: { ...barometerField, when: { surface: ["open"] } },
    p_surf: {
      label: "Pressure on the water",
      symbol: "p_surf",
      kind: "pressure",
      start: 120_000,
      limits: [1000, 2e6],
      typical: [50_000, 600_000],
      help: "",
      when: { surface: ["closed"] },
    },
    h_suc: {
      ...head,
      label: "Pump above the water",
      symbol: "h_suc",
      start: 1.5,
      help: "Below zero where the water stands higher.",
    },
    loss: {
      label: "Loss of the suction pipe",
      options: { known: "is known", pipe: "follows from the pipe" },
      start: "pipe",
      help: "",
    },
    Delta_p_sp: {
      label: "Loss of the suction pipe",
      symbol: "Delta_p_sp",
      kind: "pressureDifference",
      start: 4000,
      limits: [0, 500_000],
      typical: [0, 40_000],
      help: "Without its strainer.",
      when: { loss: ["known"] },
    },
    V_w: {
      label: "Flow of the pump",
      symbol: "V_w",
      kind: "liquidFlow",
      start: 9 / 3600,
      limits: [0, 10],
      typical: [1e-5, 0.1],
      help: "",
      when: byPipe,
    },
    L: { ...pipeInputs.L, start: 6, when: byPipe },
    d: { ...pipeInputs.d, when: byPipe },
    k_s: { ...pipeInputs.k_s, when: byPipe },
    K: { ...pipeInputs.K, start: 3, help: "With the foot valve and the inlet.", when: byPipe },
    Delta_p_str: {
      label: "Loss of the strainer",
      symbol: "Delta_p_str",
      kind: "pressureDifference",
      start: 5000,
      limits: [0, 500_000],
      typical: [0, STRAINER.change[1]],
      help: "Common practice: 2 to 5 kPa when clean, cleaned at 15 to 20 kPa.",
    },
    NPSH_R: {
      label: "Suction head it needs",
      symbol: "NPSH_R",
      kind: "head",
      start: 3,
      limits: [0, 100],
      typical: [0.5, 10],
      help: "From its maker, at this flow. It grows with the flow.",
      heading: "Pump and water",
    },
    liquid: liquidInputs.liquid,
    T_w: { ...T_w, start: 303.15, help: "At the pump." },
    rho_w,
    mu_w: { ...mu_w, when: { liquid: ["stated"], ...byPipe } },
    p_v: { ...p_v, help: "At its temperature in the pump." },
  },
  results: {
    NPSH_A: { label: "Suction head that it has", symbol: "NPSH_A", kind: "head" },
    Delta_NPSH: { label: "Margin over what the pump needs", symbol: "Delta_NPSH", kind: "head" },
    T_most: {
      label: "Warmest water of which it has enough",
      symbol: "T_w",
      kind: "temperature",
      when: { liquid: ["water"] },
    },
    Delta_p_more: {
      label: "Loss that may still come",
      symbol: "Delta_p",
      kind: "pressureDifference",
    },
    Delta_p_suc: { label: "Loss before the pump", symbol: "Delta_p_suc", kind: "pressureDifference" },
    Delta_p_sp_found: {
      label: "Loss of the suction pipe",
      symbol: "Delta_p_sp",
      kind: "pressureDifference",
      when: byPipe,
    },
    c: { label: "Speed in the suction pipe", symbol: "c_w", kind: "speed", when: byPipe },
    p_v_found: { label: "Vapour pressure", symbol: "p_v", kind: "pressure", when: { liquid: ["water"] } },
    NPSH_needed: { label: "Suction head that it needs", symbol: "NPSH_R", kind: "head", inPicture: true },
    clean_from: { label: "Clean", symbol: "Delta_p_str", kind: "pressureDifference", inPicture: true },
    clean_to: { label: "Clean", symbol: "Delta_p_str", kind: "pressureDifference", inPicture: true },
    change_from: {
      label: "To be cleaned",
      symbol: "Delta_p_str",
      kind: "pressureDifference",
      inPicture: true,
    },
    change_to: { label: "To be cleaned", symbol: "Delta_p_str", kind: "pressureDifference", inPicture: true },
    strainer_most: {
      label: "Loss of the strainer at which it starves",
      symbol: "Delta_p_str",
      kind: "pressureDifference",
      inPicture: true,
    },
  },
  relations: [
    ...liquidRelations,
    ...pipeRelations,
    suctionPipeLoss,
    suctionLoss,
    suctionHead,
    suctionMargin,
    pressureOfHead,
  ],
  model: (given, trace) => {
    const found = pumpSuction(given as unknown as Parameters<typeof pumpSuction>[0], trace);
    const [clean_from, clean_to] = STRAINER.clean;
    const [change_from, change_to] = STRAINER.change;
    return {
      ...found,
      Delta_p_sp_found: found.Delta_p_sp,
      p_v_found: found.p_v,
      NPSH_needed: given.NPSH_R as number,
      clean_from,
      clean_to,
      change_from,
      change_to,
      strainer_most:
        found.Delta_p_more === undefined ? undefined : (given.Delta_p_str as number) + found.Delta_p_more,
    } as unknown as ReturnType<Calculator["model"]>;
  },
  pictures: [
    {
      draw: "chart",
      when: { liquid: ["water"] },
      vary: "T_w",
      span: [278.15, 363.15],
      bounds: [{ at: "T_most", label: "starves", wrong: "above" }],
      x: "T_w",
      y: "NPSH_A",
      curves: [{ label: "it has" }, { label: "it needs", dash: "alternative", y: "NPSH_needed" }],
      title: "Suction head against the temperature of the water.",
    },
  ],
  also: [
    {
      draw: "chart",
      vary: "Delta_p_str",
      span: [0, 50_000],
      bands: [
        { from: "clean_from", to: "clean_to", label: "clean" },
        { from: "change_from", to: "change_to", label: "clean it" },
      ],
      bounds: [{ at: "strainer_most", label: "starves", wrong: "above" }],
      x: "Delta_p_str",
      y: "NPSH_A",
      curves: [{ label: "it has" }, { label: "it needs", dash: "alternative", y: "NPSH_needed" }],
      title: "Suction head against the loss of the strainer. The bands are common practice.",
    },
  ],
});
