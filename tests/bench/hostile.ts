import { readdirSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { type Kind, kinds } from "../../calc/quantity/kinds.ts";
import { readQuantity } from "../../calc/quantity/read.ts";
import type { Calculator } from "../../src/calculators/engine/calculator.ts";
import { readLink } from "../../src/calculators/engine/read-link.ts";
import { anyText } from "../contracts/any-text.ts";
import { figure, heading } from "./report.ts";

const count = 20_000;
const context = { barometer: 99e3, massOfFlow: (V_dot: number) => V_dot };

interface Slowest {
  readonly milliseconds: number;
  readonly text: string;
}

/** The text that takes longest to read; the best of three readings each, so that a pause of the machine is no find. */
function slowestOf(texts: readonly string[], read: (text: string) => unknown): Slowest {
  for (const text of texts.slice(0, 500)) read(text);
  let slowest: Slowest = { milliseconds: 0, text: "" };
  for (const text of texts) {
    let milliseconds = Number.POSITIVE_INFINITY;
    for (let i = 0; i < 3 && milliseconds > slowest.milliseconds; i++) {
      const start = performance.now();
      read(text);
      milliseconds = Math.min(milliseconds, performance.now() - start);
    }
    if (milliseconds > slowest.milliseconds) slowest = { milliseconds, text };
  }
  return slowest;
}

/** A text as it is printed: its beginning, its length, and nothing that a terminal would obey. */
const printed = (text: string): string =>
  `${JSON.stringify(text.slice(0, 60)).replace(/[^ -~]/gu, (c) => `\\u{${c.codePointAt(0)?.toString(16)}}`)}, ${text.length} characters`;

const found = (name: string, { milliseconds, text }: Slowest): void =>
  figure(name, milliseconds, "ms", printed(text));

async function calculators(): Promise<readonly Calculator[]> {
  const folder = join(import.meta.dirname, "../../src/calculators");
  const files = readdirSync(folder).filter((file) => file.endsWith(".ts"));
  return Promise.all(files.map(async (file) => (await import(join(folder, file))).default));
}

/** Prints the slowest of many random and hostile texts, typed into a field and given as a link. */
export async function benchHostile(): Promise<void> {
  const texts = fc.sample(anyText, { numRuns: count, seed: 20 });
  heading(`the slowest of ${count} random and hostile texts, and of links made of them`);
  for (const kind of ["pressure", "massFlow", "ratio"] satisfies Kind[])
    found(
      `typed as ${kinds[kind].name}`,
      slowestOf(texts, (text) => readQuantity(text, kind, kinds[kind].metric, context)),
    );
  const all = await calculators();
  const keys = all.flatMap(({ id, inputs }) => Object.keys(inputs).map((input) => `${id}.${input}`));
  const links = texts.map((text, i) =>
    Array.from(
      { length: 1 + (i % 40) },
      (_, j) => `${keys[(i * 7 + j) % keys.length]}=${texts[(i + j) % count]};1`,
    )
      .concat(text)
      .join("&")
      .slice(0, 64_000),
  );
  found(
    "opened as a link",
    slowestOf(links, (link) => readLink(link, all)),
  );
}
