/** What pages tell the worker: to take over from the older one, or to keep files that they had without it. */
export interface ToWorker {
  readonly take?: true;
  /** Addresses. */
  readonly keep?: readonly string[];
}

export const isToWorker = (data: unknown): data is ToWorker => typeof data === "object" && data !== null;

export const tell = (worker: ServiceWorker, message: ToWorker): void => worker.postMessage(message);
