import { kinds } from "../../../calc/quantity/kinds.ts";
import { writeQuantity } from "../../../calc/quantity/write.ts";
import type { Surroundings } from "../../calculators/engine/entry.ts";
import { LinkCode } from "./link-code.tsx";

interface Props {
  around: Surroundings;
  /** The barometer was worked out from an elevation. */
  fromElevation: boolean;
  /** Opens the calculator with what is on the paper. */
  link: string;
  printed: Date;
  /** In the order of their numbers. Null: they could not be fetched. */
  sources: readonly string[] | null;
  hasWorking: boolean;
}

const day = new Intl.DateTimeFormat("en-GB", { dateStyle: "long", timeStyle: "short" });

/** What a printed sheet says under its numbers and working: sources, barometer, link, and lines to write on. */
export function PaperFoot({ around, fromElevation, link, printed, sources, hasWorking }: Props) {
  const { value, isExample } = around.barometer;
  const barometer = writeQuantity(value, kinds.pressure[around.system], {});
  const origin = isExample
    ? "an example, not your reading"
    : fromElevation
      ? "worked out from the elevation"
      : "as given";
  return (
    <>
      {!hasWorking && <p>The working did not arrive in time, and is left out.</p>}
      {sources === null ? (
        <p>The list of sources could not be fetched. It stands at {new URL("/sources/", link).href}.</p>
      ) : (
        sources.length > 0 && (
          <section aria-label="Sources">
            <h3>Sources</h3>
            <ol class="sources">
              {sources.map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ol>
          </section>
        )
      )}
      <div class="origin">
        <LinkCode link={link} />
        <div>
          <p>
            <b>Barometer</b> {barometer}, {origin}.
          </p>
          <p>
            <b>Printed</b> {day.format(printed)}, from the Charge-Air Reference. These numbers open again at
          </p>
          <p class="address">{link}</p>
        </div>
      </div>
      <dl class="to-write">
        {["Run", "By", "Remarks"].map((what) => (
          <div key={what}>
            <dt>{what}</dt>
            <dd />
          </div>
        ))}
      </dl>
    </>
  );
}
