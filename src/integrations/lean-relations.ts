import type { Plugin } from "vite";

/** What only typesetting, the pages about sources and the tests read of a relation. */
const ofRelation = new Set([
  "title",
  "sources",
  "accuracy",
  "expression",
  "residual",
  "unknown",
  "tex",
  "name",
  "method",
]);
/** What only the build and the tests read of a calculator: in the browser the model brings the relations that it uses. */
const ofCalculator = new Set(["relations"]);

const makers: Readonly<Record<string, ReadonlySet<string>>> = {
  explicit: ofRelation,
  implicit: ofRelation,
  property: ofRelation,
  numerical: ofRelation,
  defineCalculator: ofCalculator,
};

interface Node {
  readonly type: string;
  readonly start: number;
  readonly end: number;
  readonly [key: string]: unknown;
}

const isNode = (x: unknown): x is Node => typeof x === "object" && x !== null && "type" in x;

function* walk(node: Node): Generator<Node> {
  yield node;
  for (const value of Object.values(node)) {
    for (const child of Array.isArray(value) ? value : [value]) if (isNode(child)) yield* walk(child);
  }
}

/** The spans of code that the browser can do without: properties of what is declared, each with the comma after it. */
export function spansAtBuildOnly(program: Node, code: string): readonly (readonly [number, number])[] {
  const spans: [number, number][] = [];
  for (const call of walk(program)) {
    const callee = call["callee"] as { name?: string } | undefined;
    const declared = (call["arguments"] as Node[] | undefined)?.[0];
    const atBuildOnly = call.type === "CallExpression" ? makers[callee?.name ?? ""] : undefined;
    if (!atBuildOnly || !declared) continue;
    for (const property of (declared["properties"] as Node[] | undefined) ?? []) {
      const key = property["key"] as { name?: string } | undefined;
      if (!atBuildOnly.has(key?.name ?? "")) continue;
      const comma = code.slice(property.end).match(/^\s*,/)?.[0].length ?? 0;
      spans.push([property.start, property.end + comma]);
    }
  }
  return spans;
}

/**
 * Leaves out of the browser's code what relations and calculators carry for the build. A formula is typeset before the page
 * is served, so its expression, its source and its title would only be weight there: about half of every relation. None of
 * these files does anything by being loaded, so what nobody uses of them is left out whole.
 */
export const leanRelations = (): Plugin => ({
  name: "lean-relations",
  enforce: "post",
  applyToEnvironment: (environment) => environment.name === "client",
  transform: {
    filter: { id: /\/(calc|src\/calculators)\/.*\.ts$/ },
    handler(code) {
      const spans = spansAtBuildOnly(this.parse(code) as unknown as Node, code);
      let lean = "";
      let at = 0;
      for (const [start, end] of spans) {
        lean += code.slice(at, start);
        at = end;
      }
      return { code: lean + code.slice(at), map: null, moduleSideEffects: false };
    },
  },
});
