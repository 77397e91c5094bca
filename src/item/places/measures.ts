// `length of rails`, `gap of slats`, `diagonal of face`: what can be asked of a placed thing.
import { problem } from "../../problems/problem.ts";
import type { Sum } from "../../recipe/recipe.ts";
import { compareLengths, exact, inches, type Length } from "../../units/length.ts";
import type { Axis } from "../../units/side.ts";
import { Fault } from "./fault.ts";
import { findTargets } from "./find.ts";
import { type Interval, sizeOf } from "./interval.ts";
import { thingNamed } from "./lay.ts";
import { resolve } from "./meant.ts";
import type { Places } from "./places.ts";
import { sectionNamed } from "./spaces.ts";
import type { Value } from "./sums.ts";
import type { Target } from "./target.ts";
import type { Section, Space } from "./thing.ts";

type Measure = Sum & { kind: "measure" };

/** The value of a measure written in `space`. Throws a Fault where it can't be asked or like things differ. */
export function measureOf(places: Places, sum: Measure, space: Space): Value {
  const reference = sum.of;
  // Only figures may ask for a measure of the whole, and they answer it themselves.
  if (!reference) throw new Error(`a place was asked for by the ${sum.measure} of the whole`);
  const [only, more] = reference.names;
  const inReach = thingNamed(space, reference);
  const section = more || inReach || !only ? undefined : sectionNamed(places.sections, only.text);
  if (section) return sectionMeasure(sum, section);
  const within = space.panel && { panelKind: space.panel.name.text };
  const targets = inReach ? resolve(places, reference, space, 0) : findTargets(places, reference, within);
  if (sum.measure === "count") return { kind: "number", value: exact(targets.length) };
  const values = targets.map((target) => targetMeasure(places, sum, target));
  const first = values[0] as Length;
  const odd = values.find((v) => compareLengths(v, first) !== 0);
  if (odd !== undefined) {
    const facts = { measure: sum.measure, what: reference.text, first, second: odd };
    throw new Fault(problem("measures-differ", sum.at, facts));
  }
  return { kind: "length", value: first };
}

/** Width or thickness of a piece as declared; other measures need a place. */
function sectionMeasure(sum: Measure, section: Section): Value {
  if (sum.measure === "width") return { kind: "length", value: section.width };
  if (sum.measure === "thickness") return { kind: "length", value: section.thickness };
  const facts = { measure: sum.measure, what: section.name, may: ["width", "thickness"] };
  throw new Fault(problem("no-such-measure", sum.at, facts));
}

/** One measure of one member or panel, in inches. */
function targetMeasure(places: Places, sum: Measure, target: Target): Length {
  const { thing, index } = target;
  const body = thing.body;
  const along = (axis: Axis): Length => sizeOf(places.interval(thing, index, axis));
  const refuse = (may: readonly string[]): never => {
    const what = sum.of?.text ?? thing.line.name.text;
    throw new Fault(problem("no-such-measure", sum.at, { measure: sum.measure, what, may }));
  };
  if (body.kind === "panel") {
    const inner = body.inner[index] as Space;
    const bodily = (axis: Axis): Interval => places.bodily(inner, axis);
    switch (sum.measure) {
      case "width":
        return sizeOf(bodily("x"));
      case "height":
        return sizeOf(bodily("z"));
      case "thickness":
      case "depth":
        return sizeOf(bodily("y"));
      case "diagonal":
        return Math.hypot(inches(sizeOf(bodily("x"))), inches(sizeOf(bodily("z"))));
      default:
        return refuse(["width", "height", "thickness", "diagonal"]);
    }
  }
  switch (sum.measure) {
    case "length":
      return along(body.lay.length);
    case "width":
      return along(body.lay.width);
    case "thickness":
      return along(body.lay.thickness);
    case "height":
      return along("z");
    case "depth":
      return along("y");
    case "gap":
      if (thing.rowAxis === undefined) return refuse(["length", "width", "thickness"]);
      return places.gap(thing, Math.floor(index / places.per(thing)));
    default:
      return refuse(["length", "width", "thickness", "height", "gap", "count"]);
  }
}
