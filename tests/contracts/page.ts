import { type MdastNode, mdxToMdast } from "satteri";
import { parse } from "yaml";

/** A page of content/, taken apart as the build takes it apart. */
export const parsePage = (source: string): MdastNode =>
  mdxToMdast(source, { features: { math: true, frontmatter: true } });

/** A file of content/: its name, its front matter, and what is written under that. */
export interface ContentFile {
  readonly id: string;
  readonly matter: Readonly<Record<string, unknown>>;
  readonly page: MdastNode;
}

/** Files of content/ by their paths. Throws where one has no front matter. */
export const contentFiles = (sources: Readonly<Record<string, string>>): readonly ContentFile[] =>
  Object.entries(sources).map(([path, source]) => {
    const page = parsePage(source);
    const [front] = childrenOf(page);
    if (front?.type !== "yaml") throw new Error(`${path} has no front matter.`);
    return { id: path.replace(/^.*\/|\.mdx$/g, ""), matter: parse(front.value), page };
  });

export type Tag = Extract<MdastNode, { type: "mdxJsxFlowElement" | "mdxJsxTextElement" }>;

export const childrenOf = (node: MdastNode): readonly MdastNode[] =>
  "children" in node ? node.children : [];

export const isTag = (node: MdastNode): node is Tag =>
  node.type === "mdxJsxFlowElement" || node.type === "mdxJsxTextElement";

/** A node and all that is in it, in the order of the page. */
export const within = (node: MdastNode): readonly MdastNode[] => [node, ...childrenOf(node).flatMap(within)];

/** The tags of one name in these parts of a page. */
export const tagsIn = (nodes: readonly MdastNode[], name: string): readonly Tag[] =>
  nodes.flatMap(within).filter((node): node is Tag => isTag(node) && node.name === name);

/** An attribute that is plain text. */
export function attributeOf(tag: Tag, name: string): string | undefined {
  const found = tag.attributes.find((one) => one.type === "mdxJsxAttribute" && one.name === name);
  return typeof found?.value === "string" ? found.value : undefined;
}

/** What stands for a computed number where only the words matter. */
export const computed = "number";

/** The words of a node as a reader meets them: a computed number as `numberAs`, code and formulas left out. */
export function textOf(node: MdastNode, numberAs = computed): string {
  if (node.type === "text") return node.value;
  if (isTag(node) && node.name === "Value") return numberAs;
  return childrenOf(node)
    .map((child) => textOf(child, numberAs))
    .join("");
}

/** Attributes that a reader meets as text. */
const spoken = ["asks", "says", "caption"];

/** Each paragraph, heading, and spoken attribute of a page by itself; front matter and tables left out. */
export function textsOf(node: MdastNode, numberAs = computed): readonly string[] {
  const children = childrenOf(node);
  if (node.type === "table") return [];
  // Text on the line of its tag has no paragraph around it.
  if (children.some(({ type }) => type === "text")) return [textOf(node, numberAs)];
  const attributes = isTag(node) ? spoken.flatMap((name) => attributeOf(node, name) ?? []) : [];
  return [...attributes, ...children.flatMap((child) => textsOf(child, numberAs))];
}

/** Words that a reader meets. */
export const wordsOf = (text: string): readonly string[] =>
  text.split(/\s+/).filter((word) => /\p{L}|\d/u.test(word));
