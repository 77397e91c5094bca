// The demo's whole site, built once for all tests of a run: the first that asks builds it, the others wait.
import { existsSync, mkdirSync, mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { buildInto, root } from "./demo.ts";

/** Set by the run's own setup; a file that runs without it builds for itself. */
const shared = process.env.SHOPLEAF_TEST_RUN ?? mkdtempSync(join(tmpdir(), "shopleaf-site-"));

/** Where it stands; no test may change it. Errors: a build that failed, and one that never ends. */
export function demoSite(): string {
  const folder = join(shared, "demo-site");
  const site = join(folder, "_site");
  const [ready, failed] = [join(folder, "ready"), join(folder, "failed")];
  try {
    mkdirSync(folder);
  } catch {
    for (let waited = 0; !existsSync(ready); waited++) {
      if (existsSync(failed)) throw new Error("the demo's site could not be built");
      if (waited > 1200) throw new Error("the demo's site was not built in four minutes");
      Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 200);
    }
    return site;
  }
  try {
    buildInto(site, join(root, "content"));
  } catch (error) {
    writeFileSync(failed, "");
    throw error;
  }
  writeFileSync(ready, "");
  return site;
}
