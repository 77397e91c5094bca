// A line of a panel, of `stand:` or of `fittings:` -> how many of what, and where.
import type { Place, Written } from "../problems/place.ts";
import { type Problem, problem } from "../problems/problem.ts";
import { takeOnly } from "./choices-only.ts";
import { isClause, readClause } from "./clause.ts";
import { readOwnPiece } from "./own-piece.ts";
import type { Clause, Line } from "./recipe.ts";
import { mostMembers } from "./reference.ts";
import { type Gathered, split, wordsOf } from "./scan.ts";

/**
 * The line with every clause that can be read; a line whose first part can't be read is about nothing (`what` is ""). `inside` is
 * the panel or assembly that it stands in.
 */
export function readLine(name: Written, value: Written, into: Gathered, inside?: Written): Line {
  const { parts, only } = takeOnly(split(value, ","), into);
  const { head, rest } = headFirst(value, parts, into.problems);
  const clauses: Clause[] = [];
  for (const part of rest) {
    if (part.text === "") into.problems.push(problem("empty-clause", part.at, { whole: value.text }));
    else {
      const clause = readClause(part, into);
      const first = clause && clauses.find((other) => saysTheSame(other, clause));
      if (clause && first)
        into.problems.push(problem("clause-twice", clause.at, { found: clause.text, first: first.text }, first.at));
      else if (clause) clauses.push(clause);
    }
  }
  const follows = clauses.some((clause) => clause.kind === "gaps at most");
  const { count, what: said } = readHead(head, into.problems);
  const own = /^of(\s|$)/.test(said.text);
  const what = own ? (readOwnPiece(inside ? [inside, name] : [name], said, into) ?? { text: "", at: said.at }) : said;
  return {
    at: value.at,
    text: value.text,
    name,
    count: count ?? (follows ? "follows" : 1),
    what,
    clauses,
    ...(only ? { only } : {}),
  };
}

/** The part that says what the line is made of; where it does not stand first it is told and found. */
function headFirst(
  value: Written,
  parts: readonly Written[],
  problems: Problem[],
): { head: Written; rest: readonly Written[] } {
  const [first = value, ...others] = parts;
  if (!isClause(first)) return { head: first, rest: others };
  const head = others.find((part) => /^\d+\s/.test(part.text) && !isClause(part));
  problems.push(problem("clause-first", first.at, { found: first.text, head: head?.text }));
  return { head: head ?? { text: "", at: first.at }, rest: parts.filter((part) => part !== head) };
}

/** Two clauses that settle the same thing; clauses about different sides or directions may stand together. */
function saysTheSame(a: Clause, b: Clause): boolean {
  return topic(a) === topic(b);
}

/** A board may lean two ways at once: sideways, and forward or back. */
function leansAlong(toward: (Clause & { kind: "leaning" })["toward"]): string {
  if (toward === "inward" || toward === "outward") return "pair";
  return toward === "left" || toward === "right" ? "x" : "y";
}

function topic(clause: Clause): string {
  if (clause.kind.startsWith("spread")) return "spread";
  if ("side" in clause) return `${clause.kind} ${clause.side}`;
  if (clause.kind === "leaning") return `leaning ${leansAlong(clause.toward)}`;
  if (clause.kind === "gap" || clause.kind === "centred") return `${clause.kind} ${clause.axis ?? ""}`;
  return clause.kind;
}

const numberWords = ["one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"];

function readHead(head: Written, problems: Problem[]): { count?: number; what: Written } {
  const nothing = { text: "", at: head.at };
  const [first, second] = wordsOf(head);
  if (!first) {
    if (problems.at(-1)?.code !== "clause-first")
      problems.push(problem("line-of-nothing", head.at, { found: head.text }));
    return { what: nothing };
  }
  const spelt = numberWords.indexOf(first.text.toLowerCase());
  if (spelt >= 0 && second) {
    const instead = `${spelt + 1} ${restFrom(head, second.at)}`;
    problems.push(problem("count-in-words", first.at, { found: first.text, instead }));
    return { what: { text: restFrom(head, second.at), at: second.at } };
  }
  if (!/^\d+$/.test(first.text)) {
    return { what: head };
  }
  if (!second) {
    problems.push(problem("line-of-nothing", head.at, { found: head.text }));
    return { what: nothing };
  }
  const count = Number(first.text);
  const what = { text: restFrom(head, second.at), at: second.at };
  if (count >= 1 && count <= mostMembers) return { count, what };
  problems.push(problem("count-out-of-range", first.at, { found: first.text, most: mostMembers }));
  return { what };
}

const restFrom = (whole: Written, at: Place): string => whole.text.slice(at.column - whole.at.column);
