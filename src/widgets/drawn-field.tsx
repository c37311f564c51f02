import { temperatureField } from "../../calc/exchanger/field/temperature-field.ts";
import { DomainError, type SI } from "../../calc/quantity/domain-error.ts";
import type { FieldPicture, Picture } from "../calculators/engine/calculator.ts";
import { withLimit } from "../calculators/engine/evaluate.ts";
import type { State } from "./drawing.ts";
import { layoutOf } from "./layout-of.ts";
import { describeField, FieldDrawing } from "./pictures/FieldDrawing.tsx";
import { shower, temperatureScale } from "./shower.ts";

/** Cells of a bank each way: enough for smooth lines, few enough for a slow phone. */
const cells = 28;

/** Temperatures of air and water inside the core. */
export default function DrawnField(props: { picture: Picture<string, string>; state: State }) {
  const picture = props.picture as FieldPicture<string, string>;
  const { given, values, around } = props.state;
  const read = (id: string | undefined): SI | undefined => {
    const value = id === undefined ? undefined : (values[id] ?? given[id]);
    return typeof value === "number" && Number.isFinite(value) ? value : undefined;
  };
  const [NTU, R, hot, cold] = [picture.NTU, picture.R, picture.hot, picture.cold].map(read);
  const layout = layoutOf(picture.arrangement(given));
  if (NTU === undefined || R === undefined || hot === undefined || cold === undefined) return null;
  if (layout.kind === "shell") return null;
  try {
    const field = temperatureField(layout, NTU, R, cells);
    const [airOut, waterOut] = [read(picture.airOut), read(picture.waterOut)];
    const data = { layout, field, hot, cold, airOut, waterOut };
    const show = shower("temperature", around);
    return (
      <>
        <FieldDrawing {...data} title={picture.title} show={show} scale={temperatureScale(around)} />
        <p class="said">
          {picture.title} {describeField(data, show)}
        </p>
      </>
    );
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    return <p class="said">The field is not drawn. {withLimit(error.message, error.limit, around)}</p>;
  }
}
