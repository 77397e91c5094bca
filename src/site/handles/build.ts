// `shopleaf build`: a content folder -> the site, or all its problems and the last good site as it was.
import { resolve } from "node:path";
import { readContent } from "../content-files.ts";
import { guideProblems } from "../guide-examples.ts";
import { makeSite } from "../make-site.tsx";
import { readPhotos } from "../photos/read-photos.ts";
import { tellProblems } from "../print-json.ts";
import { type Part, parts, shelves } from "../site.ts";
import { checkOut, swapIn } from "../swap.ts";
import { recipesIn, workContent } from "../work-content.ts";
import { writeSite } from "../write-site.ts";
import { WrongCall } from "../wrong-call.ts";
import { expectNone, parseOptions } from "./options.ts";

export async function build(words: readonly string[]): Promise<number> {
  const { given, alone } = parseOptions(words, ["content", "out", "only"]);
  expectNone(alone);
  const folder = given.content ?? "content";
  const out = given.out ?? "_site";
  const only = given.only === undefined ? parts : parseShelves(given.only);
  checkOut(out, folder);

  const { content, problems } = readContent(folder);
  const worked = workContent(content);
  const { photos, problems: photoProblems } = await readPhotos(folder, recipesIn(content, worked));
  const all = [...problems, ...worked.problems, ...photoProblems, ...guideProblems(content.guide, worked)];
  if (all.length > 0) {
    tellProblems(all);
    process.stderr.write(`Nothing was built; ${out} is as it was.\n`);
    return 1;
  }
  await swapIn(out, (next) => writeSite(makeSite(worked, content.guide, only, photos), folder, next));
  process.stdout.write(`${resolve(out, "index.html")}\n`);
  return 0;
}

function parseShelves(text: string): readonly Part[] {
  const asked = text.split(",").map((name) => name.trim());
  const unknown = asked.find((name) => !shelves.some((shelf) => shelf === name));
  if (unknown !== undefined) throw new WrongCall(`--only knows the shelves ${shelves.join(" and ")}, not "${unknown}"`);
  return shelves.filter((shelf) => asked.includes(shelf));
}
