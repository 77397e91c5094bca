// From a line's words to the way its boards lie (length, width, thickness) and the way its row runs.
import { problem } from "../../problems/problem.ts";
import type { Line, Reference, Sum } from "../../recipe/recipe.ts";
import { type Axis, axes, axisOf } from "../../units/side.ts";
import { Fault } from "./fault.ts";
import { clauseOf, clausesOf, type Lay, type Space, type Thing } from "./thing.ts";

const sizeAxes: Readonly<Record<string, Axis>> = { width: "x", depth: "y", height: "z" };

/** The axis of the first side a sum names; in a space that isn't a panel an overall size names its own axis too. */
export function axisNamed(sum: Sum, space: Space): Axis | undefined {
  switch (sum.kind) {
    case "line":
      return sum.side === "middle" ? undefined : axisOf[sum.side];
    case "size":
      // A panel may stand any way, so the width of the whole says nothing about the panel's own directions.
      return space.kind === "panel" ? undefined : sizeAxes[sum.name];
    case "plus":
    case "minus":
      return axisNamed(sum.left, space) ?? axisNamed(sum.right, space);
    case "times":
    case "over":
      return axisNamed(sum.sum, space);
    default:
      return undefined;
  }
}

/** The thing a reference names in this space or inside what stands in it, with the panels it is in, outermost first. */
export function thingNamed(space: Space, reference: Reference): { thing: Thing; within: readonly Thing[] } | undefined {
  const [first, ...rest] = reference.names.map((n) => n.text);
  let thing = first === undefined ? undefined : space.things.get(first);
  const within: Thing[] = [];
  for (const name of rest) {
    if (thing?.body.kind !== "panel") return undefined;
    within.push(thing);
    thing = thing.body.inner[0]?.things.get(name);
  }
  return thing && { thing, within };
}

/** An axis of the innermost space as the outermost one sees it. */
const seenThrough = (within: readonly Thing[], axis: Axis): Axis =>
  within.reduceRight((seen, panel) => (panel.body.kind === "panel" ? panel.body.turn[seen].axis : seen), axis);

/** The axis along which a thing's row runs, as seen from the space the reference was written in. */
function rowSeen(space: Space, reference: Reference): Axis | undefined {
  const found = thingNamed(space, reference);
  return found?.thing.rowAxis && seenThrough(found.within, found.thing.rowAxis);
}

/** The level axis through a wall: a panel, a board of a panel, or a loose board that doesn't lie flat. */
function throughSeen(space: Space, reference: Reference): Axis | undefined {
  const found = thingNamed(space, reference);
  if (!found || space.kind === "panel") return undefined;
  const flat = found.within.findLastIndex((t) => t.body.kind === "panel" && t.body.panel.depth === undefined);
  const wall = found.within[flat] ?? found.thing;
  const outside = flat < 0 ? found.within : found.within.slice(0, flat);
  const axis = seenThrough(outside, wall.body.kind === "panel" ? wall.body.turn.y.axis : wall.body.lay.thickness);
  return axis === "z" ? undefined : axis;
}

/** The axis along which two named things (or the two of one thing) stand apart, as far as words alone tell. */
export function apartAxis(space: Space, a: Reference, b: Reference | undefined): Axis | undefined {
  if (!b) return rowSeen(space, a);
  const rowA = rowSeen(space, a);
  if (a.names.map((n) => n.text).join(" ") === b.names.map((n) => n.text).join(" ")) return rowA;
  // Two of one panel stand apart within it, not through it; which way, only their places tell.
  if (a.names.length > 1 && a.names[0]?.text === b.names[0]?.text) return undefined;
  const through = throughSeen(space, a);
  return through !== undefined && through === throughSeen(space, b) ? through : undefined;
}

function lengthAxis(line: Line, space: Space): Axis {
  const run = clauseOf(line, "run")?.run;
  if (run === "upright") return "z";
  if (run === "left to right") return "x";
  if (run === "front to back") return "y";
  if (run === "level" && space.kind === "panel") return "x";
  const ends = clauseOf(line, "from to");
  const between = clauseOf(line, "between");
  const named =
    (ends && (axisNamed(ends.from, space) ?? axisNamed(ends.to, space))) ??
    (between && apartAxis(space, between.a, between.b));
  if (named) return named;
  // What leans and isn't said to lie stands up.
  if (clauseOf(line, "leaning") && !clauseOf(line, "lie")) return "z";
  throw new Fault(problem("runs-nowhere", line.at, { name: line.name.text, inPanel: space.kind === "panel" }));
}

const third = (a: Axis, b: Axis): Axis => axes.find((axis) => axis !== a && axis !== b) as Axis;

/** The way the boards of a line lie. Throws a Fault where the words leave it open or contradict themselves. */
export function layOf(line: Line, space: Space): Lay {
  const length = lengthAxis(line, space);
  const lie = clauseOf(line, "lie");
  const facing = clauseOf(line, "facing");
  const along = (thickness: Axis): Lay => {
    if (thickness === length) {
      throw new Fault(problem("faces-its-length", (facing ?? lie ?? line).at, { name: line.name.text }));
    }
    return { length, thickness, width: third(length, thickness) };
  };
  if (facing) {
    const lay = along(axisOf[facing.side]);
    if (lie && space.kind !== "panel" && (lie.lie === "flat") !== (lay.thickness === "z")) {
      throw new Fault(problem("faces-two-ways", facing.at, { name: line.name.text, lie: lie.lie, side: facing.side }));
    }
    return lay;
  }
  if (space.kind === "panel") {
    const flat = length === "y" ? "z" : "y";
    return along(lie?.lie === "on edge" ? third(length, flat) : flat);
  }
  if (length === "z") {
    throw new Fault(problem("which-way-wide", line.at, { name: line.name.text }));
  }
  if (!lie) throw new Fault(problem("flat-or-on-edge", line.at, { name: line.name.text }));
  return along(lie.lie === "flat" ? "z" : third(length, "z"));
}

/** The axis a line's members stand side by side along; undefined where no clause spreads them. */
export function rowAxisOf(line: Line, space: Space, lay: Lay): Axis | undefined {
  const spread = clauseOf(line, "spread");
  if (spread) return axisNamed(spread.from, space) ?? axisNamed(spread.to, space) ?? lay.width;
  const between = clauseOf(line, "spread between");
  if (between) return apartAxis(space, between.a, between.b) ?? lay.width;
  const every = clauseOf(line, "every");
  if (every) return axisOf[every.side];
  const gap = clauseOf(line, "gap");
  if (gap) return gap.axis ?? lay.width;
  if (clausesOf(line, "spread over", "gaps at most").length > 0) return lay.width;
  // A mirrored pair of leaning boards stands side by side; a mirrored panel is alone.
  return clauseOf(line, "mirrored") && clauseOf(line, "leaning") ? "x" : undefined;
}
