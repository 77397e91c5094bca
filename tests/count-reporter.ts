// A test run -> its last line: "N passed, N failed".
import type { Reporter, TestModule } from "vitest/node";

export class CountReporter implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], outside: readonly unknown[]): void {
    let passed = 0;
    // Errors outside any test count too.
    let failed = outside.length;
    for (const module of modules) {
      // A file that can't be loaded has no tests to count, and is a failure all the same.
      if (module.errors().length > 0) failed += 1;
      for (const test of module.children.allTests()) {
        const { state } = test.result();
        if (state === "passed") passed += 1;
        if (state === "failed") failed += 1;
      }
    }
    // After the other reporters' closing lines.
    process.on("exit", () => process.stdout.write(`${passed} passed, ${failed} failed\n`));
  }
}
