import type { SI } from "../../calc/quantity/domain-error.ts";
import { type Kind, kinds } from "../../calc/quantity/kinds.ts";
import { fromSI, toSI, units } from "../../calc/quantity/units.ts";
import { writeIn, writeNumber } from "../../calc/quantity/write.ts";
import type { Calculator, ChartPicture, Picture, StationPicture } from "../calculators/engine/calculator.ts";
import { isChoice } from "../calculators/engine/calculator.ts";
import { barometerContext, type Surroundings } from "../calculators/engine/entry.ts";
import { type Given, tryModel } from "../calculators/engine/evaluate.ts";
import { isShown } from "../calculators/engine/shown.ts";
import { unitLabel } from "./field.tsx";
import { Chart } from "./pictures/Chart.tsx";
import { StationDiagram } from "./pictures/StationDiagram.tsx";
import { UnitScale } from "./pictures/UnitScale.tsx";

export interface State {
  readonly calculator: Calculator;
  readonly given: Given;
  readonly values: Readonly<Record<string, SI>>;
  readonly around: Surroundings;
}

/** Points along a sweep: enough for a smooth curve, few enough for a slow phone. */
const points = 41;

const shower = (kind: Kind, around: Surroundings) => (x: SI) => {
  const unit = kinds[kind][around.system];
  return { number: writeIn(x, unit, barometerContext(around)), unit: unitLabel(unit) };
};

function quantityOf(calculator: Calculator, id: string): { label: string; kind: Kind } {
  const input = calculator.inputs[id];
  const found = input && !isChoice(input) ? input : calculator.results[id];
  if (!found)
    throw new Error(`${calculator.id}: the picture names “${id}”, which is neither an input nor a result.`);
  return found;
}

function DrawnChart({ picture, state }: { picture: ChartPicture<string, string>; state: State }) {
  const { calculator, given, values, around } = state;
  const x = quantityOf(calculator, picture.x);
  const y = quantityOf(calculator, picture.y);
  const context = barometerContext(around);
  const xUnit = kinds[x.kind][around.system];
  const yUnit = kinds[y.kind][around.system];
  const inX = (si: SI) => fromSI(si, xUnit, context);
  const inY = (si: SI) => fromSI(si, yUnit, context);
  const here = Number(values[picture.x] ?? given[picture.x]);
  const from = Math.min(picture.span[0], here);
  const to = Math.max(picture.span[1], here);
  const sweep = Array.from({ length: points }, (_, i) => from + ((to - from) * i) / (points - 1));
  const curves = picture.curves.map((curve) => ({
    label: curve.label,
    dash: curve.dash ?? "solid",
    points: sweep.map((at): [number, number] => {
      const swept = tryModel(calculator, given, {
        ...(picture.holding as Given),
        ...(curve.with as Given),
        [picture.vary]: at,
      });
      return [inX(at), inY(swept?.[curve.y ?? picture.y] ?? Number.NaN)];
    }),
  }));
  const now = values[picture.y];
  const isHere = now !== undefined && Number.isFinite(here);
  return (
    <Chart
      title={picture.title}
      x={{ label: x.label.toLowerCase(), unit: unitLabel(xUnit), from: inX(from), to: inX(to) }}
      y={{ label: y.label.toLowerCase(), unit: unitLabel(yUnit) }}
      curves={curves}
      {...(isHere && {
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

/** The path of the air, without the figure around it. */
export function DrawnStations({ picture, state }: { picture: StationPicture<string>; state: State }) {
  const { calculator, given, values, around } = state;
  const read = (from: Readonly<Record<string, SI>>) =>
    picture.stations.map(({ number, label, T, p, rho, w }) => ({
      number,
      label,
      T: from[T] ?? Number.NaN,
      p: from[p] ?? Number.NaN,
      rho: from[rho] ?? Number.NaN,
      w: from[w] ?? Number.NaN,
    }));
  const ghostIsHere = Object.entries(picture.ghost ?? {}).every(([key, option]) => given[key] === option);
  const other = picture.ghost && !ghostIsHere ? tryModel(calculator, given, picture.ghost) : null;
  const unit = kinds.temperature[around.system];
  return (
    <StationDiagram
      title={picture.title}
      stations={read(values)}
      parts={picture.parts}
      {...(other && { ghost: { label: "without a cooler", stations: read(other) } })}
      show={{
        temperature: shower("temperature", around),
        pressure: shower("pressure", around),
        density: shower("density", around),
        humidity: shower("humidityRatio", around),
        temperatureScale: {
          unit: unitLabel(unit),
          shown: (kelvin) => fromSI(kelvin, unit, {}),
          kelvin: (shown) => toSI(shown, unit, {}),
        },
      }}
    />
  );
}

function EveryUnit({ title, state }: { title: string; state: State }) {
  const { calculator, given, values, around } = state;
  const choices = Object.fromEntries(
    Object.entries(given).filter((x): x is [string, string] => typeof x[1] === "string"),
  );
  const [id, result] =
    Object.entries(calculator.results).find(([, r]) => isShown(calculator, r.when, choices)) ?? [];
  if (!id || !result) return null;
  const value = values[id] ?? Number.NaN;
  const rows = kinds[result.kind].units.map((unit) => ({
    name: units[unit]?.gauge ? "above the barometer" : "",
    unit: unitLabel(unit),
    number: writeNumber(fromSI(value, unit, barometerContext(around)), 6),
  }));
  return <UnitScale caption={title} rows={rows} />;
}

/** What a calculator's definition asks to be drawn for the choices made, if anything. */
export function pictureFor(calculator: Calculator, choices: Readonly<Record<string, string>>) {
  return calculator.pictures?.find((picture) => isShown(calculator, picture.when, choices)) ?? null;
}

/** That picture for the state at hand. */
export function DrawnPicture({ picture, state }: { picture: Picture<string, string>; state: State }) {
  return (
    <figure class="fig">
      {picture.draw === "chart" && <DrawnChart picture={picture} state={state} />}
      {picture.draw === "stations" && <DrawnStations picture={picture} state={state} />}
      {picture.draw === "units" && <EveryUnit title={picture.title} state={state} />}
      {picture.draw !== "units" && <figcaption>{picture.title}</figcaption>}
    </figure>
  );
}
