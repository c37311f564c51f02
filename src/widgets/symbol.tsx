import { useLayoutEffect, useRef } from "preact/hooks";

/**
 * How a symbol becomes HTML. Typesetting runs at build only, so the build puts its typesetter here; in the browser the
 * HTML is already on the page.
 */
export const typesetter: { symbol: (key: string) => string } = { symbol: () => "" };

/** A symbol of calc/symbols.ts. */
export function Sym({ of }: { of: string }) {
  const at = useRef<HTMLSpanElement>(null);
  useLayoutEffect(() => {
    const here = at.current;
    if (here?.innerHTML !== "") return;
    const twin = document.querySelector(`[data-symbol="${CSS.escape(of)}"]:not(:empty)`);
    if (twin) here.innerHTML = twin.innerHTML;
  }, [of]);
  return (
    // biome-ignore lint/security/noDangerouslySetInnerHtml: our own typesetting of our own symbol table
    <span ref={at} class="sym" data-symbol={of} dangerouslySetInnerHTML={{ __html: typesetter.symbol(of) }} />
  );
}
