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

export function Copied({ copied }: { copied: Copy | null }) {
  return (
    <>
      <p class="msg" role="status">
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
