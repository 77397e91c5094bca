// The demo's yard, as the cases use it.
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { readYard } from "../../src/yard/read-yard.ts";
import type { Yard } from "../../src/yard/yard.ts";

const folder = join(import.meta.dirname, "../../content/yard");

export function demoYard(): Yard {
  const files = readdirSync(folder).map((file) => ({ file, text: readFileSync(join(folder, file), "utf8") }));
  const { yard, problems } = readYard(files);
  if (!yard) throw new Error(`the demo's yard has a problem: ${problems[0]?.says}`);
  return yard;
}
