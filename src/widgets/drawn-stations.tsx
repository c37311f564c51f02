import type { Picture, StationPicture } from "../calculators/engine/calculator.ts";
import { tryModel } from "../calculators/engine/evaluate.ts";
import type { State } from "./drawing.ts";
import { StationDiagram } from "./pictures/StationDiagram.tsx";
import { shower, temperatureScale } from "./shower.ts";

/** The path of the air, station by station. */
export default function DrawnStations(props: { picture: Picture<string, string>; state: State }) {
  const picture = props.picture as StationPicture<string>;
  const { state } = props;
  const { calculator, given, values, around } = state;
  const read = (from: State["values"]) =>
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
        temperatureScale: temperatureScale(around),
      }}
    />
  );
}
