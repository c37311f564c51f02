import { asSentence, together } from "./text.ts";
import type { Station, StationDiagramProps } from "./types.ts";

/** The first station at which the path not taken differs, by index; −1 where it never does. */
export const parting = ({ stations, ghost }: StationDiagramProps): number =>
  ghost?.stations.findIndex(({ T, rho }, i) => T !== stations[i]?.T || rho !== stations[i]?.rho) ?? -1;

/** The station diagram as a sentence, for those who do not see it: every number that is drawn. */
export function describeStations(props: StationDiagramProps): string {
  const { title, stations, parts, ghost, show } = props;
  const air = ({ T, p, rho, w }: Station) =>
    [show.temperature(T), show.pressure(p), show.density(rho), ...(w === undefined ? [] : [show.humidity(w)])]
      .map(together)
      .join(", ");
  const last = parting(props) < 0 ? undefined : ghost?.stations.at(-1);
  return [
    title,
    ...stations.map((s) => `Station ${s.number}, ${s.label}: ${air(s)}`),
    ...parts.flatMap(({ kind, label, after }) => {
      const [a, b] = stations.slice(after);
      return a && b ? `Between ${a.number} and ${b.number}: ${label || kind}` : [];
    }),
    ...(last ? [`Dashed, ${ghost?.label}: ${air(last)}`] : []),
  ]
    .map(asSentence)
    .join(" ");
}
