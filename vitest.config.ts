// How the tests run: whole builds and browsers need more time than sums.
import { defineConfig } from "vitest/config";
import { CountReporter } from "./tests/count-reporter.ts";

export default defineConfig({
  test: {
    include: ["tests/**/*.test.{ts,tsx}"],
    testTimeout: 20_000,
    hookTimeout: 60_000,
    reporters: [["default", { summary: false }], new CountReporter()],
  },
});
