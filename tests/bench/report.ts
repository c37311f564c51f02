import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { cpus } from "node:os";
import { join } from "node:path";

const file = join(import.meta.dirname, "recorded.json");

/** What a figure counts. More per second is better; of all others less is. */
export type Unit = "per second" | "µs" | "ms" | "s";

interface Recorded {
  readonly date: string;
  readonly machine: string;
  readonly figures: Readonly<Record<string, number>>;
}

const machine = `Node ${process.version}, ${cpus().length} × ${cpus()[0]?.model ?? "processor"}`;

const last: Recorded | null = existsSync(file) ? JSON.parse(readFileSync(file, "utf8")) : null;

const figures: Record<string, number> = {};

/** Changes below this part are the machine's own noise: two runs of the same code differ by as much. */
const NOISE = 0.1;

/** Two figures, with thin groups of thousands. */
const written = (value: number): string =>
  Number(value.toPrecision(value < 100 ? 2 : 3))
    .toLocaleString("en")
    .replaceAll(",", " ");

function change(name: string, value: number, unit: Unit): string {
  const before = last?.figures[name];
  if (before === undefined) return "new";
  const better = unit === "per second" ? value / before : before / value;
  if (Math.abs(better - 1) < NOISE) return "as before";
  return better > 1 ? `${better.toFixed(2)} × as fast` : `${(1 / better).toFixed(2)} × as slow`;
}

/** The machine, and what the last column compares with. */
export function begin(): void {
  console.log(machine);
  console.log(
    last
      ? `Last column: against ${last.date}, ${last.machine}; less than ${100 * NOISE} % is noise.\n`
      : "Nothing is recorded yet to compare with.\n",
  );
}

export const heading = (text: string): void => console.log(`\n${text}`);

/** Prints a figure, its change since the last record, and what else is to be said of it. Its name is the key of the record. */
export function figure(name: string, value: number, unit: Unit, says = ""): void {
  if (name in figures) throw new Error(`Two figures are named “${name}”.`);
  figures[name] = Number(value.toPrecision(4));
  console.log(
    `  ${name.padEnd(52)}${written(value).padStart(12)} ${unit.padEnd(11)}${change(name, value, unit).padEnd(16)}${says}`.trimEnd(),
  );
}

/** Prints what was not measured, and why. */
export const skipped = (name: string, why: string): void => console.log(`  ${name.padEnd(52)}${why}`);

/** Says what is recorded and was not measured now; with `isRecording`, makes this run the record. */
export function end(isRecording: boolean): void {
  const missing = Object.keys(last?.figures ?? {}).filter((name) => !(name in figures));
  if (missing.length > 0) console.log(`\nRecorded and not measured now: ${missing.join(", ")}`);
  if (!isRecording) return;
  const record: Recorded = { date: new Date().toISOString().slice(0, 10), machine, figures };
  writeFileSync(file, `${JSON.stringify(record, null, 2)}\n`);
  console.log("\nRecorded.");
}
