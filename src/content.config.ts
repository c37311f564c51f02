import { defineCollection } from "astro:content";
import { file, glob } from "astro/loaders";
import { z } from "astro/zod";
import { references } from "./integrations/bibliography.ts";

const key = z.string().refine((name) => references.has(name), {
  error: ({ input }) => `calc/sources.bib has no entry "${input}"`,
});

/** A key alone, or with the place in the source and how well it is known. */
const source = z.union([
  key.transform((name) => ({ key: name, where: undefined, standing: undefined })),
  z.strictObject({
    key,
    where: z.string().optional(),
    standing: z
      .enum(["page read", "open reference read", "derived here", "from memory", "common practice"])
      .optional(),
  }),
]);

const synonyms = z.array(z.string()).default([]);

const lessons = defineCollection({
  loader: glob({ base: "./content/lessons", pattern: "*.mdx" }),
  schema: z.strictObject({
    title: z.string(),
    /** Chapter and place in it: "2.3". */
    number: z.string().regex(/^\d+\.\d+$/),
    /** What the reader will be able to do. */
    lead: z.string(),
    minutes: z.int().positive(),
    order: z.number(),
    sources: z.array(source).default([]),
    synonyms,
  }),
});

const numbers = defineCollection({
  loader: glob({ base: "./content/numbers", pattern: "*.mdx" }),
  schema: z.strictObject({
    order: z.number(),
    /** A key of calc/symbols.ts: the symbol of the answer. */
    symbol: z.string().optional(),
    synonyms,
  }),
});

const examples = defineCollection({
  loader: glob({ base: "./content/examples", pattern: "*.mdx" }),
  schema: z.strictObject({
    title: z.string(),
    /** Chapter and place in it: "2.3". No two examples have the same. */
    number: z.string().regex(/^\d+\.\d+$/),
    /** What it asks, in a sentence. */
    asks: z.string().endsWith("?"),
    order: z.number(),
    /** Ids of a calculator, of options by choice, and values as text with a unit by input. */
    calculator: z.string(),
    choices: z.record(z.string(), z.string()),
    given: z.record(z.string(), z.string()),
    barometer: z.string(),
    /** What a lesson shows: ids of inputs, and of the relations whose steps stay. Without it, all. */
    show: z.strictObject({ given: z.array(z.string()), steps: z.array(z.string()) }).optional(),
    /** Id of the result asked for. */
    asked: z.string(),
    /** Ids of results that its own page asks for besides. */
    also: z.array(z.string()).default([]),
    synonyms,
  }),
});

const ids = z.array(z.string());
const words = z.record(z.string(), z.string()).default({});

const quick = defineCollection({
  loader: glob({ base: "./content/quick", pattern: "*.mdx" }),
  schema: z.strictObject({
    title: z.string(),
    /** The question in a person's words. */
    asks: z.string().endsWith("?"),
    order: z.number(),
    /** Its calculator, and of that: options of choices that are not asked, inputs that are, results, the answer first. */
    calculator: z.string(),
    choices: words,
    fields: ids.min(1),
    results: ids.min(1),
    /** Inputs that are not asked and take the value of one that is. */
    same: words,
    /** Other example values than the calculator's: text with a unit by input. */
    given: words,
    /** Other words for inputs, results, and options by choice. */
    labels: words,
    options: z.record(z.string(), z.record(z.string(), z.string())).default({}),
    /** A key of calc/symbols.ts: the symbol of the answer. */
    symbol: z.string(),
    synonyms: z.array(z.string()).min(3),
  }),
});

const chapters = defineCollection({
  loader: file("./content/chapters.yaml"),
  schema: z.strictObject({ id: z.string(), title: z.string() }),
});

const glossary = defineCollection({
  loader: file("./content/glossary.yaml"),
  schema: z.strictObject({
    id: z.string(),
    term: z.string(),
    means: z.string(),
    also: z.array(z.string()).default([]),
  }),
});

const errata = defineCollection({
  loader: file("./content/errata.yaml"),
  schema: z.strictObject({
    id: z.string(),
    /** The address of the page, which starts with a slash. */
    page: z.string().startsWith("/"),
    said: z.string(),
    says: z.string(),
    /** Which results change, and by how much. */
    effect: z.string(),
    /** The version that put it right, and its day. */
    version: z.string().regex(/^\d+\.\d+\.\d+$/),
    date: z.iso.date(),
  }),
});

export const collections = { lessons, numbers, quick, examples, chapters, glossary, errata };
