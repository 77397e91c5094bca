// How the tests run: whole builds and browsers need more time than sums.
import { availableParallelism } from "node:os";
import { defineConfig } from "vitest/config";
import { CountReporter } from "./tests/count-reporter.ts";

export default defineConfig({
  test: {
    include: ["tests/**/*.test.{ts,tsx}"],
    globalSetup: "tests/temporary-folder.ts",
    // Left to itself it keeps one core free, which on two cores is every other.
    maxWorkers: Math.max(2, availableParallelism() - 1),
    testTimeout: 60_000,
    hookTimeout: 300_000,
    reporters: [["default", { summary: false }], new CountReporter()],
  },
});
