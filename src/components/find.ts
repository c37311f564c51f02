// Opens the search: by its button, by the form of the home page, by Ctrl+K, and by / outside a field.
const find = async (query = "") => {
  const { openFinder } = await import("./finder.ts");
  await openFinder(query);
};

for (const at of document.querySelectorAll<HTMLElement>("[data-find]")) {
  const isForm = at instanceof HTMLFormElement;
  at.addEventListener(isForm ? "submit" : "click", (event) => {
    event.preventDefault();
    const query = isForm ? at.querySelector("input")?.value : "";
    void find(query);
  });
}

const isTypedInto = (at: EventTarget | null): boolean =>
  at instanceof HTMLElement && at.matches("input, textarea, select, [contenteditable]");

addEventListener("keydown", (event) => {
  if (!document.querySelector("#finder")) return;
  const isControlK = event.key.toLowerCase() === "k" && (event.ctrlKey || event.metaKey) && !event.shiftKey;
  const isSlash =
    event.key === "/" && !event.ctrlKey && !event.metaKey && !event.altKey && !isTypedInto(event.target);
  if (!isControlK && !isSlash) return;
  event.preventDefault();
  void find();
});
