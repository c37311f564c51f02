import { DomainError } from "../../../calc/quantity/domain-error.ts";
import type { Calculator } from "../../calculators/engine/calculator.ts";
import { type AllDrawn, draw, type Job } from "./draw-job.ts";
import type { Answer } from "./draw-worker.ts";

/** What comes of draws that were asked for. `inPage` says that no worker could be had. */
export type Run =
  | { readonly is: "drawn"; readonly drawn: AllDrawn; readonly inPage: boolean }
  | { readonly is: "refused"; readonly says: string }
  | { readonly is: "stopped" };

/** No worker could be had, or it died. */
class NoWorker extends Error {}

/** Milliseconds without a word from a worker after which it counts as dead. */
const PATIENCE = 15_000;
/** Milliseconds of a slice of work in the page, between which it answers to the visitor. */
const SLICE = 12;

async function inWorker(job: Job, made: (count: number) => void, signal: AbortSignal): Promise<Run> {
  let worker: Worker;
  try {
    worker = new Worker(new URL("./draw-worker.ts", import.meta.url), { type: "module" });
  } catch {
    throw new NoWorker();
  }
  if (signal.aborted) return stopped(worker);
  try {
    return await new Promise<Run>((resolve, reject) => {
      const fail = () => reject(new NoWorker());
      let watch = setTimeout(fail, PATIENCE);
      worker.addEventListener("error", (event) => {
        event.preventDefault();
        fail();
      });
      worker.addEventListener("messageerror", fail);
      signal.addEventListener("abort", () => resolve({ is: "stopped" }));
      worker.addEventListener("message", ({ data }: MessageEvent<Answer>) => {
        clearTimeout(watch);
        watch = setTimeout(fail, PATIENCE);
        if ("made" in data) made(data.made);
        else if ("drawn" in data) resolve({ is: "drawn", drawn: data.drawn, inPage: false });
        else if ("refused" in data) resolve({ is: "refused", says: data.refused });
        else fail();
      });
      worker.postMessage(job);
    });
  } finally {
    worker.terminate();
  }
}

function stopped(worker: Worker): Run {
  worker.terminate();
  return { is: "stopped" };
}

async function inPage(
  calculator: Calculator,
  job: Job,
  made: (count: number) => void,
  signal: AbortSignal,
): Promise<Run> {
  const draws = draw(calculator, job);
  try {
    for (;;) {
      const end = performance.now() + SLICE;
      let step = draws.next();
      while (!step.done && performance.now() < end) step = draws.next();
      if (step.done) return { is: "drawn", drawn: step.value, inPage: true };
      made(step.value);
      await new Promise((resolve) => setTimeout(resolve));
      if (signal.aborted) return { is: "stopped" };
    }
  } catch (error) {
    if (error instanceof DomainError) return { is: "refused", says: error.message };
    throw error;
  }
}

/** Makes draws in a worker; where none can be had, in the page, a slice at a time. */
export async function runDraws(
  calculator: Calculator,
  job: Job,
  made: (count: number) => void,
  signal: AbortSignal,
): Promise<Run> {
  try {
    return await inWorker(job, made, signal);
  } catch (error) {
    if (!(error instanceof NoWorker)) throw error;
    return signal.aborted ? { is: "stopped" } : inPage(calculator, job, made, signal);
  }
}
