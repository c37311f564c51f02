import { availableParallelism } from "node:os";
import { defineConfig } from "vitest/config";

const jsx = { oxc: { jsx: { runtime: "automatic", importSource: "preact" } } } as const;

export default defineConfig({
  test: {
    projects: [
      {
        ...jsx,
        test: {
          name: "unit",
          environment: "node",
          include: ["tests/{calc,src,contracts}/**/*.test.{ts,tsx}"],
          // Left to itself it keeps one core of the machine free, which on two is half of them.
          maxWorkers: availableParallelism(),
          // Only what hangs is stopped: a property test takes as long as the machine is busy.
          testTimeout: 60_000,
        },
      },
      {
        ...jsx,
        test: {
          name: "site",
          environment: "node",
          include: ["tests/site/**/*.test.ts"],
          globalSetup: "tests/site/setup.ts",
          // Pages under test compete with the browser, which takes as much again.
          maxWorkers: Math.max(2, Math.floor(availableParallelism() / 2)),
          testTimeout: 60_000,
          expect: { poll: { timeout: 20_000 } },
        },
      },
    ],
  },
});
