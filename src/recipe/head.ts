// The short fields of the front-matter -> title and slug, format, draft, hazard classes.
import { nearest } from "../problems/nearest.ts";
import { further, type Written } from "../problems/place.ts";
import { type Problem, problem } from "../problems/problem.ts";
import { isDay } from "../units/day.ts";
import { slug } from "../units/slug.ts";
import { formatMigrations, knownFormat, type Migration, migrationPath } from "./format-migrations.ts";
import { type HazardClass, hazardClasses } from "./recipe.ts";
import { wordsOf } from "./scan.ts";

const longestTitle = 80;

export function checkTitle(title: Written): Problem[] {
  if (slug(title.text) === "") return [problem("title-without-letters", title.at, { found: title.text })];
  if (title.text.length > longestTitle)
    return [problem("title-too-long", title.at, { letters: title.text.length, most: longestTitle })];
  return [];
}

/** A newer format is refused; of an older one it is told which migrations lead here. */
export function checkFormat(
  format: Written | undefined,
  migrations: readonly Migration[] = formatMigrations,
  known: number = knownFormat,
): Problem[] {
  if (!format || format.text === String(known)) return [];
  const found = /^\d+$/.test(format.text) ? Number(format.text) : undefined;
  const path = found === undefined ? undefined : migrationPath(found, known, migrations);
  if (found === undefined || !path) return [problem("unknown-format", format.at, { found: format.text, known })];
  return [problem("old-format", format.at, { found, known, steps: path.map(({ says }) => says) })];
}

/** Of `draft:` and `plan:`; not there is no. */
export function readYes(written: Written | undefined, problems: Problem[]): boolean {
  if (!written || written.text === "no") return false;
  if (written.text !== "yes") {
    const { text, at } = written;
    const near = /^(true|y|on)$/i.test(text) ? "yes" : /^(false|n|off)$/i.test(text) ? "no" : undefined;
    problems.push(problem("yes-or-no", at, { found: text, nearest: near ?? nearest(text, ["yes", "no"]) }));
  }
  return written.text === "yes";
}

/** Since when it is in the store. */
export function readListed(listed: Written | undefined, problems: Problem[]): { readonly listed?: string } {
  if (!listed) return {};
  if (isDay(listed.text)) return { listed: listed.text };
  const expected = "a day like 2026-10-03";
  problems.push(problem("bad-value", listed.at, { key: "listed", found: listed.text, expected }));
  return {};
}

const isClass = (word: string): word is HazardClass => Object.hasOwn(hazardClasses, word);

export function readClasses(classes: Written | undefined, problems: Problem[]): readonly HazardClass[] {
  const found: HazardClass[] = [];
  for (const word of classes ? wordsOf(classes) : []) {
    const upper = word.text.toUpperCase();
    if (!isClass(word.text)) {
      const joined = word.text.length > 1 && [...word.text].every(isClass);
      const instead = isClass(upper) ? upper : joined ? [...word.text].join(" ") : undefined;
      const known = Object.entries(hazardClasses).map(([letter, means]) => `${letter} (${means})`);
      problems.push(problem("unknown-class", word.at, { found: word.text, known, nearest: instead }));
    } else if (found.includes(word.text)) problems.push(problem("class-twice", word.at, { found: word.text }));
    else found.push(word.text);
  }
  if (classes && found.length === 0 && classes.text.trim() === "")
    problems.push(
      problem("bad-value", further(classes.at, 0), { key: "class", found: "", expected: "letters such as S X" }),
    );
  return found;
}
