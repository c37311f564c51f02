import { lazy, Suspense } from "preact/compat";
import type { Calculator } from "../calculators/engine/calculator.ts";
import { CalculatorSheet } from "./calculator-sheet.tsx";

type Module = { readonly default: Calculator };

const load = import.meta.glob<Module>("../calculators/*.ts");
// The build needs every definition at once; the browser takes only the one it is asked for.
const eager = import.meta.env.SSR ? import.meta.glob<Module>("../calculators/*.ts", { eager: true }) : {};
const seen: Record<string, ReturnType<typeof lazy<typeof CalculatorSheet>>> = {};

function sheetOf(key: string) {
  seen[key] ??= lazy(async () => {
    const calculator = (await load[key]?.())?.default;
    if (!calculator) throw new Error(`No calculator at ${key}.`);
    return { default: () => <CalculatorSheet calculator={calculator} /> };
  }) as ReturnType<typeof lazy<typeof CalculatorSheet>>;
  return seen[key];
}

/** A calculator by its id, so that any page or lesson can hold any calculator. */
export default function CalculatorIsland({ id }: { id: string }) {
  const key = `../calculators/${id}.ts`;
  const calculator = eager[key]?.default;
  if (calculator) return <CalculatorSheet calculator={calculator} />;
  const Sheet = sheetOf(key) as unknown as () => preact.JSX.Element;
  return (
    <Suspense fallback={null}>
      <Sheet />
    </Suspense>
  );
}
