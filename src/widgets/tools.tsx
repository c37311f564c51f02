import type { ComponentChildren } from "preact";
import { useState } from "preact/hooks";
import { Copied, useCopying } from "./copying.tsx";
import type { CopyMenu } from "./exports/copy-menu.tsx";
import type { Shown } from "./exports/rows.ts";

/** What can be done with a calculator as a whole. Needs JavaScript, so it is not in the page without it. */
export function Tools({
  shown,
  onReset,
  children,
}: {
  shown: Shown;
  onReset: () => void;
  children?: ComponentChildren;
}) {
  const { copied, copy } = useCopying(shown.entries);
  const [Menu, setMenu] = useState<typeof CopyMenu | null>(null);
  const copyLink = () => copy("Link", async () => (await import("./page-link.ts")).pageLink());
  const fetchMenu = async () => {
    const menu = await import("./exports/copy-menu.tsx");
    setMenu(() => menu.CopyMenu);
  };
  const printSheet = async ({ currentTarget }: { currentTarget: Element }) => {
    const sheet = currentTarget.closest<HTMLElement>("[data-calculator]");
    const part = await import("./paper/print-sheet.tsx").catch(() => null);
    // Without that part the page is printed as it stands.
    if (sheet && part) await part.printSheet(shown, sheet);
    else print();
  };
  return (
    <div class="tools needs-js">
      <button type="button" class="btn" onClick={copyLink}>
        Copy link
      </button>
      <details class="exports" onToggle={fetchMenu}>
        <summary class="btn quiet">Copy or save more</summary>
        {Menu && <Menu shown={shown} copy={copy} />}
      </details>
      {children}
      <button type="button" class="btn quiet on-page" onClick={printSheet}>
        Print
      </button>
      <button type="button" class="btn quiet" onClick={onReset}>
        Back to the example
      </button>
      <Copied copied={copied} />
    </div>
  );
}
