import { bendLoss } from "../../../calc/flow/bend-loss.ts";
import { bendLossAtAngle } from "../../../calc/flow/bend-loss-at-angle.ts";
import { conicalContractionLoss } from "../../../calc/flow/conical-contraction-loss.ts";
import { diffuserLoss } from "../../../calc/flow/diffuser-loss.ts";
import {
  bendCoefficient,
  inletCoefficient,
  outletCoefficient,
  tabledBendCoefficient,
} from "../../../calc/flow/duct-coefficients.ts";
import { roughnessOf } from "../../../calc/flow/duct-surface.ts";
import { entranceLoss } from "../../../calc/flow/entrance-loss.ts";
import { mitreLength } from "../../../calc/flow/mitre-length.ts";
import { mitreLoss } from "../../../calc/flow/mitre-loss.ts";
import { sharpContractionLoss } from "../../../calc/flow/sharp-contraction-loss.ts";
import { suddenExpansionLoss } from "../../../calc/flow/sudden-expansion-loss.ts";
import { turbulentFrictionFactor } from "../../../calc/flow/turbulent-friction-factor.ts";
import { toSI } from "../../../calc/quantity/units.ts";
import { writeBound, writeNumber } from "../../../calc/quantity/write.ts";
import { plain } from "../../../calc/relation/trace.ts";
import { type ReferenceTable, roundNumbers, sheetOf } from "../reference-table.ts";

/** The pipe of the table: drawn tube of a usual bore, with charge air at a usual speed in it. */
const d = toSI(60, "mm");
const Re = 2e5;
const f = turbulentFrictionFactor.compute({ Re, k_s: roughnessOf.drawn, d });

const angle = (degrees: number) => toSI(degrees, "deg");
const decimals = { decimals: 2 };
const finer = { decimals: 3 };

const smooth = (degrees: number, R_b: number) => ({ kind: "smooth", theta: angle(degrees), R_b }) as const;
const mitre = (theta: number) => ({ kind: "mitre", theta }) as const;
const K = "K_1" as const;

const bends = sheetOf({
  id: "bends",
  title: "Smooth bends",
  rows: [1, 1.25, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10],
  columns: [
    {
      words: "Radius over bore",
      symbol: "R_b",
      unit: "1",
      digits: { decimals: 2 },
      of: (R_b: number) => R_b,
    },
    ...[30, 45, 60, 90, 180].map((degrees) => ({
      words: "Loss coefficient",
      symbol: K,
      under: `of ${degrees}°`,
      unit: "1",
      digits: finer,
      of: (R_b: number) => bendCoefficient(smooth(degrees, R_b), f, plain),
    })),
    ...[90, 180].map((degrees) => ({
      words: "By another handbook",
      symbol: K,
      under: `of ${degrees}°`,
      unit: "1",
      digits: finer,
      of: (R_b: number) => tabledBendCoefficient(smooth(degrees, R_b), d, plain),
    })),
  ],
});

const mitres = sheetOf({
  id: "mitres",
  title: "Mitre bends",
  rows: [15, 30, 45, 60, 75, 90].map(angle),
  columns: [
    { words: "Angle", symbol: "theta", unit: "deg", digits: { decimals: 0 }, of: (theta: number) => theta },
    {
      words: "Loss coefficient",
      symbol: K,
      unit: "1",
      digits: decimals,
      of: (theta) => bendCoefficient(mitre(theta), f, plain),
    },
    {
      words: "By another handbook",
      symbol: K,
      unit: "1",
      digits: decimals,
      of: (theta) => tabledBendCoefficient(mitre(theta), d, plain),
    },
  ],
});

const entrances = sheetOf({
  id: "entrances",
  title: "Entrances from a large space",
  rows: [0, 0.01, 0.02, 0.03, 0.05, 0.075, 0.1, 0.15, 0.2, 0.3, 0.5, 1],
  columns: [
    {
      words: "Radius of the lip over bore",
      symbol: "R_l",
      unit: "1",
      digits: { decimals: 3 },
      of: (R_l: number) => R_l,
    },
    {
      words: "Loss coefficient",
      symbol: "K_ent",
      unit: "1",
      digits: finer,
      of: (R_l) => inletCoefficient({ kind: "entrance", R_l }, d, f, plain),
    },
  ],
});

