// Makes draws off the main thread. It is built by itself, with models of its own: those of pages share files with what draws
// pages, which no worker can run. All in one file, since a model is dozens of small ones.
import { DomainError } from "../../../calc/quantity/domain-error.ts";
import type { Calculator } from "../../calculators/engine/calculator.ts";
import { type AllDrawn, draw, type Job } from "./draw-job.ts";

const definitions = import.meta.glob<{ readonly default: Calculator }>("../../calculators/*.ts", {
  eager: true,
});

/** What the worker says: how many draws are made, what they come to, why there are none, or that it cannot work at all. */
export type Answer =
  | { readonly made: number }
  | { readonly drawn: AllDrawn }
  | { readonly refused: string }
  | { readonly failed: true };

/** Milliseconds between two reports. */
const PACE = 60;

function work(job: Job, say: (answer: Answer) => void): void {
  try {
    const definition = definitions[`../../calculators/${job.calculator}.ts`];
    if (!definition) throw new Error(`no calculator ${job.calculator}`);
    const draws = draw(definition.default, job);
    let told = 0;
    let step = draws.next();
    for (; !step.done; step = draws.next()) {
      if (performance.now() - told < PACE) continue;
      told = performance.now();
      say({ made: step.value });
    }
    say({ drawn: step.value });
  } catch (error) {
    say(error instanceof DomainError ? { refused: error.message } : { failed: true });
  }
}

addEventListener("message", ({ data }: MessageEvent<Job>) => work(data, (answer) => postMessage(answer)));
