// Shows or hides everything that an example's page folds away, with one button or by the address #answers.
const folded = [...document.querySelectorAll<HTMLDetailsElement>("main details")];
const button = document.querySelector<HTMLButtonElement>("[data-answers]");

const areShown = () => folded.every((details) => details.open);

const show = (open: boolean) => {
  for (const details of folded) details.open = open;
};

const showIfAddressed = () => {
  if (location.hash === "#answers") show(true);
};

for (const details of folded)
  details.addEventListener("toggle", () => {
    if (button) button.textContent = areShown() ? "Hide all answers" : "Show all answers";
  });
button?.addEventListener("click", () => show(!areShown()));
addEventListener("hashchange", showIfAddressed);
showIfAddressed();

// A script without imports is a module only by this.
export {};
