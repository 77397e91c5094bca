// Words -> a reference: the names of what is meant, and which members of it.
import { problem } from "../problems/problem.ts";
import { isName } from "./name.ts";
import type { Pick, Reference } from "./recipe.ts";
import { refuse, type Scan } from "./scan.ts";

/** At most this many members stand under one line. */
export const mostMembers = 500;

/** In `from A to B` the word "to" parts two sums, so that no reference in them reads on over it. */
export type Until = "to" | "the end";

/** `each face rails 2 to 5`. Reads as far as the words make a reference and notes it for the check of names. */
export function readReference(scan: Scan, until: Until, measured = false): Reference {
  const first = scan.read;
  const at = scan.here;
  const each = scan.skip("each");
  const half = scan.skip("odd") ? "odd" : scan.skip("even") ? "even" : undefined;
  const names = [];
  while (names.length < 3 && isName(scan.peek())) names.push(scan.take());
  if (names.length === 0) scan.wants("the name of a line, a panel or a piece");
  const pick: Pick = half ? { kind: half } : readPick(scan, until);
  const reference = { at, text: scan.textFrom(first), names, pick, each };
  scan.gathered.references.push({ reference, measured });
  return reference;
}

/** `slats and rails 2 and 3`: one reference, or several. */
export function readReferences(scan: Scan): Reference[] {
  const list = [readReference(scan, "the end")];
  while (scan.skip("and")) list.push(readReference(scan, "the end"));
  return list;
}

function readPick(scan: Scan, until: Until): Pick {
  if (scan.skip("last")) return { kind: "last" };
  if (!isWhole(scan.peek())) return { kind: "all" };
  const ranges = [readRange(scan, until)];
  while (scan.is("and") && isWhole(scan.peek(1))) {
    scan.take();
    ranges.push(readRange(scan, until));
  }
  return { kind: "numbers", ranges };
}

function readRange(scan: Scan, until: Until): { from: number; to: number } {
  const at = scan.here;
  const from = readMemberNumber(scan);
  if (until === "to" || !scan.is("to") || !isWhole(scan.peek(1))) return { from, to: from };
  scan.take();
  const to = readMemberNumber(scan);
  if (to < from) refuse(problem("pick-backwards", at, { from, to }));
  return { from, to };
}

function readMemberNumber(scan: Scan): number {
  const word = scan.take();
  const number = Number(word.text);
  if (number < 1 || number > mostMembers)
    refuse(problem("member-number", word.at, { found: word.text, most: mostMembers }));
  return number;
}

const isWhole = (word: string | undefined): boolean => word !== undefined && /^\d+$/.test(word);
