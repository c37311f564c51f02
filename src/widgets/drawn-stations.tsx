import type { Picture, StationPicture } from "../calculators/engine/calculator.ts";
import { tryModel } from "../calculators/engine/evaluate.ts";
import type { State } from "./drawing.ts";
import { StationDiagram } from "./pictures/StationDiagram.tsx";
import type { Water } from "./pictures/types.ts";
import { shower, temperatureScale } from "./shower.ts";

type WaterIds = NonNullable<StationPicture<string>["parts"][number]["water"]>;

/** What is known of the water of a cooler, as the visitor reads it; false where nothing is. */
function waterOf({ calculator, values, around }: State, ids: WaterIds): Water | false {
  const shown = (id: string) => {
    const [kind, value] = [calculator.results[id]?.kind, values[id]];
    if (!kind) throw new Error(`${calculator.id}: the water of the path names “${id}”, which is no result.`);
    return value === undefined ? undefined : shower(kind, around)(value);
  };
  const [enters, leaves, flow] = [ids.T_in, ids.T_out, ids.m].map(shown);
  if (!enters && !leaves && !flow) return false;
  return { ...(enters && { in: enters }), ...(leaves && { out: leaves }), ...(flow && { flow }) };
}

/** The path of the air, station by station. */
export default function DrawnStations(props: { picture: Picture<string, string>; state: State }) {
  const picture = props.picture as StationPicture<string>;
  const { state } = props;
  const { calculator, given, values, around } = state;
  const number = (from: State["values"], id: string) => from[id] ?? Number.NaN;
  const read = (from: State["values"]) =>
    picture.stations.map(({ T, p, rho, w, ...station }) => ({
      ...station,
      T: number(from, T),
      p: number(from, p),
      rho: number(from, rho),
      w: number(from, w),
    }));
  const parts = picture.parts.map(({ water, ...part }) => ({
    ...part,
    ...(water && { water: waterOf(state, water) }),
  }));
  const ghostIsHere = Object.entries(picture.ghost ?? {}).every(([key, option]) => given[key] === option);
  const other = picture.ghost && !ghostIsHere ? tryModel(calculator, given, picture.ghost) : null;
  return (
    <StationDiagram
      title={picture.title}
      stations={read(values)}
      parts={parts}
      {...(other && { ghost: { label: "without a cooler", stations: read(other) } })}
      show={{
        temperature: shower("temperature", around),
        pressure: shower("pressure", around),
        density: shower("density", around),
        humidity: shower("humidityRatio", around),
        temperatureScale: temperatureScale(around),
      }}
    />
  );
}
