// One line's clauses -> what they say along one axis: near side, far side, middle. Nothing is worked out until it is asked for.
import type { Reference, Sum } from "../../recipe/recipe.ts";
import { compareLengths, type Length, minus, plus, zero } from "../../units/length.ts";
import { type Axis, axisOf, isFar } from "../../units/side.ts";
import { lapped, room } from "./apart.ts";
import { type Interval, middleOf, type Said } from "./interval.ts";
import { apartAxis, axisNamed } from "./lay.ts";
import { resolve } from "./meant.ts";
import type { Places } from "./places.ts";
import { endsOnSlants, slantedEnds } from "./slanted-ends.ts";
import { axisWords, type One, type Reading } from "./target.ts";
import { clauseOf, type Space, type Thing } from "./thing.ts";

/** Something said, its value still to be worked out. */
export type Saying = Omit<Said, "value"> & { readonly value: () => Length };

export const workedOut = (sayings: readonly Saying[]): Said[] => sayings.map((s) => ({ ...s, value: s.value() }));

/** How many of near side, far side, middle and size are said. */
export const sorts = (said: readonly { readonly what: Said["what"] }[]): number =>
  new Set(said.map((s) => s.what)).size;

/** What the line says, or what goes without saying where it says nothing. */
export function saidOrUsual(places: Places, one: One, axis: Axis): Saying[] {
  const { thing } = one;
  const said = clauseSays(places, one, axis);
  if (said.length > 0) return said;
  const at = thing.line.at;
  const usual = (what: Said["what"], value: () => Length, words: string): Saying => ({ what, value, words, at });
  if (thing.space.kind === "panel") {
    // A panel's boards lie with their good faces level.
    return axis === "y" ? [usual("lo", () => zero, "good faces level")] : [];
  }
  const body = thing.body;
  if (body.kind !== "panel" || body.turn.z.axis !== "z") return [];
  if (axis === "z") return [usual("lo", () => zero, "it stands on the floor")];
  if (axis !== body.turn.x.axis || body.panel.depth || clauseOf(thing.line, "centred")) return [];
  const words = `it fills the box ${axisWords[axis]}`;
  // Where the pieces are to decide the size, a panel stands on the middle and takes what it needs.
  if (places.followsPieces(thing.space, axis)) return [usual("mid", () => zero, words)];
  return [
    usual("lo", () => places.near(thing.space, axis), words),
    usual("hi", () => places.far(thing.space, axis), words),
  ];
}

/** What the line's clauses say along one axis; sizes and free centring are added by the callers. */
export function clauseSays(places: Places, one: One, axis: Axis): Saying[] {
  const { thing, set } = one;
  const { line, space } = thing;
  const reading: Reading = { space, axis, set };
  const said: Saying[] = [];
  const boxOf = (of: Reference): Interval => places.box(resolve(places, of, space, set), space, axis);
  const amount = (sum: Sum | undefined): Length => (sum ? places.amount(sum, reading) : zero);
  for (const clause of line.clauses) {
    const say = (what: Said["what"], value: () => Length) =>
      said.push({ what, value, words: clause.text, at: clause.at });
    const both = (interval: () => Interval) => {
      say("lo", () => interval().lo);
      say("hi", () => interval().hi);
    };
    switch (clause.kind) {
      case "from to":
      case "spread": {
        const ends =
          clause.kind === "from to"
            ? endsAxis(thing, axisNamed(clause.from, space) ?? axisNamed(clause.to, space))
            : thing.rowAxis;
        if (axis === ends) both(() => inOrder(places.length(clause.from, reading), places.length(clause.to, reading)));
        break;
      }
      case "between":
        if (axis !== endsAxis(thing, apartAxis(space, clause.a, clause.b))) break;
        both(() =>
          endsOnSlants(thing) ? slantedEnds(places, one, axis).interval : lapped(places, one, clause.a, clause.b, axis),
        );
        break;
      case "mitred":
        if (axis === endsAxis(thing, undefined)) both(() => slantedEnds(places, one, axis).interval);
        break;
      case "centred":
        if (clause.axis === axis) say("mid", () => middleOf(centredIn(places, clause.on, space, set, axis)));
        break;
      case "side at":
        if (axisOf[clause.side] === axis)
          say(isFar(clause.side) ? "hi" : "lo", () => places.length(clause.line, reading));
        break;
      case "in from":
        if (axisOf[clause.side] !== axis) break;
        if (isFar(clause.side)) say("hi", () => minus(places.far(space, axis), amount(clause.distance)));
        else say("lo", () => plus(places.near(space, axis), amount(clause.distance)));
        break;
      case "touching":
        if (axisOf[clause.side] !== axis) break;
        if (isFar(clause.side)) say("lo", () => plus(boxOf(clause.of).hi, amount(clause.off)));
        else say("hi", () => minus(boxOf(clause.of).lo, amount(clause.off)));
        break;
      case "level with": {
        if (axisOf[clause.side] !== axis) break;
        const by = () => minus(amount(clause.out), amount(clause.in));
        if (isFar(clause.side)) say("hi", () => plus(boxOf(clause.of).hi, by()));
        else say("lo", () => minus(boxOf(clause.of).lo, by()));
        break;
      }
      case "spread between":
        if (axis === thing.rowAxis) both(() => room(places, one, clause.a, clause.b, axis));
        break;
      default:
        break;
    }
  }
  return said;
}

