/**
 * Keeps the strip of an answer above the keyboard of a phone, and the field in use above the strip. Some browsers make the
 * page shorter for the keyboard, others lay it over the page: there the part that is covered is left free.
 */
export function keepAboveKeyboard(strip: HTMLElement): () => void {
  const root = document.documentElement;
  const seen = window.visualViewport;
  const fit = () => {
    const covered = seen && seen.scale === 1 ? Math.max(0, innerHeight - seen.height - seen.offsetTop) : 0;
    root.style.setProperty("--covered", `${Math.round(covered)}px`);
    root.style.setProperty("--strip", `${strip.offsetHeight}px`);
    const inUse = document.activeElement;
    if (inUse instanceof HTMLInputElement) inUse.closest(".field")?.scrollIntoView({ block: "nearest" });
  };
  const sizes = new ResizeObserver(fit);
  sizes.observe(strip);
  seen?.addEventListener("resize", fit);
  addEventListener("focusin", fit);
  return () => {
    sizes.disconnect();
    seen?.removeEventListener("resize", fit);
    removeEventListener("focusin", fit);
  };
}
