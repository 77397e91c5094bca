// What stands under `choices:` -> the choices with their values and what each changes, and the sayings.
import { nearest } from "../problems/nearest.ts";
import type { Written } from "../problems/place.ts";
import { further } from "../problems/place.ts";
import { type Problem, problem } from "../problems/problem.ts";
import { entriesUnder, type Tree, type TreeMap } from "../problems/yaml-tree.ts";
import { readOffered } from "./choices.ts";
import { checkName, isName } from "./name.ts";
import { textsOf } from "./one-line.ts";
import type { Change, Choice, ChoiceValue, Extent, FinishScheme, Saying } from "./recipe.ts";
import { attempt, type Form, type Gathered, refuse, Scan, split } from "./scan.ts";
import { readSum } from "./sum.ts";

export const choiceForm: Form = {
  form: "CHOICE: VALUE, VALUE",
  means: "The buyer chooses one of these; the first is the standard one.",
  example: "lid: with, without",
};
export const changeForms: readonly Form[] = [
  {
    form: "VALUE: SIZE SUM[, SIZE SUM]",
    means: "With this value, these sizes are so; width, depth and height among them.",
    example: "M: width 16, clear 4",
  },
  {
    form: "VALUE: BOARD is BOARD",
    means:
      "With this value, what is cut from the one board is cut from the other; a piece's name will do for its board.",
    example: "pine: 1x8 is 1x8 pine",
  },
  {
    form: "VALUE: as written",
    means: "With this value, the recipe stands as it is written.",
    example: "S: as written",
  },
];
export const sayingForm: Form = {
  form: "CHOICE: at most N letters, as TEXT",
  means: "Words of the buyer's own, no longer than this; the text is the standard.",
  example: "saying: at most 24 letters, as Fresh eggs",
};

type Choices = {
  readonly choices: readonly Choice[];
  readonly sayings: readonly Saying[];
  readonly offered: readonly Written[];
};

/** No choice has more values than this. */
const mostValues = 40;
/** No saying has more letters than this. */
const mostLetters = 200;

export function readChoices(tree: TreeMap, schemes: readonly FinishScheme[], into: Gathered): Choices {
  const choices: Choice[] = [];
  const sayings: Saying[] = [];
  let offered: readonly Written[] | undefined;
  for (const { key, value } of entriesUnder(tree, "choices")) {
    if (value.kind === "text" && key.text === "finish") {
      offered = readOffered(value, schemes, into);
      choices.push(finishChoice(key, offered));
      continue;
    }
    const bad = checkName(key);
    if (bad) into.problems.push(bad);
    if (value.kind === "text" && /^at most(\s|$)/.test(value.text)) {
      const saying = attempt(into.problems, () => readSaying(key, value));
      if (saying) sayings.push(saying);
    } else choices.push({ name: key, at: key.at, values: readValues(key, value, into) });
  }
  if (offered) return { choices, sayings, offered };
  const all = readOffered(undefined, schemes, into);
  const written: Written = { text: "finish", at: all[0]?.at ?? tree.at };
  return { choices: all.length > 0 ? [...choices, finishChoice(written, all)] : choices, sayings, offered: all };
}

const finishChoice = (name: Written, offered: readonly Written[]): Choice => ({
  name,
  at: name.at,
  values: offered.map((each) => ({ name: each, changes: [] })),
});

function readValues(choice: Written, value: Tree, into: Gathered): readonly ChoiceValue[] {
  if (value.kind === "list") return [];
  const written =
    value.kind === "map"
      ? textsOf(value.entries).map(({ key, value: text }) => ({ name: key, changes: readChanges(text, into) }))
      : value.text.trim() === ""
        ? []
        : split(value, ",").map((name) => ({ name, changes: [] }));
  const values: ChoiceValue[] = [];
  for (const each of written) {
    const fault = valueFault(each.name, values, choice, value);
    if (fault) into.problems.push(fault);
    else values.push(each);
  }
  const facts = { choice: choice.text, count: values.length, only: values[0]?.name.text, most: mostValues };
  if (written.length === values.length && (values.length < 2 || values.length > mostValues))
    into.problems.push(problem("choice-count", choice.at, facts));
  return values;
}

function valueFault(name: Written, before: readonly ChoiceValue[], choice: Written, value: Tree): Problem | undefined {
  if (name.text === "")
    return problem("empty-clause", name.at, { whole: value.kind === "text" ? value.text : choice.text });
  if (!/^[A-Za-z0-9][A-Za-z0-9-]*$/.test(name.text)) {
    const instead = name.text.replace(/[^A-Za-z0-9]+/g, "-").replace(/^-+|-+$/g, "");
    return problem("choice-value-name", name.at, { found: name.text, instead: instead === "" ? undefined : instead });
  }
  const twin = before.find((other) => other.name.text === name.text);
  return twin && problem("offered-twice", name.at, { found: name.text }, twin.name.at);
}

function readChanges(value: Written, into: Gathered): readonly Change[] {
  if (value.text.trim() === "as written") return [];
  return split(value, ",").flatMap((part) => attempt(into.problems, () => readChange(part, value, into)) ?? []);
}

function readChange(part: Written, whole: Written, into: Gathered): Change {
  if (part.text === "") refuse(problem("empty-clause", part.at, { whole: whole.text }));
  const is = /\sis\s/.exec(part.text);
  if (is) {
    const after = is.index + is[0].length;
    const rest = part.text.slice(after);
    const from = { text: part.text.slice(0, is.index).trim(), at: part.at };
    const to = { text: rest.trim(), at: further(part.at, after + rest.length - rest.trimStart().length) };
    return { kind: "board", at: part.at, text: part.text, from, to };
  }
  const scan = new Scan(part, changeForms[0] as Form, into);
  if (!isSizeWord(scan.peek())) scan.wants("the name of a size, or a board and what it is");
  const name = scan.take();
  const at = scan.here;
  const to: Extent = scan.skip("fit") ? { kind: "fit", at } : readSum(scan);
  scan.end();
  return { kind: "size", at: part.at, text: part.text, name, to };
}

const isSizeWord = (word: string | undefined): boolean =>
  word !== undefined && (isName(word) || ["width", "depth", "height"].includes(word));

function readSaying(name: Written, value: Written): Saying {
  const read = /^at most\s+(\S+)\s+letters?\b\s*(?:,\s*as(?:\s+(.*))?)?(.*)$/.exec(value.text);
  const most = Number(read?.[1] ?? "");
  if (!read || !Number.isInteger(most) || most < 1 || most > mostLetters || (read[3] ?? "") !== "")
    refuse(problem("saying-letters", value.at, { found: value.text, most: mostLetters }));
  const standard = (read?.[2] ?? "").trim();
  if (standard === "") refuse(problem("saying-without-standard", value.at, { name: name.text, most }));
  if ([...standard].length > most)
    refuse(problem("saying-too-long", value.at, { standard, letters: [...standard].length, most }));
  return { name, at: name.at, most, standard };
}

/** Names of choices for a problem, and the one most likely meant. */
export const nearChoice = (found: string, choices: readonly Choice[]) => {
  const known = choices.map((choice) => choice.name.text).filter((name) => name !== "finish");
  return { found, known, nearest: nearest(found, known) };
};
