import { useLayoutEffect, useRef } from "preact/hooks";

/**
 * How a symbol becomes HTML. Typesetting runs at build only, so the build puts its typesetter here; in the browser the
 * HTML is already on the page.
 */
export const typesetter: { symbol: (key: string) => string } = { symbol: () => "" };

/** The HTML of a symbol that the build left on the page: in sight, or in store for what a choice brings in. */
function onPage(key: string): string | undefined {
  const selector = `[data-symbol="${CSS.escape(key)}"]:not(:empty)`;
  const stores = [...document.querySelectorAll<HTMLTemplateElement>("template[data-symbols]")];
  const places: ParentNode[] = [document, ...stores.map((store) => store.content)];
  return places.map((place) => place.querySelector(selector)?.innerHTML).find((html) => html !== undefined);
}

/** A symbol of calc/symbols.ts. */
export function Sym({ of }: { of: string }) {
  const at = useRef<HTMLSpanElement>(null);
  useLayoutEffect(() => {
    const here = at.current;
    if (here?.innerHTML !== "") return;
    here.innerHTML = onPage(of) ?? "";
  }, [of]);
  return (
    <span ref={at} class="sym" data-symbol={of} dangerouslySetInnerHTML={{ __html: typesetter.symbol(of) }} />
  );
}
