import type { SI } from "../../calc/quantity/domain-error.ts";
import { type Kind, kinds } from "../../calc/quantity/kinds.ts";
import { fromSI } from "../../calc/quantity/units.ts";
import { writeIn } from "../../calc/quantity/write.ts";
import {
  type Calculator,
  type ChartPicture,
  isChoice,
  type Picture,
} from "../calculators/engine/calculator.ts";
import { barometerContext } from "../calculators/engine/entry.ts";
import { type Given, tryModel } from "../calculators/engine/evaluate.ts";
import { type Point, partWithValues, pointsAlong } from "../calculators/engine/points-along.ts";
import type { State } from "./drawing.ts";
import { Chart } from "./pictures/Chart.tsx";
import type { CurvePoint } from "./pictures/types.ts";
import { unitLabel } from "./unit-label.ts";

function quantityOf(calculator: Calculator, id: string): { label: string; kind: Kind } {
  const input = calculator.inputs[id];
  const found = input && !isChoice(input) ? input : calculator.results[id];
  if (!found)
    throw new Error(`${calculator.id}: the picture names “${id}”, which is neither an input nor a result.`);
  return found;
}

/** The model with changes, computed once for all curves that differ only in the result they show. */
function remembered(calculator: Calculator, given: Given): (changes: Given) => ReturnType<typeof tryModel> {
  const known = new Map<string, ReturnType<typeof tryModel>>();
  return (changes) => {
    const key = JSON.stringify(changes);
    const before = known.get(key);
    if (before !== undefined) return before;
    const values = tryModel(calculator, given, changes);
    known.set(key, values);
    return values;
  };
}

/** One result along one input, through the model. */
export default function DrawnChart(props: { picture: Picture<string, string>; state: State }) {
  const picture = props.picture as ChartPicture<string, string>;
  const { state } = props;
  const { calculator, given, values, around } = state;
  const x = quantityOf(calculator, picture.x);
  const y = quantityOf(calculator, picture.y);
  const context = barometerContext(around);
  const xUnit = kinds[x.kind][around.system];
  const yUnit = kinds[y.kind][around.system];
  const inX = (si: SI) => fromSI(si, xUnit, context);
  const inY = (si: SI) => fromSI(si, yUnit, context);
  const here = Number(values[picture.x] ?? given[picture.x]);
  const bestAt = picture.best && values[picture.best.at];
  const [first, last] = picture.span;
  const marked = [here, bestAt ?? Number.NaN].filter(Number.isFinite);
  const fromFirst = Math.min(first, ...marked);
  // Far enough past the best that the fall can be seen.
  const toLast = Math.max(last, ...marked, 2 * (bestAt ?? fromFirst) - fromFirst);
  const modelAt = remembered(calculator, given);
  const sweepAll = (from: SI, to: SI): readonly (readonly Point[])[] =>
    picture.curves.map((curve) => {
      const held: Given = { ...(picture.holding as Given), ...(curve.with as Given) };
      const value = (at: SI): SI =>
        modelAt({ ...held, [picture.vary]: at })?.[curve.y ?? picture.y] ?? Number.NaN;
      return pointsAlong(value, from, to);
    });
  const wide = sweepAll(fromFirst, toLast);
  const [from, to] = partWithValues(wide.flat(), marked, fromFirst, toLast);
  const swept = from === fromFirst && to === toLast ? wide : sweepAll(from, to);
  const curves = picture.curves.map(({ label, dash = "solid" }, i) => ({
    label,
    dash,
    points: (swept[i] ?? []).map(([at, found, leadsOn]): CurvePoint => [inX(at), inY(found), leadsOn]),
  }));
  const best =
    bestAt === undefined
      ? undefined
      : modelAt({ ...(picture.holding as Given), [picture.vary]: bestAt })?.[picture.y];
  const now = values[picture.y];
  const bands = (picture.bands ?? []).flatMap(({ label, ...ends }) => {
    const [from, to] = [values[ends.from], values[ends.to]];
    return from === undefined || to === undefined ? [] : [{ label, from: inX(from), to: inX(to) }];
  });
  const bounds = (picture.bounds ?? []).flatMap(({ at, label, wrong }) => {
    const value = values[at];
    return value === undefined ? [] : [{ label, wrong, x: inX(value) }];
  });
  return (
    <Chart
      title={picture.title}
      x={{ label: x.label.toLowerCase(), unit: unitLabel(xUnit), from: inX(from), to: inX(to) }}
      y={{ label: y.label.toLowerCase(), unit: unitLabel(yUnit) }}
      curves={curves}
      {...(picture.best &&
        bestAt !== undefined &&
        best !== undefined && { best: { x: inX(bestAt), y: inY(best), label: picture.best.label } })}
      bands={bands}
      bounds={bounds}
      {...(now !== undefined &&
        Number.isFinite(here) && {
          state: {
            x: inX(here),
            y: inY(now),
            xText: writeIn(here, xUnit, context),
            yText: writeIn(now, yUnit, context),
          },
        })}
    />
  );
}
