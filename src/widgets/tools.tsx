import { Copied, useCopying } from "./copying.tsx";
import type { Shown } from "./numbers-as-text.ts";

/** What can be done with a calculator as a whole. Needs JavaScript, so it is not in the page without it. */
export function Tools({ shown, onReset }: { shown: Shown; onReset: () => void }) {
  const { copied, copy } = useCopying(shown.entries);
  const copyLink = () => copy("Link", async () => (await import("./page-link.ts")).pageLink());
  const copyNumbers = () =>
    copy("Numbers", async () => {
      const { pageLink } = await import("./page-link.ts");
      return (await import("./numbers-as-text.ts")).numbersAsText(shown, pageLink());
    });
  return (
    <div class="tools needs-js">
      <button type="button" class="btn" onClick={copyLink}>
        Copy link
      </button>
      <button type="button" class="btn quiet" disabled={!shown.outcome} onClick={copyNumbers}>
        Copy numbers
      </button>
      <button type="button" class="btn quiet" onClick={() => print()}>
        Print
      </button>
      <button type="button" class="btn quiet" onClick={onReset}>
        Back to the example
      </button>
      <Copied copied={copied} />
    </div>
  );
}
