import type { SI } from "../../../calc/quantity/domain-error.ts";
import { r1 } from "../../widgets/pictures/numbers.ts";
import { Picture, Words } from "../../widgets/pictures/Picture.tsx";
import { closed, open, stops } from "../../widgets/pictures/ribbon.ts";
import { layoutStations, type Size } from "../../widgets/pictures/station-layout.ts";
import type { StationDiagramProps } from "../../widgets/pictures/types.ts";

/** The ribbon of a station diagram by itself, from edge to edge, with the temperatures and what the places are called. */
export interface AirRibbonProps {
  readonly label: string;
  readonly places: readonly { readonly name: string; readonly T: SI; readonly p: SI; readonly rho: SI }[];
  readonly show: StationDiagramProps["show"];
}

const wide: Size = {
  wide: true,
  width: 848,
  font: 16,
  left: 0,
  right: 848,
  top: 0,
  bottom: 192,
  thickest: 72,
  part: 0,
};
const narrow: Size = { ...wide, wide: false, width: 350, font: 15, right: 350, bottom: 160, thickest: 44 };

export const AirRibbon = ({ label, places, show }: AirRibbonProps) => (
  <Picture label={label} sizes={[wide, narrow]} draw={(size) => draw(places, show, size)} />
);

function draw(places: AirRibbonProps["places"], show: AirRibbonProps["show"], size: Size) {
  const stations = places.map(({ name, ...air }, i) => ({ ...air, label: name, number: `${i + 1}` }));
  const { columns, reach, levels, above, below, temperatures } = layoutStations(
    { title: "", stations, parts: [], show },
    size,
  );
  const fill = `ribbon-${size.width}`;
  const drawing = (
    <>
      <linearGradient id={fill} gradientUnits="userSpaceOnUse" x1={size.left} x2={size.right}>
        {stops(
          levels,
          places.map(({ T }) => T),
          reach,
        ).map(({ offset, colour }) => (
          <stop offset={offset} stop-color={colour} />
        ))}
      </linearGradient>
      <path class="air" fill={`url(#${fill})`} d={closed(above, below)} />
      <path class="outline" d={open(above) + open(below)} />
      {levels.map(({ x, y }) => (
        <path class="flow" d={`M${r1(x - 3)} ${r1(y - 6)}l6 6l-6 6`} />
      ))}
      {temperatures.map(({ x, y, number, unit }) => (
        <Words look="middle halo" x={x} y={y}>
          <tspan class="strong" font-size={size.font + 2}>
            {number}
          </tspan>
          {unit}
        </Words>
      ))}
      {places.map(({ name }, i) => (
        <Words look="second italic middle" x={columns[i] ?? 0} y={size.bottom}>
          {name}
        </Words>
      ))}
    </>
  );
  return { height: size.bottom + 8, drawing };
}
