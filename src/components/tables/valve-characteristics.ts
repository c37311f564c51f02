import { type CharacteristicGiven, characteristicOf } from "../../../calc/circuit/valve/characteristic.ts";
import { chokedDifference } from "../../../calc/circuit/valve/choked-difference.ts";
import { equalPercentageCharacteristic } from "../../../calc/circuit/valve/equal-percentage-characteristic.ts";
import { installed } from "../../../calc/circuit/valve/installed.ts";
import { installedFlow } from "../../../calc/circuit/valve/installed-flow.ts";
import { linearCharacteristic } from "../../../calc/circuit/valve/linear-characteristic.ts";
import { quickOpeningCharacteristic } from "../../../calc/circuit/valve/quick-opening-characteristic.ts";
import {
  VALVE_STYLES_STANDING,
  type ValveStyle,
  valveStyles,
} from "../../../calc/circuit/valve/valve-styles.ts";
import { type ReferenceTable, sheetOf } from "../reference-table.ts";

/** The rangeability of the equal-percentage valves in the tables: a usual one. */
const R_0 = 50;

const positions = Array.from({ length: 11 }, (_, i) => i / 10);
/** Closer together where the curves are steep. */
const drawn = Array.from({ length: 41 }, (_, i) => Math.max(0.0005, (i / 40) ** 2));
const authorities = [1, 0.7, 0.5, 0.3, 0.2, 0.1, 0.05];
const percent = { unit: "%", digits: { decimals: 1 } };

const linear: CharacteristicGiven = { characteristic: "linear" };
const equal: CharacteristicGiven = { characteristic: "equal-percentage", R_0 };
const quick: CharacteristicGiven = { characteristic: "quick-opening" };

const position = {
  words: "Position",
  symbol: "x_v" as const,
  unit: "%",
  digits: { decimals: 0 },
  of: (x_v: number) => x_v,
};
const openingBy = (words: string, given: CharacteristicGiven) => ({
  words,
  symbol: "phi_v" as const,
  ...percent,
  of: characteristicOf(given).opening,
});

const inherent = sheetOf({
  id: "inherent",
  title: "The valve alone: part of the full flow coefficient",
  rows: positions,
  columns: [
    position,
    openingBy("Linear", linear),
    ...[30, 50, 100].map((R_0) => ({
      ...openingBy("Equal percentage", { characteristic: "equal-percentage", R_0 }),
      under: `R₀ = ${R_0}`,
    })),
    openingBy("Quick opening", quick),
  ],
});

const installedBy = (id: string, title: string, given: CharacteristicGiven) =>
  sheetOf({
    id,
    title,
    rows: positions,
    columns: [
      position,
      ...authorities.map((N_v) => ({
        words: "Part of the full flow",
        symbol: "q_v" as const,
        under: `N = ${N_v}`,
        ...percent,
        of: (x_v: number) => installed({ ...given, N_v, x_v }).q_v,
      })),
    ],
  });

const opens = { linear: "linear", "equal-percentage": "equal percentage", "quick-opening": "quick opening" };

const styles = sheetOf({
  id: "styles",
  title: "Styles of valves, fully open",
  rows: valveStyles,
  columns: [
    { words: "Style", of: ({ name }: ValveStyle) => name },
    { words: "Recovery factor", symbol: "F_L", unit: "1", digits: { decimals: 2 }, of: ({ F_L }) => F_L },
    { words: "Style modifier", symbol: "F_d", unit: "1", digits: { decimals: 2 }, of: ({ F_d }) => F_d },
    {
      words: "Chokes at",
      unit: "%",
      digits: { decimals: 0 },
      of: ({ F_L }) => chokedDifference.compute({ F_LP: F_L, F_P: 1, p_in: 1, F_F: 0, p_v: 0 }),
    },
    { words: "Opens mostly", of: ({ characteristic }) => opens[characteristic] },
  ],
});

export default {
  id: "valve-characteristics",
  order: 85,
  title: "Valve characteristics",
  lead: "How much of its flow a valve passes at each position, alone and in a circuit, and how soon each style chokes.",
  synonyms: [
    "equal percentage",
    "linear valve",
    "quick opening",
    "installed characteristic",
    "valve authority",
    "recovery factor",
    "FL values",
    "ball valve",
    "globe valve",
    "butterfly valve",
    "needle valve",
  ],
  chart: {
    title: "Flow through an equal-percentage valve in its circuit, against its authority",
    caption:
      "At the end of each curve stands the position. With all of the pressure, at the right, the valve does what it was made to. With hardly any of it each position passes nearly the full flow.",
    x: { label: "authority", unit: "", from: 0, to: 1 },
    y: { label: "part of the full flow", unit: "%", from: 0, to: 100 },
    by: "x",
    curves: [0.2, 0.4, 0.6, 0.8, 0.9].map((x_v) => ({
      label: `${100 * x_v}\u00a0%`,
      points: drawn.map((N_v) => [N_v, 100 * installed({ ...equal, N_v, x_v }).q_v] as const),
    })),
  },
  sheets: [
    inherent,
    installedBy("linear", "A linear valve in its circuit, by authority", linear),
    installedBy("equal-percentage", "An equal-percentage valve in its circuit, by authority", equal),
    installedBy("quick-opening", "A quick-opening valve in its circuit, by authority", quick),
    styles,
  ],
  says: [
    `The valve alone has the same pressure difference at each position. In its circuit it has a constant head with pipe and cooler, which lose with the square of the flow; the authority N is its part of all that is lost with the valve fully open. The equal-percentage valve in the circuit has a rangeability R₀ of ${R_0}. By its formula it is never quite shut: its seat does that.`,
    "An authority of 0.3 to 0.5 and a position between a fifth and four fifths of the travel are common practice, without a source.",
    "The factors of the styles are typical values, from memory. The maker’s own come first. Under “chokes at” stands a part of the pressure before the valve, counted from the pressure at which its jet boils: a difference so large chokes it.",
  ],
  caution:
    "A valve that is nearly shut may pass nothing while its pointer says otherwise. Prove the flow of water before hot air flows, and never shut both ends of a full cooler.",
  relations: [
    linearCharacteristic,
    equalPercentageCharacteristic,
    quickOpeningCharacteristic,
    installedFlow,
    chokedDifference,
  ],
  sources: [
    {
      key: "iec-60534-2-1",
      where: "tables of typical recovery factors and style modifiers",
      standing: VALVE_STYLES_STANDING,
    },
  ],
  numbers: ["installed-valve", "water-circuit", "control-valve"],
  lessons: ["water-circuit"],
} satisfies ReferenceTable as ReferenceTable;
