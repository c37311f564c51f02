import { z } from "astro/zod";

/** A value of a check: null says that there is no such value, a string names a state. Both must match exactly. */
const value = z.union([z.number(), z.string(), z.null()]);
const positive = z.number().positive();

const shape = z
  .strictObject({
    title: z.string().min(1),
    source: z.strictObject({
      key: z.string().min(1),
      where: z.string().min(1),
      standing: z.enum([
        "page read",
        "open reference read",
        "derived here",
        "from memory",
        "common practice",
      ]),
    }),
    made: z.string().endsWith("."),
    units: z.record(z.string(), z.string().min(1)),
    tolerance: z.strictObject({
      relative: positive,
      per_output: z.record(z.string(), positive).optional(),
      absolute: z.record(z.string(), positive).optional(),
      why: z.string().endsWith("."),
    }),
    faithful: z
      .strictObject({
        outputs: z.array(z.string()).min(1),
        relative: positive,
        why: z.string().endsWith("."),
      })
      .optional(),
    left_out: z.string().endsWith(".").optional(),
    relation: z.string().optional(),
    subject: z.string().optional(),
    cases: z
      .array(
        z.strictObject({
          in: z.record(z.string(), z.union([z.number(), z.string()])),
          out: z.record(z.string(), value).refine((out) => Object.keys(out).length > 0, "names no output"),
          note: z.string().optional(),
        }),
      )
      .min(1),
  })
  .superRefine((check, issues) => {
    const complain = (message: string) => issues.addIssue({ code: "custom", message });
    if ((check.relation === undefined) === (check.subject === undefined))
      complain(
        "needs either `relation` (a relation's id) or `subject` (a file of src/checks/subjects/), one of the two",
      );
    const outputs = new Set(check.cases.flatMap((one) => Object.keys(one.out)));
    for (const name of new Set([...check.cases.flatMap((one) => Object.keys(one.in)), ...outputs]))
      if (!(name in check.units)) complain(`the cases use \`${name}\`, which \`units\` does not explain`);
    const judged = { ...check.tolerance.per_output, ...check.tolerance.absolute };
    for (const name of [...Object.keys(judged), ...(check.faithful?.outputs ?? [])])
      if (!outputs.has(name)) complain(`a tolerance names \`${name}\`, which is no output of any case`);
    if (check.relation !== undefined && [...outputs].some((name) => name !== "value"))
      complain("the check of one relation has one output, called `value`");
  });

export type Value = z.infer<typeof value>;
/** One file of content/checks/: numbers from outside the project, and how close ours have to come. */
export type Check = Readonly<z.infer<typeof shape>> & { readonly id: string };
export type Case = Check["cases"][number];

/** Takes the text of a check file apart; `id` is the file's name. Throws an Error that says what the file lacks. */
export function readCheck(id: string, file: unknown): Check {
  const read = shape.safeParse(file);
  if (!read.success) throw new Error(`content/checks/${id}.json: ${z.prettifyError(read.error)}`);
  return { id, ...read.data };
}
