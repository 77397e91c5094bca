// The demo's recipes as text.
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

const folder = join(import.meta.dirname, "../../content/recipes");

export const demoTexts: readonly { readonly file: string; readonly text: string }[] = readdirSync(folder)
  .filter((file) => file.endsWith(".md"))
  .sort()
  .map((file) => ({ file, text: readFileSync(join(folder, file), "utf8") }));
