// What is said of a thing along one axis -> its interval, or the maker's problem with both numbers.
import { problem } from "../../problems/problem.ts";
import { exact, type Length, minus, times } from "../../units/length.ts";
import type { Axis } from "../../units/side.ts";
import { Fault } from "./fault.ts";
import { type Interval, type Said, settle, sizeOf } from "./interval.ts";
import { axisWords } from "./target.ts";
import type { Thing } from "./thing.ts";

/** The interval that is said, or the problem that too little, too much or too tight is said. */
export function settleThing(thing: Thing, axis: Axis, said: readonly Said[]): Interval {
  const result = settle(said);
  const name = thing.line.name.text;
  const along = axisWords[axis];
  switch (result.kind) {
    case "settled":
      return result.interval;
    case "clash": {
      const { a, b, due } = result;
      const facts = { name, along, what: b.what, first: a.words, second: b.words, due, said: b.value };
      const other = b.at.line === a.at.line && b.at.column === a.at.column ? said.find((s) => s.at !== b.at) : a;
      throw new Fault(problem("said-twice", b.at, facts, other?.at));
    }
    case "open": {
      const has = result.said.map((s) => s.words);
      const isLength = thing.body.kind !== "panel" && thing.body.lay.length === axis;
      const isThrough = thing.body.kind !== "panel" && thing.body.lay.thickness === axis;
      throw new Fault(problem("not-settled", thing.line.at, { name, along, axis, has, isLength, isThrough }));
    }
    case "turned": {
      const [a, b] = result.said;
      const size = sizeOf(result.interval);
      const facts = { name, along, size, first: a?.words ?? "", second: b?.words ?? "" };
      throw new Fault(problem("no-room", (b ?? a ?? thing.line).at, facts, a?.at));
    }
  }
}

/** The problem of a row that needs more than its room. */
export function rowTooTight(thing: Thing, room: Interval, count: number, size: Length): Fault {
  const need = times(size, exact(count));
  const facts = { name: thing.line.name.text, count, size, need, room: sizeOf(room) };
  const spread = thing.line.clauses.find((c) => c.kind.startsWith("spread"));
  return new Fault(problem("row-too-tight", spread?.at ?? thing.line.at, { ...facts, short: minus(need, facts.room) }));
}
