import type { SI } from "../../../calc/quantity/domain-error.ts";
import { kinds } from "../../../calc/quantity/kinds.ts";
import { fromSI } from "../../../calc/quantity/units.ts";
import type { Field } from "../../calculators/engine/calculator.ts";
import { barometerContext } from "../../calculators/engine/entry.ts";
import { csvText } from "../exports/csv-text.ts";
import { siNumber } from "../exports/rows.ts";
import { type Drawn, nameOf, unitsOf } from "./shown-sweep.ts";

/** A row of a sweep: the place, and each curve's value there; undefined where it has none. */
export interface SweepRow {
  readonly x: SI;
  readonly ys: readonly (SI | undefined)[];
}

/** The even places of a sweep with the values of all curves; those that only lead on to where a curve ends are left out. */
export function rowsOf({ swept }: Drawn): readonly SweepRow[] {
  const places = (swept.curves[0]?.points ?? []).filter(([, , leadsOn]) => !leadsOn).map(([x]) => x);
  const tables = swept.curves.map(({ points }) => new Map(points.map(([x, y]) => [x, y])));
  return places.map((x) => ({
    x,
    ys: tables.map((table) => {
      const y = table.get(x);
      return y !== undefined && Number.isFinite(y) ? y : undefined;
    }),
  }));
}

/** A sweep as comma-separated values: every even place, in the visitor's units and in SI, to twelve digits. */
export function sweepCsv(drawn: Drawn): string {
  const { calculator, along, swept, family, around } = drawn;
  const { x, xUnit, inX } = unitsOf(drawn);
  const names = swept.curves.map((curve) => {
    const { label, kind } = calculator.results[curve.result] ?? {
      label: curve.result,
      kind: "ratio" as const,
    };
    const input = family === undefined ? undefined : (calculator.inputs[family] as Field);
    const name = input ? `${label}, ${input.label.toLowerCase()} ${nameOf(drawn, curve)}` : label;
    const unit = kinds[kind][around.system];
    return { name, unit, kind, shown: (y: SI) => siNumber(fromSI(y, unit, barometerContext(around))) };
  });
  const cell = (y: SI | undefined, write: (y: SI) => number) => (y === undefined ? "" : write(y));
  const head = [
    `${x.label} (${xUnit})`,
    ...names.map(({ name, unit }) => `${name} (${unit})`),
    `${along} (SI: ${kinds[x.kind].si})`,
    ...names.map(({ name, kind }) => `${name} (SI: ${kinds[kind].si})`),
  ];
  return csvText([
    head,
    ...rowsOf(drawn).map(({ x: at, ys }) => [
      siNumber(inX(at)),
      ...ys.map((y, i) => cell(y, names[i]?.shown ?? siNumber)),
      siNumber(at),
      ...ys.map((y) => cell(y, siNumber)),
    ]),
  ]);
}
