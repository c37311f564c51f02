import type { ComponentType } from "preact";
import { useEffect, useReducer, useRef, useState } from "preact/hooks";
import type { Calculator } from "../calculators/engine/calculator.ts";
import type { Running } from "./use-calculator.ts";

export interface PanelProps {
  calculator: Calculator;
  running: Running;
}

type Panel = ComponentType<PanelProps>;

/** How each part of a calculator that stands folded is fetched. */
const parts = {
  solve: () => import("./solve-panel.tsx"),
  sweep: () => import("./sweep-panel.tsx"),
  uncertainty: () => import("./uncertainty/uncertainty-panel.tsx"),
} satisfies Record<string, () => Promise<{ readonly default: Panel }>>;

type Part = keyof typeof parts;

/** The panels at hand: what is drawn at build, and what was fetched so far in the browser. */
export const panels: Partial<Record<Part, Panel>> = {};

/** Brings a panel to hand. */
export async function fetchPanel(part: Part): Promise<void> {
  panels[part] ??= (await parts[part]()).default;
}

interface Props extends PanelProps {
  part: Part;
  summary: string;
  class: string;
  /** Something that stands here already asks for it: it opens by itself. */
  isWanted: boolean;
}

/**
 * A part of a calculator that is folded until somebody opens it, and fetched then.
 *
 * A panel that the build had at hand stands in the page and works as a figure without scripts; it is left alone until the
 * live one arrives. Any other is for scripts only, as is its fold.
 */
export function LaterFold({ part, summary, class: look, isWanted, calculator, running }: Props) {
  const [isOpen, setOpen] = useState(false);
  const [isLost, setLost] = useState(false);
  const [, arrived] = useReducer((count: number) => count + 1, 0);
  const fold = useRef<HTMLDetailsElement>(null);
  useEffect(() => {
    // Whoever was faster than the scripts has opened it already.
    if (isWanted || fold.current?.open) setOpen(true);
  }, [isWanted]);
  useEffect(() => {
    if (isOpen)
      fetchPanel(part).then(
        () => arrived(undefined),
        () => setLost(true),
      );
  }, [isOpen, part]);
  const Panel = panels[part];
  return (
    <details
      ref={fold}
      class={`folded later ${look}${Panel ? "" : " needs-js"}`}
      open={isOpen}
      onToggle={(event) => setOpen(event.currentTarget.open)}
    >
      <summary>{summary}</summary>
      {Panel ? (
        <div key="live">
          <Panel calculator={calculator} running={running} />
        </div>
      ) : (
        <div key="drawn" dangerouslySetInnerHTML={{ __html: "" }} />
      )}
      {isLost && <p class="msg">This part could not be fetched. Load the page again.</p>}
    </details>
  );
}
