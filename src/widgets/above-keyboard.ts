/**
 * Keeps the strip of an answer above the keyboard of a phone, and the field in use above the strip. Some browsers make the
 * page shorter for the keyboard, others lay it over the page: there the part that is covered is left free.
 */
export function keepAboveKeyboard(strip: HTMLElement): () => void {
  const sheet = strip.closest<HTMLElement>(".sheet");
  const seen = window.visualViewport;
  const place = () => {
    const covered = seen && seen.scale === 1 ? Math.max(0, innerHeight - seen.height - seen.offsetTop) : 0;
    sheet?.style.setProperty("--covered", `${Math.round(covered)}px`);
    sheet?.style.setProperty("--strip", `${strip.offsetHeight}px`);
  };
  const fit = () => {
    place();
    const inUse = document.activeElement;
    if (!(inUse instanceof HTMLInputElement && sheet?.contains(inUse))) return;
    // A field with a long message may be higher than the room that is left: then what is typed counts.
    inUse.closest(".field")?.scrollIntoView({ block: "nearest" });
    inUse.scrollIntoView({ block: "nearest" });
  };
  // A field grows with its keys and its messages.
  const sizes = new ResizeObserver(fit);
  const watch = () => {
    sizes.disconnect();
    sizes.observe(strip);
    const field = document.activeElement?.closest(".field");
    if (field && sheet?.contains(field)) sizes.observe(field);
  };
  watch();
  seen?.addEventListener("resize", fit);
  seen?.addEventListener("scroll", place);
  addEventListener("focusin", watch);
  return () => {
    sizes.disconnect();
    seen?.removeEventListener("resize", fit);
    seen?.removeEventListener("scroll", place);
    removeEventListener("focusin", watch);
  };
}
