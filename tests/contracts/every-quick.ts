import { parse } from "yaml";
import type { View } from "../../src/calculators/engine/view.ts";
import { calculator } from "../../src/components/calculators.ts";
import { viewOf } from "../../src/components/quick-view.ts";

const files = import.meta.glob<string>("/content/quick/*.mdx", {
  eager: true,
  query: "?raw",
  import: "default",
});

/** Every quick answer: its calculator, the view, and what its page says beside them. */
export const quickAnswers = Object.entries(files).map(([path, text]) => {
  const id = path.replace(/^.*\/|\.mdx$/g, "");
  const [, front = "", body = ""] = /^---\n([\s\S]*?)\n---\n([\s\S]*)$/.exec(text) ?? [];
  const declared = { choices: {}, same: {}, given: {}, labels: {}, options: {}, ...parse(front) };
  const view: View = viewOf(id, declared);
  return {
    id,
    calculator: calculator(declared.calculator),
    view,
    symbol: String(declared.symbol),
    order: Number(declared.order),
    synonyms: (declared.synonyms ?? []) as readonly string[],
    body,
  };
});
