import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";

export const kinds = ["lesson", "calculator", "relation", "example"] as const;
type Kind = (typeof kinds)[number];

/** What is wrong with a request, in a sentence for the person who made it. */
export class Refusal extends Error {}

/** A file to be written: where, below the project, and from which template. */
interface Planned {
  readonly path: string;
  readonly template: string;
}

const templates = join(import.meta.dirname, "templates");
const isKind = (word: string): word is Kind => (kinds as readonly string[]).includes(word);
const isId = (word: string): boolean => /^[a-z][a-z0-9]*(-[a-z0-9]+)*$/.test(word);

const camelCase = (id: string) => id.replace(/-(.)/g, (_, letter: string) => letter.toUpperCase());
const sentenceCase = (id: string) => (id.charAt(0).toUpperCase() + id.slice(1)).replaceAll("-", " ");

/** The template of a calculator is about an engine; its relation goes there unless a topic is named. */
const topicOfTemplate = "engine";

const filesFor = (kind: Kind, topic: string, id: string): readonly Planned[] => {
  const relation = [
    { path: `calc/${topic}/${id}.ts`, template: "relation.ts" },
    { path: `content/checks/${id}.json`, template: "check.json" },
  ];
  switch (kind) {
    case "relation":
      return relation;
    case "calculator":
      return [
        { path: `src/calculators/${id}.ts`, template: "calculator.ts" },
        { path: `content/numbers/${id}.mdx`, template: "number.mdx" },
        ...relation,
      ];
    case "lesson":
      return [{ path: `content/lessons/${id}.mdx`, template: "lesson.mdx" }];
    case "example":
      return [{ path: `content/examples/${id}.mdx`, template: "example.mdx" }];
  }
};

/** Takes `engine/air-surplus` apart. Relations need the topic, calculators may name one, the others have none. */
function readName(kind: Kind, name: string, root: string): { topic: string; id: string } {
  const [id = "", topic, ...rest] = name.split("/").reverse();
  if (rest.length > 0 || !isId(id)) {
    throw new Refusal(
      `“${name}” is no id. Accepted: small letters and digits in words parted by hyphens, such as air-surplus.`,
    );
  }
  if (kind === "lesson" || kind === "example") {
    if (topic !== undefined)
      throw new Refusal(`The id of ${kind === "lesson" ? "a lesson" : "an example"} has no topic: ${id}.`);
    return { topic: "", id };
  }
  const topics = readdirSync(join(root, "calc"), { withFileTypes: true })
    .filter((entry) => entry.isDirectory() && !["quantity", "relation", "numerics"].includes(entry.name))
    .map((entry) => entry.name);
  if (topic === undefined && kind === "relation") {
    throw new Refusal(
      `A relation needs its topic: npm run new relation engine/${id}. Topics: ${topics.join(", ")}.`,
    );
  }
  if (topic !== undefined && !topics.includes(topic)) {
    throw new Refusal(
      `There is no topic “${topic}” in calc/. Topics: ${topics.join(", ")}. Make the folder first for a new one.`,
    );
  }
  return { topic: topic ?? topicOfTemplate, id };
}

/**
 * Writes the files of a new lesson, calculator, relation or example below `root`, and gives back their paths. Throws a
 * `Refusal` on wrong use, and where one of the files is there already; then nothing is written.
 */
export function scaffold(args: readonly string[], root: string): readonly string[] {
  const [kind = "", name = "", ...rest] = args;
  if (!isKind(kind)) {
    throw new Refusal(
      kind === "" ? "Say what is new, and its id." : `“${kind}” is none of ${kinds.join(", ")}.`,
    );
  }
  if (name === "") throw new Refusal(`The new ${kind} needs an id.`);
  if (rest.length > 0) throw new Refusal(`There is one id too many: ${rest.join(" ")}.`);
  const { topic, id } = readName(kind, name, root);
  const planned = filesFor(kind, topic, id);
  const taken = planned.filter(({ path }) => existsSync(join(root, path)));
  if (taken.length > 0) {
    throw new Refusal(
      `${taken.map(({ path }) => path).join(" and ")} is there already. Nothing was written.`,
    );
  }
  const values: Readonly<Record<string, string>> = {
    id,
    topic,
    name: camelCase(id),
    title: sentenceCase(id),
  };
  for (const { path, template } of planned) {
    const text = readFileSync(join(templates, `${template}.template`), "utf8");
    const filled = text.replace(/\{\{(\w+)\}\}/g, (_, key: string) => values[key] ?? "");
    mkdirSync(dirname(join(root, path)), { recursive: true });
    writeFileSync(join(root, path), filled);
  }
  return planned.map(({ path }) => path);
}
