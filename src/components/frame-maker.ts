// Writes the lines for the frame that is chosen, with the address at which this site really stands.
import { atRoot } from "../widgets/at-root.ts";
import { frameSnippet, growingScript } from "../widgets/frame-snippet.ts";

/** Until the page around it hears how high it is. */
const atFirst = 600;

const form = document.querySelector<HTMLFormElement>("[data-frame-maker]");
const text = document.querySelector("[data-frame-text] code");
const growing = document.querySelector("[data-growing] code");
const alone = document.querySelector<HTMLAnchorElement>("[data-frame-alone]");
const copy = document.querySelector("[data-copy-frame]");
const [framed, height] = form?.querySelectorAll("select") ?? [];

if (framed && height && text && alone && copy && growing) {
  const says = copy.parentElement?.querySelector("[role=status]");
  const write = () => {
    const address = atRoot(framed.value);
    const title = framed.selectedOptions[0]?.text ?? "";
    text.textContent = frameSnippet(title, location.origin + address, Number(height.value) || atFirst);
    alone.href = address;
    if (says) says.textContent = "";
  };
  form?.addEventListener("change", write);
  write();
  growing.textContent = growingScript(location.origin + atRoot("/"));
  copy.addEventListener("click", async () => {
    try {
      await navigator.clipboard.writeText(text.textContent ?? "");
      if (says) says.textContent = "Copied.";
    } catch {
      getSelection()?.selectAllChildren(text);
      if (says) says.textContent = "This browser lets no page copy. The lines are marked: copy them by hand.";
    }
  });
}
