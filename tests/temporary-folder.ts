// One folder for all that the tests write, gone when they are done.
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

export default function setup(): () => void {
  const folder = mkdtempSync(join(tmpdir(), "shopleaf-tests-"));
  process.env.TMPDIR = folder;
  process.env.SHOPLEAF_TEST_RUN = folder;
  return () => rmSync(folder, { recursive: true, force: true });
}
