// Shows an example alone, large, and step by step: what is given, each step of the working, the answer.
const root = document.documentElement;
const sheet = document.querySelector<HTMLElement>(".sheet.example");
const bar = document.querySelector<HTMLElement>("[data-projector]");
const status = bar?.querySelector("[role=status]");
const opener = document.querySelector<HTMLElement>("[data-project]");
const folded = [...(sheet?.querySelectorAll("details") ?? [])];
const parts = [...(sheet?.querySelectorAll<HTMLElement>(".given, .step, .found") ?? [])];
const last = parts.length - 1;

/** Where the view is among the parts; none while it is closed. */
let now: number | undefined;
/** What the view changes, as it was before. */
let before: { readonly focus: HTMLElement | null; readonly open: readonly boolean[] } | undefined;

const nameOf = (at: number) => (at === 0 ? "Given" : at === last ? "Answer" : `Step ${at} of ${last - 1}`);

function show(at: number): void {
  now = Math.min(Math.max(at, 0), last);
  for (const [i, part] of parts.entries())
    part.dataset["shown"] = i < now ? "past" : i === now ? "present" : "later";
  if (status) status.textContent = nameOf(now);
  if (now === 0) scrollTo({ top: 0 });
  else {
    // The part ends over the bar, so that what led to it stays in sight; one too tall for that begins at the top.
    const { top, bottom } = parts[now]?.getBoundingClientRect() ?? { top: 0, bottom: 0 };
    scrollBy({ top: Math.min(top, bottom - room()) });
  }
}

/** The height that the bar leaves. */
const room = () => bar?.getBoundingClientRect().top ?? innerHeight;

/** Goes on, but not past what of the present part is still out of sight. */
function turn(by: 1 | -1): void {
  const box = parts[now ?? 0]?.getBoundingClientRect();
  const isHidden = box && (by > 0 ? box.bottom > room() + 2 : box.top < -2);
  if (isHidden) scrollBy({ top: by * 0.8 * room() });
  else if (parts[(now ?? 0) + by]) show((now ?? 0) + by);
}

function enter(): void {
  if (now !== undefined || !sheet || !bar) return;
  const focus = document.activeElement instanceof HTMLElement ? document.activeElement : null;
  before = {
    focus: focus === document.body ? opener : focus,
    open: folded.map(({ open }) => open),
  };
  for (const details of folded) details.open = true;
  root.classList.add("projected");
  bar.hidden = false;
  sheet.tabIndex = -1;
  sheet.focus({ preventScroll: true });
  history.replaceState(history.state, "", "#projector");
  show(0);
}

function leave(): void {
  if (now === undefined || !sheet || !bar) return;
  now = undefined;
  for (const part of parts) delete part.dataset["shown"];
  for (const [i, details] of folded.entries()) details.open = before?.open[i] ?? false;
  root.classList.remove("projected");
  bar.hidden = true;
  sheet.removeAttribute("tabindex");
  if (location.hash === "#projector") history.replaceState(history.state, "", location.pathname);
  before?.focus?.focus();
}

const followAddress = () => (location.hash === "#projector" ? enter() : leave());

const keys: Readonly<Record<string, () => void>> = {
  ArrowRight: () => turn(1),
  ArrowDown: () => turn(1),
  PageDown: () => turn(1),
  " ": () => turn(1),
  ArrowLeft: () => turn(-1),
  ArrowUp: () => turn(-1),
  PageUp: () => turn(-1),
  Home: () => show(0),
  End: () => show(last),
  Escape: leave,
};

addEventListener("keydown", (event) => {
  if (document.querySelector("dialog[open]")) return;
  if (event.altKey && !event.ctrlKey && !event.metaKey && event.code === "KeyP") {
    event.preventDefault();
    if (now === undefined) enter();
    else leave();
    return;
  }
  if (now === undefined || event.altKey || event.ctrlKey || event.metaKey) return;
  const isOnControl = event.target instanceof Element && event.target.closest("button, a") !== null;
  const act = keys[event.key];
  if (!act || (event.key === " " && isOnControl)) return;
  event.preventDefault();
  act();
});

bar?.addEventListener("click", (event) => {
  const button = event.target instanceof Element ? event.target.closest<HTMLElement>("[data-turn]") : null;
  if (button?.dataset["turn"] === "next") turn(1);
  if (button?.dataset["turn"] === "back") turn(-1);
  if (button?.dataset["turn"] === "leave") leave();
});
opener?.addEventListener("click", enter);
addEventListener("hashchange", followAddress);
followAddress();

// A script without imports is a module only by this.
export {};
