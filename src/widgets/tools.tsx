import { useEffect, useState } from "preact/hooks";
import type { Shown } from "./numbers-as-text.ts";

/** What can be done with a calculator as a whole. Needs JavaScript, so it is not in the page without it. */
export function Tools({ shown, onReset }: { shown: Shown; onReset: () => void }) {
  const [copied, setCopied] = useState<{ what: string; text: string; isDone: boolean } | null>(null);
  useEffect(() => setCopied(null), [shown.entries]);
  const copy = async (what: "Link" | "Numbers") => {
    const { pageLink } = await import("./page-link.ts");
    const link = pageLink();
    const text = what === "Link" ? link : (await import("./numbers-as-text.ts")).numbersAsText(shown, link);
    try {
      await navigator.clipboard.writeText(text);
      setCopied({ what, text, isDone: true });
    } catch {
      // A page without leave to the clipboard shows the text to be copied by hand.
      setCopied({ what, text, isDone: false });
    }
  };
  return (
    <div class="tools needs-js">
      <button type="button" class="btn" onClick={() => copy("Link")}>
        Copy link
      </button>
      <button type="button" class="btn quiet" disabled={!shown.outcome} onClick={() => copy("Numbers")}>
        Copy numbers
      </button>
      <button type="button" class="btn quiet" onClick={() => print()}>
        Print
      </button>
      <button type="button" class="btn quiet" onClick={onReset}>
        Back to the example
      </button>
      <p class="msg" role="status">
        {copied?.isDone && `${copied.what} copied.`}
      </p>
      {copied && !copied.isDone && (
        <label class="copy-by-hand">
          {copied.what}, to be copied by hand
          <textarea readOnly rows={4} value={copied.text} onFocus={(event) => event.currentTarget.select()} />
        </label>
      )}
    </div>
  );
}
