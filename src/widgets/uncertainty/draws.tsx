import { useEffect, useRef, useState } from "preact/hooks";
import { kinds } from "../../../calc/quantity/kinds.ts";
import { writeNumber, writeQuantity } from "../../../calc/quantity/write.ts";
import type { Propagated } from "../../../calc/uncertainty/propagate.ts";
import { mostLost } from "../../../calc/uncertainty/readings.ts";
import { NORMAL_95, validate } from "../../../calc/uncertainty/validation.ts";
import type { Calculator } from "../../calculators/engine/calculator.ts";
import { barometerContext } from "../../calculators/engine/entry.ts";
import type { Uncertain } from "../../calculators/engine/uncertainty.ts";
import type { Running } from "../use-calculator.ts";
import { readSeed, toldValidation } from "./draws-text.ts";
import { Histogram } from "./histogram.tsx";
import type { Run } from "./run-draws.ts";
import { writeDifference, writeToPlace } from "./written.ts";

const COUNT = 20_000;
const written = writeNumber(COUNT, 5);

const notFetched = "What makes the draws could not be fetched. Nothing was changed; try once more.";

interface Props {
  calculator: Calculator;
  running: Running;
  uncertain: Uncertain;
  /** The id of a result, and what is told of it to first order. */
  result: string;
  of: Propagated | undefined;
}

interface Made {
  readonly of: Uncertain;
  readonly seed: number;
  readonly run: Run;
}

/** Draws from what the fields may be, on request, and whether the first order agrees with them. */
export function Draws({ calculator, running, uncertain, result, of }: Props) {
  const [seedText, setSeedText] = useState("1");
  const [made, setMade] = useState<Made | null>(null);
  const [count, setCount] = useState<number | null>(null);
  const stop = useRef<AbortController | null>(null);
  // What is drawn belongs to a state: another one needs others.
  useEffect(() => () => stop.current?.abort(), [uncertain]);
  const seed = readSeed(seedText);
  const start = async () => {
    if (!("seed" in seed)) return;
    const control = new AbortController();
    stop.current = control;
    setCount(0);
    setMade(null);
    const job = { calculator: calculator.id, uncertain, seed: seed.seed, count: COUNT };
    const run = await import("./run-draws.ts").then(
      ({ runDraws }) => runDraws(calculator, job, setCount, control.signal),
      (): Run => ({ is: "refused", says: notFetched }),
    );
    if (stop.current !== control) return;
    stop.current = null;
    setCount(null);
    setMade({ of: uncertain, seed: seed.seed, run });
  };
  const isRunning = count !== null;
  const id = `${calculator.id}-pm-seed`;
  const says = "says" in seed ? seed.says : "";
  const isCurrent = made?.of === uncertain;
  return (
    <div class="draws">
      <p class="sub">By draws</p>
      <p class="msg">
        Each field is drawn from what it may be, and everything is computed anew: {written} times. It shows
        what one slope cannot, and takes a second or some.
      </p>
      <div class={`field${says ? " is-invalid" : ""}`}>
        <label for={id}>Seed: the same one gives the same draws</label>
        <div class="entry">
          <input
            id={id}
            type="text"
            inputMode="numeric"
            autocomplete="off"
            maxLength={20}
            value={seedText}
            aria-invalid={says !== ""}
            aria-describedby={says ? `${id}-msg` : undefined}
            onInput={(event) => setSeedText(event.currentTarget.value)}
          />
        </div>
        {says && (
          <p class="msg" id={`${id}-msg`}>
            {says}
          </p>
        )}
      </div>
      <div class="tools">
        <button
          type="button"
          class="btn"
          id={`${calculator.id}-pm-draw`}
          onClick={() => (isRunning ? stop.current?.abort() : start())}
        >
          {isRunning ? "Stop" : `Draw ${written} times`}
        </button>
        {isRunning && (
          <progress aria-label="Draws made" max={COUNT} value={count}>
            {count}
          </progress>
        )}
      </div>
      <p class="msg" role="status">
        {toldOf(made, isCurrent, isRunning)}
      </p>
      {made && isCurrent && made.run.is === "drawn" && (
        <DrawnOne {...{ calculator, running, result, of }} drawn={made.run.drawn[result]} />
      )}
    </div>
  );
}

function toldOf(made: Made | null, isCurrent: boolean, isRunning: boolean): string {
  if (isRunning) return "Drawing.";
  if (!made) return "";
  if (!isCurrent) return "Something was changed since the draws. Draw again.";
  const { run, seed } = made;
  if (run.is === "stopped") return "Stopped. Nothing was changed.";
  if (run.is === "refused") return run.says;
  const where = run.inPage
    ? " This browser gave no worker to draw in, so they were made in the page; the numbers are the same."
    : "";
  return `${written} draws were made with seed ${seed}.${where}`;
}

interface DrawnProps extends Pick<Props, "calculator" | "running" | "result" | "of"> {
  drawn: import("./draw-job.ts").Drawn | undefined;
}

function DrawnOne({ calculator, running, result, of, drawn }: DrawnProps) {
  const { around } = running;
  const { label, kind } = calculator.results[result] ?? { label: "", kind: "ratio" as const };
  if (!drawn) return <p class="msg">{mostLost}</p>;
  const unit = kinds[kind][around.system];
  const context = barometerContext(around);
  const place = (x: number) => writeToPlace(x, drawn.u, unit, context);
  const first = of && ([of.y - NORMAL_95 * of.u, of.y + NORMAL_95 * of.u] as const);
  const row = (name: string, mean: number, u: number, low: number, high: number) => (
    <tr>
      <th scope="row">{name}</th>
      <td class="figure">{place(mean)}</td>
      <td class="figure">{writeDifference(u, unit)}</td>
      <td class="figure">
        {place(low)} to {place(high)}
      </td>
    </tr>
  );
  return (
    <>
      {first && (
        <Histogram drawn={drawn} first={first} label={label} write={(x) => writeQuantity(x, unit, context)} />
      )}
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls has to be reached by keyboard */}
      <section class="scroll" tabIndex={0} aria-label={`“${label}” by draws`}>
        <table class="data">
          <caption>“{label}” by draws</caption>
          <thead>
            <tr>
              <th scope="col">How</th>
              <th scope="col">Mean</th>
              <th scope="col">Standard uncertainty u</th>
              <th scope="col">95 % lie in</th>
            </tr>
          </thead>
          <tbody>
            {row("Draws", drawn.mean, drawn.u, drawn.low, drawn.high)}
            {of && first && row("First order", of.y, of.u, first[0], first[1])}
          </tbody>
        </table>
      </section>
      {drawn.lost > 0 && (
        <p class="msg">
          {writeNumber(drawn.lost, 5)} of {written} draws had no result.
        </p>
      )}
      {of && <p class="msg">{toldValidation(validate(of, drawn, COUNT), unit)}</p>}
    </>
  );
}