const inOrder = (a: Length, b: Length): Interval => (compareLengths(a, b) <= 0 ? { lo: a, hi: b } : { lo: b, hi: a });

/** The axis that a line's ends run along: its boards' length, or across a panel unless another is named. */
export function endsAxis(thing: Thing, named: Axis | undefined): Axis {
  return thing.body.kind === "panel" ? (named ?? thing.body.turn.x.axis) : thing.body.lay.length;
}

/** Whether a line that says nothing along this axis lies on the middle there. */
const floats = (thing: Thing, axis: Axis): boolean => {
  const centred = clauseOf(thing.line, "centred");
  if (centred) return centred.axis === undefined && isFree(thing, axis);
  return clauseOf(thing.line, "meeting") !== undefined && thing.rowAxis === axis;
};

/** Whether a line lies on the middle of its space along this axis for want of anything else said. */
export function floatsInSpace(places: Places, thing: Thing, axis: Axis): boolean {
  const one: One = { thing, index: 0, set: 0, k: 0 };
  if (clauseOf(thing.line, "centred")?.on) return false;
  return (
    (floats(thing, axis) && clauseSays(places, one, axis).length === 0) ||
    saidOrUsual(places, one, axis).some((s) => s.what === "mid")
  );
}

/** Adds the middle that a `centred` without a direction (or a pair that meets) gives this axis, where nothing else settles it. */
export function withCentre(places: Places, { thing, set }: One, axis: Axis, said: readonly Saying[]): Saying[] {
  const clause = clauseOf(thing.line, "centred") ?? clauseOf(thing.line, "meeting");
  if (!clause || !floats(thing, axis) || said.some((s) => s.what !== "size")) return [...said];
  const on = clause.kind === "centred" ? clause.on : undefined;
  const value = () => middleOf(centredIn(places, on, thing.space, set, axis));
  return [...said, { what: "mid", value, words: clause.text, at: clause.at }];
}

/** What something is centred in: another thing, or its space; where the pieces decide the size, the middle is at 0. */
function centredIn(places: Places, on: Reference | undefined, space: Space, set: number, axis: Axis): Interval {
  if (on) return places.box(resolve(places, on, space, set), space, axis);
  if (places.followsPieces(space, axis)) return { lo: zero, hi: zero };
  return { lo: places.near(space, axis), hi: places.far(space, axis) };
}

/** Whether `centred` without a direction may settle this axis: a level one, or in a panel one across its face. */
function isFree(thing: Thing, axis: Axis): boolean {
  return thing.space.kind === "panel" ? axis !== "y" : axis !== "z";
}
