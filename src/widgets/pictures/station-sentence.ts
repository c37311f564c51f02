import { drawable } from "./numbers.ts";
import { asSentence, together } from "./text.ts";
import type { Part, Station, StationDiagramProps } from "./types.ts";

/** The first station at which the path not taken differs, by index; −1 where it never does. */
export const parting = ({ stations, ghost }: StationDiagramProps): number =>
  ghost?.stations.findIndex(({ T, rho }, i) => T !== stations[i]?.T || rho !== stations[i]?.rho) ?? -1;

/** The station diagram as a sentence, for those who do not see it: every number that is drawn. */
export function describeStations(props: StationDiagramProps): string {
  const { title, stations, parts, ghost, show } = props;
  const air = ({ T, p, rho, w }: Station) => {
    const known = [
      [show.temperature, T],
      [show.pressure, p],
      [show.density, rho],
      [show.humidity, w],
    ] as const;
    const said = known.flatMap(([write, value]) => (drawable(value) ? [together(write(value))] : []));
    return said.join(", ") || "not known";
  };
  const last = parting(props) < 0 ? undefined : ghost?.stations.at(-1);
  return [
    title,
    ...stations.map((s) => `Station ${s.number}, ${s.label}: ${air(s)}`),
    ...parts.flatMap(({ kind, label, after, water }) => {
      const [a, b] = stations.slice(after);
      return a && b ? `Between ${a.number} and ${b.number}: ${label || kind}${waterInWords(water)}` : [];
    }),
    ...(last ? [`Dashed, ${ghost?.label}: ${air(last)}`] : []),
  ]
    .map(asSentence)
    .join(" ");
}

function waterInWords(water: Part["water"]): string {
  if (!water) return "";
  const said = [
    water.in && `enters at ${together(water.in)}`,
    water.out && `leaves at ${together(water.out)}`,
    water.flow && `flows at ${together(water.flow)}`,
  ].filter((text) => text !== undefined);
  return said.length > 0 ? `; its water ${said.join(", ")}` : "";
}
