// How the tests run: whole builds and browsers need more time than sums.
import { defineConfig } from "vitest/config";
import { CountReporter } from "./tests/count-reporter.ts";

export default defineConfig({
  test: {
    include: ["tests/**/*.test.{ts,tsx}"],
    globalSetup: "tests/temporary-folder.ts",
    testTimeout: 60_000,
    hookTimeout: 120_000,
    reporters: [["default", { summary: false }], new CountReporter()],
  },
});
