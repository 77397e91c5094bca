// Recipes to start from, one for each kind of construction: a file in the folder beside this one is a kind.
import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

const folder = fileURLToPath(new URL("starts/", import.meta.url));

/** Names of the kinds, sorted. */
export const startKinds = (): readonly string[] =>
  readdirSync(folder)
    .filter((name) => name.endsWith(".md"))
    .map((name) => name.slice(0, -".md".length))
    .sort();

/** The recipe of a kind under a title of its own. */
export const startText = (kind: string, title: string): string =>
  readFileSync(`${folder}${kind}.md`, "utf8").replace(/^title: .*$/m, () => `title: ${quoted(title)}`);

/** In quotes where YAML would read something else than the title as it stands. */
function quoted(title: string): string {
  const plain = /^[\p{L}\p{N}][^:#]*$/u.test(title) && title === title.trim();
  return plain ? title : JSON.stringify(title);
}
