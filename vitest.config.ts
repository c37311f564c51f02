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
          // One for each core of a small machine: pages under test compete with the browser.
          maxWorkers: 2,
          testTimeout: 60_000,
        },
      },
    ],
  },
});
