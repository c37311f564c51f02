// The little of a service worker's own interface that is used here: TypeScript has it in a library that contradicts the one of pages.

export interface LastingEvent extends Event {
  waitUntil(done: Promise<unknown>): void;
}

export interface AskedFor extends LastingEvent {
  readonly request: Request;
  /** The page that asks, or nothing where a new one is asked for. */
  readonly clientId: string;
  /** The page or worker that will be made from the answer. */
  readonly resultingClientId: string;
  respondWith(answer: Promise<Response>): void;
}

export interface Told extends LastingEvent {
  readonly data: unknown;
}

export interface WorkerScope {
  readonly registration: ServiceWorkerRegistration;
  skipWaiting(): Promise<void>;
  addEventListener(type: "install" | "activate", hear: (event: LastingEvent) => void): void;
  addEventListener(type: "fetch", hear: (event: AskedFor) => void): void;
  addEventListener(type: "message", hear: (event: Told) => void): void;
}
