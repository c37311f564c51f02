import { writeIn } from "../../../calc/quantity/write.ts";
import type { Stretch } from "../../calculators/engine/sweep.ts";
import { Chart } from "../pictures/Chart.tsx";
import type { CurvePoint } from "../pictures/types.ts";
import { unitLabel } from "../unit-label.ts";
import { type Drawn, nameOf, sentenceOf, unitsOf } from "./shown-sweep.ts";

const dashes = ["solid", "alternative", "ideal"] as const;

/** Stretches that say the same of several members of a family are one. */
function distinct(drawn: Drawn): readonly { readonly says: string; readonly stretch: Stretch }[] {
  const said = drawn.swept.stretches.map((stretch) => ({ says: sentenceOf(drawn, stretch), stretch }));
  return [...new Map(said.map((one) => [one.says, one])).values()];
}

/** The curves of a sweep with the present state, and under them what the model says on the way. */
export function SweepChart({
  drawn,
  isStale = false,
  isSmall = false,
}: {
  drawn: Drawn;
  isStale?: boolean;
  isSmall?: boolean;
}) {
  const { given, along, span, result, swept, now, calculator } = drawn;
  const { x, y, xUnit, yUnit, context, inX, inY } = unitsOf(drawn);
  const here = given[along];
  const remarks = distinct(drawn);
  const numbered = remarks.length > 1;
  const title = `${y.label} against ${x.label.toLowerCase()}`;
  return (
    <figure class={`fig ${isStale ? "is-stale" : ""}`}>
      <Chart
        title={title}
        isSmall={isSmall}
        x={{ label: x.label.toLowerCase(), unit: unitLabel(xUnit), from: inX(span[0]), to: inX(span[1]) }}
        y={{ label: y.label.toLowerCase(), unit: unitLabel(yUnit) }}
        curves={swept.curves.map((curve, i) => ({
          label: nameOf(drawn, curve),
          dash: dashes[i % dashes.length] ?? "solid",
          points: curve.points.map(([at, found, leadsOn]): CurvePoint => [inX(at), inY(found), leadsOn]),
        }))}
        bands={remarks.map(({ stretch }, i) => ({
          from: inX(stretch.from),
          to: inX(stretch.to),
          label: numbered ? String(i + 1) : "",
        }))}
        {...(typeof here === "number" &&
          now !== undefined && {
            state: {
              x: inX(here),
              y: inY(now),
              xText: writeIn(here, xUnit, context),
              yText: writeIn(now, yUnit, context),
            },
          })}
      />
      <figcaption>
        {isStale && <b>Not current. </b>}
        {title}. The ring is the state above.
      </figcaption>
      {remarks.length > 0 && (
        <ol class={`remarks ${numbered ? "is-numbered" : ""}`}>
          {remarks.map(({ says }) => (
            <li key={says}>{says}</li>
          ))}
        </ol>
      )}
      {swept.curves.every(({ points }) => points.every(([, value]) => !Number.isFinite(value))) && (
        <p class="msg">
          There is no value of {calculator.results[result]?.label.toLowerCase()} anywhere on this way.
        </p>
      )}
    </figure>
  );
}
