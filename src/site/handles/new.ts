// `shopleaf new`: a title and a kind of construction -> a recipe in the content folder that builds, to go on from.
import { existsSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { inReadingOrder } from "../../problems/problem.ts";
import { checkTitle } from "../../recipe/head.ts";
import { slug } from "../../units/slug.ts";
import { isFolder, startOf } from "../content-files.ts";
import { tellProblems } from "../print-json.ts";
import { startKinds, startText } from "../starts.ts";
import { WrongCall } from "../wrong-call.ts";
import { parseOptions } from "./options.ts";

/** What one starts from without saying. */
const usual = "slatted-box";

/** Prints the path of the new file. A file that is there is never written over. */
export async function newRecipe(words: readonly string[]): Promise<number> {
  const { given, alone } = parseOptions(words, ["kind", "content"]);
  const [title, ...more] = alone;
  if (title === undefined || title.trim() === "" || more.length > 0)
    throw new WrongCall('new takes one name, in quotes where it has blanks: new "Garden bench"');
  const kinds = startKinds();
  const kind = given.kind ?? usual;
  if (!kinds.includes(kind)) throw new WrongCall(`there is no kind "${kind}", only ${kinds.join(", ")}`);
  const content = given.content ?? "content";
  const folder = join(content, "recipes");
  if (!isFolder(folder)) throw new WrongCall(`there is no folder ${startOf(folder).file}; --content says where it is`);
  const path = join(folder, `${slug(title)}.md`);
  const at = startOf(path);
  const faults = checkTitle({ text: title, at });
  if (faults.length > 0) return tellProblems(inReadingOrder(faults));
  if (existsSync(path)) throw new WrongCall(`${at.file} is there already, and stays as it is`);
  writeFileSync(path, startText(kind, title), { flag: "wx" });
  process.stdout.write(`${at.file}\n`);
  return 0;
}
