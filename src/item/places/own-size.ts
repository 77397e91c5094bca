// A member's own size along an axis, where its board, its typed length or its lean gives it.
import { exact, inches, type Length, plus, times } from "../../units/length.ts";
import type { Axis } from "../../units/side.ts";
import { type Said, sizeOf } from "./interval.ts";
import { leans } from "./lean.ts";
import { leanSize } from "./lean-size.ts";
import type { Places } from "./places.ts";
import type { One, Reading } from "./target.ts";
import { clauseOf, type Space, type Thing } from "./thing.ts";
import { levelRoom, tiltOf } from "./tilt.ts";
import { ownAxis } from "./turn.ts";

/** In inches; undefined where its ends or the room decide. */
export function ownSize(places: Places, one: One, axis: Axis): Length | undefined {
  const { thing } = one;
  const body = thing.body;
  if (body.kind === "panel") return panelSize(places, thing, axis);
  if (leans(thing)) {
    const size = leanSize(places, thing, one.index, axis);
    if (size !== undefined || axis !== body.lay.length || axis === "z") return size;
  }
  if (axis !== body.lay.length) {
    const isWidth = axis === body.lay.width;
    if (body.kind === "piece") return isWidth ? body.section.width : body.section.thickness;
    return isWidth ? body.fitting.size?.width : body.fitting.size?.thickness;
  }
  if (body.kind === "fitting") return body.fitting.size?.length;
  if (body.section.length !== undefined) return body.section.length;
  const long = clauseOf(thing.line, "long");
  if (!long) return undefined;
  const reading: Reading = { space: thing.space, axis: undefined, set: 0 };
  const length = places.amount(long.length, reading);
  return long.more ? plus(length, times(places.amount(long.more, reading), exact(one.k))) : length;
}

function panelSize(places: Places, thing: Thing, axis: Axis): Length | undefined {
  const body = thing.body;
  if (body.kind !== "panel") throw new Error(`${thing.key} is no panel`);
  const own = ownAxis(body.turn, axis);
  const extent = own === "y" ? body.panel.depth : own === "x" ? body.panel.width : body.panel.height;
  if (extent?.kind === "fit" && thing.rowAxis !== axis) return undefined;
  const inner = body.inner[0] as Space;
  const size = sizeOf(places.ownBox(inner, own));
  const tilt = tiltOf(places, thing);
  if (tilt?.along !== axis) return size;
  return levelRoom(tilt, inches(size), inches(sizeOf(places.boarded(inner))));
}

/** The same as something said. */
export function sizeSaid(places: Places, one: One, axis: Axis): Said[] {
  const value = ownSize(places, one, axis);
  if (value === undefined) return [];
  const { body, line } = one.thing;
  const long = clauseOf(line, "long");
  if (body.kind === "panel") {
    const at = ownAxis(body.turn, axis) === "z" ? body.panel.height.at : body.panel.width.at;
    return [{ what: "size", value, words: `the size of ${body.panel.name.text}`, at }];
  }
  if (long && axis === body.lay.length) return [{ what: "size", value, words: long.text, at: long.at }];
  const part = axis === body.lay.length ? "length" : axis === body.lay.width ? "width" : "thickness";
  const words = `the ${part} of ${line.what.text}`;
  return [{ what: "size", value, words, at: line.what.at }];
}
