import { useEffect, useState } from "preact/hooks";

/** What was copied, or has to be copied by hand. */
interface Copy {
  readonly what: string;
  readonly text: string;
  readonly isDone: boolean;
}

/** Copies texts; what it says of the last one ends with the state that the text was of. */
export function useCopying(state: unknown) {
  const [copied, setCopied] = useState<Copy | null>(null);
  useEffect(() => setCopied(null), [state]);
  const copy = async (what: string, textOf: () => Promise<string>) => {
    const text = await textOf();
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
      </p>
      {copied && !copied.isDone && (
        <label class="copy-by-hand">
          {copied.what}, to be copied by hand
          <textarea readOnly rows={4} value={copied.text} onFocus={(event) => event.currentTarget.select()} />
        </label>
      )}
    </>
  );
}
