import { useEffect, useState } from "preact/hooks";

/** What was copied, or has to be copied by hand; without a text it could not be put together. */
interface Copy {
  readonly what: string;
  readonly text: string | null;
  readonly isDone: boolean;
}

/** Copies a text that is still to be put together, and says by its name what became of it. */
export type CopyText = (what: string, textOf: () => Promise<string>) => Promise<void>;

/** Copies texts; what it says of the last one ends with the state that the text was of. */
export function useCopying(state: unknown) {
  const [copied, setCopied] = useState<Copy | null>(null);
  useEffect(() => setCopied(null), [state]);
  const copy: CopyText = async (what, textOf) => {
    const text = await textOf().catch(() => null);
    if (text === null) {
      setCopied({ what, text, isDone: false });
      return;
    }
    try {
      await navigator.clipboard.writeText(text);
      setCopied({ what, text, isDone: true });
    } catch {
      // A page without leave to the clipboard shows the text to be copied by hand.
      setCopied({ what, text, isDone: false });
    }
  };
  return { copied, copy };
}

/** Says what became of a copy; `isSpoken` says it to a screen reader alone, where a button shows it. */
export function Copied({ copied, isSpoken = false }: { copied: Copy | null; isSpoken?: boolean }) {
  return (
    <>
      <p class={isSpoken ? "hidden" : "msg"} role="status">
        {copied?.isDone && `${copied.what} copied.`}
        {copied?.text === null &&
          `${copied.what} not copied: a part of it could not be fetched. Try again once there is a connection.`}
      </p>
      {copied && !copied.isDone && copied.text !== null && (
        <label class="copy-by-hand">
          {copied.what}, to be copied by hand
          <textarea readOnly rows={4} value={copied.text} onFocus={(event) => event.currentTarget.select()} />
        </label>
      )}
    </>
  );
}
