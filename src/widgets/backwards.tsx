import type { FunctionComponent } from "preact";
import { useEffect, useLayoutEffect, useState } from "preact/hooks";
import type { Calculator } from "../calculators/engine/calculator.ts";
import type { Running } from "./use-calculator.ts";

export interface Props {
  calculator: Calculator;
  running: Running;
}

/** The calculator asked backwards, folded under its results. What answers is fetched when it opens, or when a result is held. */
export function Backwards(props: Props) {
  const { want } = props.running.entries;
  // Only scripts can answer, so that it is not in the page without them.
  const [isAwake, setAwake] = useState(false);
  useLayoutEffect(() => setAwake(true), []);
  const [isOpen, setOpen] = useState(false);
  const [Panel, setPanel] = useState<FunctionComponent<Props> | null>(null);
  const [isLost, setLost] = useState(false);
  const isWanted = want !== undefined;
  useEffect(() => {
    if (isWanted) setOpen(true);
  }, [isWanted]);
  useEffect(() => {
    if (!isOpen) return;
    import("./solve-panel.tsx").then(
      ({ SolvePanel }) => setPanel(() => SolvePanel),
      () => setLost(true),
    );
  }, [isOpen]);
  if (!isAwake) return null;
  return (
    <details
      class={`folded back${want?.isHeld ? " is-held" : ""}`}
      open={isOpen}
      onToggle={(event) => setOpen(event.currentTarget.open)}
    >
      <summary>Work backwards{want?.isHeld && ", held"}</summary>
      {Panel && <Panel {...props} />}
      {isLost && <p class="msg">This part could not be fetched. Load the page again.</p>}
    </details>
  );
}
