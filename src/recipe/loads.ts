// `6 of 8 lb, on boards, centred` -> what is put on the finished thing; who it is for, and how many are sold as one.
import { nearest } from "../problems/nearest.ts";
import type { Written } from "../problems/place.ts";
import { problem } from "../problems/problem.ts";
import { exact } from "../units/length.ts";
import { parsePounds } from "../units/mass.ts";
import { takeOnly } from "./choices-only.ts";
import { isName } from "./name.ts";
import { type HazardClass, type Load, type SoldAs, type User, usersKnown } from "./recipe.ts";
import { mostMembers, readReference } from "./reference.ts";
import { attempt, type Form, type Gathered, refuse, Scan, split } from "./scan.ts";
import { isSide } from "./sum.ts";

export const loadForm: Form = {
  form: "[N of ]WEIGHT, on X[, centred|at SIDE]",
  means:
    "What is put on it: so many of this weight along these members, all on their middle, or all at one side of them.",
  example: "hives: 2 of 150 lb, on rails",
};
export const soldAsForm: Form = {
  form: "pair|set of N",
  means: "So many of them are one sold thing.",
  example: "set of 4",
};

/** No load weighs more than this, in pounds: what stands on a bench is no building. */
const heaviest = 10_000;
/** No set has more in it than this. */
const largestSet = 99;

/** The load, or undefined with its problems gathered. */
export function readLoad(name: Written, value: Written, into: Gathered): Load | undefined {
  const { parts, only } = takeOnly(split(value, ","), into);
  return attempt(into.problems, () => {
    const [head = value, on, where, more] = parts;
    const { count, pounds } = readWeight(head);
    const at = value.at;
    if (!on) return new Scan(head, loadForm, into).wants("a comma and what it stands on");
    const scan = new Scan(on, loadForm, into);
    scan.must("on");
    if (!isName(scan.peek()) && !["each", "odd", "even"].includes(scan.peek() ?? ""))
      scan.wants("the name of what it stands on");
    const reference = readReference(scan, "the end");
    scan.end();
    if (more) new Scan(more, loadForm, into).wants("nothing more");
    const spot = where && readWhere(new Scan(where, loadForm, into));
    return { name, at, count, pounds, on: reference, ...(spot ? { where: spot } : {}), ...(only ? { only } : {}) };
  });
}

function readWeight(head: Written): Pick<Load, "count" | "pounds"> {
  const many = /^(\d+)\s+of\s+(.*)$/.exec(head.text);
  const pounds = parsePounds(many?.[2] ?? head.text);
  const count = Number(many?.[1] ?? 1);
  if (!pounds || pounds.compare(0) <= 0) return refuse(problem("load-weight", head.at, { found: head.text }));
  if (count < 1 || count > mostMembers)
    refuse(problem("count-out-of-range", head.at, { found: String(count), most: mostMembers }));
  if (pounds.mul(exact(count)).compare(heaviest) > 0)
    refuse(problem("load-too-heavy", head.at, { found: head.text, most: heaviest }));
  return { count, pounds };
}

function readWhere(scan: Scan): Load["where"] {
  if (scan.skip("centred")) {
    scan.end();
    return "centred";
  }
  scan.must("at");
  const side = scan.peek();
  if (!isSide(side) || side === "top" || side === "bottom") return scan.wants("left, right, front or back");
  scan.take();
  scan.end();
  return side;
}

export function readSoldAs(value: Written | undefined, into: Gathered): SoldAs | undefined {
  if (!value) return undefined;
  if (value.text === "pair") return { at: value.at, count: 2, words: "pair" };
  const count = Number(/^set of (\d+)$/.exec(value.text)?.[1] ?? 0);
  if (count >= 2 && count <= largestSet) return { at: value.at, count, words: value.text };
  into.problems.push(problem("sold-as", value.at, { found: value.text, most: largestSet }));
  return undefined;
}

/** Who needs a hazard class of their own to be thought of. */
const classOf: Readonly<Partial<Record<User, HazardClass>>> = { children: "C", animals: "A" };

/** Who or what it is for; children and animals must also be among the hazard classes. */
export function readUsers(
  value: Written | undefined,
  classes: readonly HazardClass[],
  into: Gathered,
): readonly User[] {
  const users: User[] = [];
  for (const part of value ? split(value, ",") : []) {
    const user = usersKnown.find((known) => known === part.text);
    const needs = user && classOf[user];
    if (!user) {
      const facts = { found: part.text, known: usersKnown, nearest: nearUser(part.text) };
      into.problems.push(problem("for-whom", part.at, facts));
    } else if (needs && !classes.includes(needs))
      into.problems.push(problem("for-without-class", part.at, { user, needs }));
    else if (!users.includes(user)) users.push(user);
  }
  return users;
}

const singulars: Readonly<Record<string, User>> = {
  adult: "adults",
  child: "children",
  kids: "children",
  pets: "animals",
};
const nearUser = (word: string): string | undefined => singulars[word.toLowerCase()] ?? nearest(word, usersKnown);