const ratios = [0.4, 0.5, 0.6, 0.7, 0.75, 0.8, 0.85, 0.9, 0.95];
const ratio = {
  words: "Smaller bore over larger",
  symbol: "beta_d" as const,
  unit: "1",
  digits: { decimals: 2 },
  of: (beta: number) => beta,
};
const cone = (beta: number, degrees: number) =>
  ({ kind: "cone", d_l: d / beta, theta_c: angle(degrees) }) as const;
const step = (beta: number) => ({ kind: "step", d_l: d / beta }) as const;

const narrowing = sheetOf({
  id: "narrowing",
  title: "Reducers and steps that narrow",
  rows: ratios,
  columns: [
    ratio,
    ...[10, 20, 30, 45, 60, 90].map((degrees) => ({
      words: "Cone of a full angle",
      symbol: "K" as const,
      under: `of ${degrees}°`,
      unit: "1",
      digits: finer,
      of: (beta: number) => inletCoefficient(cone(beta, degrees), d, f, plain),
    })),
    {
      words: "Step",
      symbol: "K",
      unit: "1",
      digits: finer,
      of: (beta) => inletCoefficient(step(beta), d, f, plain),
    },
  ],
});

const widening = sheetOf({
  id: "widening",
  title: "Diffusers and steps that widen",
  rows: ratios,
  columns: [
    ratio,
    ...[6, 10, 15, 20, 30, 45].map((degrees) => ({
      words: "Cone of a full angle",
      symbol: "K" as const,
      under: `of ${degrees}°`,
      unit: "1",
      digits: finer,
      of: (beta: number) => outletCoefficient(cone(beta, degrees), d, plain),
    })),
    {
      words: "Step",
      symbol: "K",
      unit: "1",
      digits: finer,
      of: (beta) => outletCoefficient(step(beta), d, plain),
    },
  ],
});

const radii = roundNumbers("1", 1, [0.125, 2], [0.5, 4], [1, 10]);

export default {
  id: "loss-coefficients",
  order: 80,
  title: "Loss coefficients",
  lead: "What bends, mitres, entrances, reducers and diffusers of a duct lose, as parts of the dynamic pressure in it.",
  synonyms: [
    "K factor",
    "minor loss",
    "fitting loss",
    "elbow loss",
    "hose bend",
    "bellmouth",
    "reducer",
    "pipe bend",
  ],
  chart: {
    title: "Loss coefficient of a smooth bend against its radius over the bore",
    caption:
      "At the end of each curve stands the angle of the bend. Past two or three bores a wider bend gains nothing: what it saves in turning it spends in length.",
    x: { label: "radius of the bend over the bore", unit: "", from: 1, to: 10 },
    y: { label: "loss coefficient K", unit: "", from: 0, to: 0.8 },
    by: "θ",
    curves: [45, 90, 180].map((degrees) => ({
      label: `${degrees}°`,
      points: radii.map((R_b) => [R_b, bendCoefficient(smooth(degrees, R_b), f, plain)] as const),
    })),
  },
  sheets: [bends, mitres, entrances, narrowing, widening],
  says: [
    `Multiply a coefficient by the dynamic pressure of the speed in the pipe; of a reducer or a diffuser by that in the smaller bore. Bends and cones hold the friction along their own length, for drawn tube of ${writeBound(d, "mm")} (${writeBound(d, "in", {}, 3)}) at a Reynolds number of ${writeBound(Re, "1")}, where the friction factor is ${writeNumber(f, 3)}. The other handbook counts on steel pipe of that bore, and its bends lie on a table.`,
    "An outlet into a plenum loses all of the dynamic pressure: its coefficient is one. Bends closer together than ten bores disturb each other, and their sum is then not what they lose.",
    "Two handbooks that are both in use differ by as much as the accuracy says. Where a loss decides, measure it.",
  ],
  relations: [
    bendLoss,
    bendLossAtAngle,
    mitreLoss,
    mitreLength,
    entranceLoss,
    conicalContractionLoss,
    sharpContractionLoss,
    diffuserLoss,
    suddenExpansionLoss,
    turbulentFrictionFactor,
  ],
  numbers: ["duct-loss", "measured-loss"],
  lessons: ["pressure-drop"],
} satisfies ReferenceTable as ReferenceTable;
