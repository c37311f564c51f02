import type { FunctionComponent } from "preact";
import { useEffect, useRef, useState } from "preact/hooks";
import type { Calculator } from "../calculators/engine/calculator.ts";
import type { Running } from "./use-calculator.ts";

export interface Props {
  calculator: Calculator;
  running: Running;
}

/** The calculator asked backwards, folded under its results. What answers is fetched when it opens, or when a result is held. */
export function Backwards(props: Props) {
  const { want } = props.running.entries;
  const fold = useRef<HTMLDetailsElement>(null);
  const [isOpen, setOpen] = useState(false);
  const [Panel, setPanel] = useState<FunctionComponent<Props> | null>(null);
  const [isLost, setLost] = useState(false);
  const isWanted = want !== undefined;
  useEffect(() => {
    // It may have been opened before it woke.
    if (isWanted || fold.current?.open) setOpen(true);
  }, [isWanted]);
  useEffect(() => {
    if (!isOpen) return;
    import("./solve-panel.tsx").then(
      ({ SolvePanel }) => setPanel(() => SolvePanel),
      () => setLost(true),
    );
  }, [isOpen]);
  return (
    <details
      ref={fold}
      class={`folded back needs-js${want?.isHeld ? " is-held" : ""}`}
      open={isOpen}
      onToggle={(event) => setOpen(event.currentTarget.open)}
    >
      <summary>Work backwards{want?.isHeld && ", held"}</summary>
      {Panel && <Panel {...props} />}
      {isLost && <p class="msg">This part could not be fetched. Load the page again.</p>}
    </details>
  );
}
