import { calculator } from "../../src/components/calculators.ts";
import { type DeclaredView, viewOf } from "../../src/components/quick-view.ts";
import { contentFiles } from "./page.ts";

const files = import.meta.glob<string>("/content/quick/*.mdx", {
  eager: true,
  query: "?raw",
  import: "default",
});

interface Declared extends DeclaredView {
  readonly symbol: string;
  readonly order: number;
  readonly synonyms: readonly string[];
}

const unsaid = { choices: {}, same: {}, given: {}, labels: {}, options: {} };

/** Every quick answer: its calculator, the view, and what its page says beside them. */
export const quickAnswers = contentFiles(files).map(({ id, matter, page }) => {
  // The schema of src/content.config.ts, which the build applies, is what makes it one.
  const declared = { ...unsaid, ...matter } as unknown as Declared;
  const { symbol, order, synonyms } = declared;
  return {
    id,
    calculator: calculator(declared.calculator),
    view: viewOf(id, declared),
    symbol,
    order,
    synonyms,
    page,
  };
});
