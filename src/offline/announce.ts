import { tell } from "./messages.ts";

const button = (text: string, look: string, act: () => void): HTMLButtonElement => {
  const made = document.createElement("button");
  made.type = "button";
  made.className = look;
  made.textContent = text;
  made.onclick = act;
  return made;
};

/** Says at the foot of the window that a newer edition waits, and lets the visitor take it. */
export function announce(next: ServiceWorker): void {
  document.querySelector(".edition")?.remove();
  const bar = document.createElement("div");
  bar.className = "edition";
  const says = document.createElement("p");
  says.setAttribute("role", "status");
  bar.append(
    says,
    button("Use it now", "btn", () => tell(next, { take: true })),
    button("Later", "btn quiet", () => bar.remove()),
  );
  document.body.append(bar);
  // A screen reader speaks what changes in a place that it knows.
  setTimeout(() => {
    says.textContent = "A newer edition is ready.";
  }, 100);
}
