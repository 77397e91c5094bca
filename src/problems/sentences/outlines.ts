// The sentences of cuts that shape a board, of outlines and of boards glued up.

import type { Length } from "../../units/length.ts";
import type { Side } from "../../units/side.ts";
import { sayLength as said } from "../say-length.ts";
import type { Sentence } from "../sentences.ts";
import { quoted } from "./words.ts";

/** A place in an outline. */
const spot = (x: number, y: number): string => `${said(x)}, ${said(y)}`;

/** The worst place in an outline, those that are nearly as bad, and how many there are besides. */
type Places = {
  readonly x: number;
  readonly y: number;
  readonly more: readonly (readonly [number, number])[];
  readonly others: number;
};

function spots({ x, y, more, others }: Places): string {
  if (more.length === 0) return spot(x, y);
  const rest = others > 0 ? ` and ${others} more` : "";
  return `${spot(x, y)} (and at ${more.map((at) => spot(...at)).join(" and at ")}${rest})`;
}

export const outlineSentences = {
  "cut-part-idle": (f: { found: string; cut: string; form: string }) => ({
    says: `"${f.found}" says nothing about "${f.cut}".`,
    found: f.found,
    expected: `"${f.form}"`,
    mend: "Take it away, or choose the kind of cut that has it.",
  }),
  "rabbet-sides": (f: { cut: string; member: string; into: Side; along: Side }) => ({
    says: `the ${f.into} and the ${f.along} of ${f.member} meet in no arris that "${f.cut}" could take away.`,
    expected: "two sides that meet",
    mend: "Name the face it is cut into, then the edge or end it runs along.",
  }),
  "stop-beside": (f: { cut: string; stop: string; member: string; along: boolean }) => ({
    says: `"${f.cut}" runs ${f.along ? "along" : "across"} ${f.member}, so "${f.stop}" doesn't stop it.`,
    expected: f.along ? "an end of the board" : "the sides that it runs out of",
    mend: f.along ? "Name the end it stops short of." : "Name the edge or face it stops short of.",
  }),
  "stop-past": (f: { cut: string; stop: string; member: string; room: number }) => ({
    says: `"${f.stop}" leaves nothing of "${f.cut}": ${f.member} has ${said(f.room)} there.`,
    mend: "Stop it nearer to the side, or take it away.",
  }),
  "sink-side-missing": (f: { cut: string; member: string }) => ({
    says: `nothing says at which side of ${f.member} "${f.cut}" is widened.`,
    expected: "`in front`, `in back`, `in top` or another side",
    mend: "Name the side the screw's head is on.",
  }),
  "sink-narrow": (f: { cut: string; across: number; hole: number }) => ({
    says: `"${f.cut}" is ${said(f.across)} wide at the top, no wider than its hole of ${said(f.hole)}.`,
    found: said(f.across),
    expected: `more than ${said(f.hole)}`,
    mend: "Measure the head of the screw.",
  }),
  "holes-touch": (f: { cut: string; pitch: number; hole: number }) => ({
    says: `the holes of "${f.cut}" run into each other: ${said(f.hole)} wide, ${said(f.pitch)} from middle to middle.`,
    found: said(f.pitch),
    expected: `more than ${said(f.hole)}`,
    mend: "Space them further apart, or bore them smaller.",
  }),
  "corners-too-round": (f: { cut: string; radius: number; most: number }) => ({
    says: `"${f.cut}" has corners of ${said(f.radius)}; ${said(f.most)} is the most that fits.`,
    found: said(f.radius),
    expected: `at most ${said(f.most)}`,
    mend: "Make the corners smaller.",
  }),
  "corners-where": (f: { cut: string; member: string; why: "slanted" | "outlined" | "face" }) => ({
    says: {
      slanted: `${f.member} has slanted ends, so "${f.cut}" has no square corners to round.`,
      outlined: `the corners of ${f.member} are drawn in its outline, so "${f.cut}" has nothing to round.`,
      face: `the side that "${f.cut}" names is a face of ${f.member}; its corners are at its ends and edges.`,
    }[f.why],
    mend: f.why === "face" ? "Name an end or an edge." : "Take it away, or draw the corners into an outline.",
  }),
  "hole-off-wood": (f: { cut: string; member: string; by: number }) => ({
    says: `"${f.cut}" runs ${said(f.by)} out of the wood of ${f.member}, into a cut-out or past an edge or an end.`,
    expected: "a hole with wood all round it",
    mend: "Move the hole, make it smaller, or leave wood there.",
  }),
  "cut-in-air": (f: { cut: string; member: string }) => ({
    says: `"${f.cut}" takes no wood out of ${f.member}: its outline leaves none there.`,
    mend: "Move it onto the wood, or take it away.",
  }),
  "arris-where": (f: { cut: string; member: string; why: "slanted" | "outlined" }) => ({
    says: {
      slanted: `the ends of ${f.member} are slanted, so "${f.cut}" names no square arris.`,
      outlined: `${f.member} is cut to an outline, so "${f.cut}" names no straight arris.`,
    }[f.why],
    mend: "Write `eased arrises R`, which is done by hand on all of them, or take it away.",
  }),
  "sink-too-deep": (f: { cut: string; member: string; depth: number; room: number }) => ({
    says: `the cone of "${f.cut}" is ${said(f.depth)} deep at 82 degrees (ANSI/ASME B18.6.1), and ${f.member} leaves it ${said(f.room)}.`,
    found: said(f.depth),
    expected: `less than ${said(f.room)}`,
    mend: "Make the countersink narrower, or the hole wider or deeper.",
  }),
  "ease-too-round": (f: { cut: string; member: string; radius: number; thickness: number }) => ({
    says: `"${f.cut}" takes more than half of the ${said(f.thickness)} that ${f.member} is thick.`,
    found: said(f.radius),
    expected: `at most ${said(f.thickness / 2)}`,
    mend: "Ease the arrises less.",
  }),
  "slope-sides": (f: { cut: string; fromSide: Side; toSide: Side }) => ({
    says: `"${f.cut}" can't run from ${f.fromSide} to ${f.toSide}: those are no two opposite sides.`,
    expected: "front and back, or left and right",
    mend: "Give one height at each of two opposite sides.",
  }),
  "slope-above": (f: { cut: string; member: string; by: number }) => ({
    says: `${f.member} stands wholly above "${f.cut}": its lowest point is ${said(f.by)} over the line.`,
    found: "no wood left",
    mend: "Take that board away, lower it, or raise the line.",
  }),
  "slope-misses": (f: { cut: string; what: string; by: number }) => ({
    says: `"${f.cut}" cuts nothing: "${f.what}" stays ${said(f.by)} under the line.`,
    mend: "Lower the line, or take the cut away.",
  }),
  "working-alone": (f: { what: string; wants: string }) => ({
    says: `${f.what} is said, but nothing of "${f.wants}".`,
    expected: `"${f.wants}" as well`,
    mend: "Add it, or take this away.",
  }),
  "unknown-stroke": (f: { found: string; kinds: readonly string[]; nearest: string | undefined }) => ({
    says: `"${f.found}" is no stroke of an outline.`,
    found: f.found,
    expected: `one of ${quoted(f.kinds)}`,
    ...(f.nearest === undefined ? {} : { nearest: f.nearest }),
    mend: f.nearest === undefined ? "Start with the kind of stroke." : `Write "${f.nearest}".`,
  }),
  "no-outline": (f: { found: string; known: readonly string[]; nearest: string | undefined }) => ({
    says: `no outline is called "${f.found}".`,
    found: f.found,
    expected:
      f.known.length > 0
        ? `one of ${quoted(f.known)}, or a file ending in .svg`
        : "a name under `outlines:`, or a file ending in .svg",
    ...(f.nearest === undefined ? {} : { nearest: f.nearest }),
    mend: "Write the outline under `outlines:`, or name the drawing beside the recipe.",
  }),
  "no-drawing": (f: { file: string }) => ({
    says: `there is no file "${f.file}" beside the recipe.`,
    mend: "Save the drawing in the recipe's own folder under that name.",
  }),
  "svg-too-long": (f: { letters: number; most: number }) => ({
    says: `this drawing has ${f.letters} letters; ${f.most} is the most that is read.`,
    mend: "Simplify its lines and leave pictures out.",
  }),
  "svg-broken": (f: { why: string }) => ({
    says: `this drawing can't be read: ${f.why.replace(/\.$/, "")}.`,
    expected: "an SVG file",
    mend: "Save it again as plain SVG.",
  }),
  "svg-not-one": (f: { found: string }) => ({
    says: `this file starts with <${f.found}>, so it is no SVG drawing.`,
    expected: "<svg …>",
    mend: "Save the drawing as plain SVG.",
  }),
  "svg-thing": (f: { found: string }) => ({
    says: `<${f.found}> is nothing that a saw can follow.`,
    found: f.found,
    expected: "path, rect, circle, ellipse, polygon, in groups or not",
    mend: "Turn it into a path, or take it out of the drawing.",
  }),
  "svg-transform": (f: { found: string }) => ({
    says: `the transform "${f.found}" can't be read.`,
    found: f.found,
    expected: "translate, scale, rotate, skewX, skewY or matrix",
    mend: "Apply the transform in the drawing program and save it again.",
  }),
  "svg-numbers": (f: { name: string; found: string }) => ({
    says: `the numbers of this <${f.name}> can't be read from "${f.found}" on.`,
    found: f.found,
    mend: "Save the drawing again as plain SVG.",
  }),
  "svg-open": (f: { name: string; gap: number; x: number; y: number }) => ({
    says: `the line of this <${f.name}> is not closed: it ends at ${said(f.x)}, ${said(f.y)}, ${said(f.gap)} from where it starts.`,
    found: `a gap of ${said(f.gap)}`,
    expected: "a line that comes back to its start",
    mend: "Close the path.",
  }),
  "svg-lines": (f: { count: number; most: number }) => ({
    says:
      f.count === 0 ? "nothing is drawn here." : `${f.count} lines are drawn here; ${f.most} is the most that is read.`,
    expected: "one closed line, and the lines of what is cut out of it",
    mend: f.count === 0 ? "Draw the outline as a path." : "Leave out what isn't sawn.",
  }),
  "svg-no-size": (f: { width: string; height: string }) => ({
    says: `this drawing doesn't say how large it is${f.width === "" ? "" : `: its width is "${f.width}", its height "${f.height}"`}.`,
    expected: 'a width and a height in in, mm or cm, as in width="9in" height="9in"',
    mend: "Give the sheet its true size with a unit.",
  }),
  "svg-view-box": (f: { found: string }) => ({
    says: `the viewBox "${f.found}" is not four numbers with a width and a height above 0.`,
    found: f.found,
    mend: "Save the drawing again as plain SVG.",
  }),
  "svg-stretched": (f: { width: number; height: number; boxWidth: number; boxHeight: number }) => ({
    says: `this drawing is stretched: ${said(f.width)} x ${said(f.height)} shows ${f.boxWidth} x ${f.boxHeight} units.`,
    expected: "the same scale both ways",
    mend: "Make width and height fit the viewBox.",
  }),
  "outline-no-start": (f: { stroke: string }) => ({
    says: `"${f.stroke}" comes before the outline has started.`,
    expected: "`start X, Y`",
    mend: "Say first where the line starts.",
  }),
  "stroke-order": (f: { stroke: string; first: boolean }) => ({
    says: `"${f.stroke}" can't follow here: ${f.first ? "the stroke before it is a whole line by itself" : "it begins a line of its own"}.`,
    mend: "Give each closed line a name and a row of its own.",
  }),
  "stroke-after-end": (f: { end: string }) => ({
    says: `this comes after "${f.end}", where the line is closed.`,
    mend: `Put "${f.end}" last.`,
  }),
  "outline-open": (f: { name: string; x: number; y: number; toX: number; toY: number; gap: number }) => ({
    says: `"${f.name}" is not closed: it ends at ${spot(f.x, f.y)}, ${said(f.gap)} from its start at ${spot(f.toX, f.toY)}.`,
    found: `a gap of ${said(f.gap)}`,
    expected: "a line that comes back to its start",
    mend: "Add `close`, or lead the last stroke to the start.",
  }),
  "outline-flat": (f: { name: string }) => ({
    says: `"${f.name}" has too few strokes to hold any wood.`,
    mend: "Draw three lines or more, or two of which one is bent.",
  }),
  "round-points": (f: { count: number }) => ({
    says: `a round curve needs three points or more; here ${f.count === 1 ? "is 1" : `are ${f.count}`}.`,
    mend: "Add points, or write a circle.",
  }),
  "points-same": (f: { stroke: string; x: number; y: number }) => ({
    says: `${f.stroke} has the point ${spot(f.x, f.y)} twice in a row.`,
    mend: "Take one away.",
  }),
  "arc-straight": (f: { stroke: string }) => ({
    says: `the three points of "${f.stroke}" stand in one line, so no circle runs through them.`,
    mend: "Move the middle point to one side, or write a line.",
  }),
  "smooth-after-nothing": (f: { stroke: string }) => ({
    says: `"${f.stroke}" has no stroke before it that it could leave smoothly.`,
    mend: "Write `curve leaving …` with the direction it starts in.",
  }),
  "mirror-line": (f: { x: number; y: number; toX: number; toY: number }) => ({
    says: `the half that is mirrored runs from ${spot(f.x, f.y)} to ${spot(f.toX, f.toY)}; that line is neither upright nor level.`,
    mend: "Start and end the half on one upright or level line.",
  }),
  "outline-crosses-itself": (f: { name: string; x: number; y: number }) => ({
    says: `"${f.name}" crosses or touches itself at ${spot(f.x, f.y)}.`,
    mend: "Move the points there so that the line keeps clear of itself.",
  }),
  "outlines-meet": (f: { a: string; b: string; x: number; y: number }) => ({
    says: `"${f.b}" crosses or touches "${f.a}" at ${spot(f.x, f.y)}.`,
    mend: "Leave wood between the two.",
  }),
  "cut-out-outside": (f: { name: string; x: number; y: number }) => ({
    says: `"${f.name}" lies outside the edge: its point ${spot(f.x, f.y)} is not in the wood.`,
    mend: "Move it inside the edge, or take it away.",
  }),
  "cut-out-within": (f: { name: string; other: string }) => ({
    says: `"${f.name}" lies inside "${f.other}", where the wood is already gone.`,
    mend: "Take one of the two away.",
  }),
  "turn-too-tight": (f: Places & { name: string; radius: number; least: number; said: boolean }) => ({
    says: `the blade can't follow "${f.name}" at ${spots(f)}: ${f.radius === 0 ? "a sharp corner" : `a turn of ${said(f.radius)}`}, ${said(f.least)} is the least${f.said ? "" : " for a narrow blade (common practice, no source)"}.`,
    found: said(f.radius),
    expected: `a radius of at least ${said(f.least)}`,
    mend: "Widen the turn, or say `turns at least …` for the blade you have.",
  }),
  "tip-too-thin": (f: Places & { outline: string; long: number; least: number; degrees: number }) => ({
    says: `"${f.outline}" tapers to a tip at ${spots(f)}: over the last ${said(f.long)} its wood is narrower than ${said(f.least)}.`,
    found: "a tip that breaks off",
    expected: `an end blunter than ${f.degrees} degrees (common practice, no source), or a rounded one`,
    mend: "Round or blunt the tip, or say `wood at least …` if it may be weaker.",
  }),
  "wood-too-thin": (f: Places & { outline: string; width: number; least: number }) => ({
    says: `"${f.outline}" leaves only ${said(f.width)} of wood at ${spots(f)}; ${said(f.least)} is the least.`,
    found: said(f.width),
    expected: `at least ${said(f.least)}`,
    mend: "Move the lines apart there, or say `wood at least …` if it may be weaker.",
  }),
  "outline-over-board": (f: {
    name: string;
    outline: string;
    across: Length;
    width: Length;
    board: string;
    grainUp: boolean;
  }) => ({
    says: `"${f.outline}" is ${said(f.across)} across the grain, but "${f.name}" of ${f.board} is ${said(f.width)} wide.`,
    found: said(f.across),
    expected: `at most ${said(f.width)}`,
    mend: `Use a wider board, glue boards edge to edge, or let the grain run ${f.grainUp ? "across" : "up"}.`,
  }),
  "ply-over-board": (f: { name: string; width: Length; board: string; whole: Length; crossed: boolean }) => ({
    says: `a ply of "${f.name}"${f.crossed ? " whose grain runs across" : ""} is ${said(f.width)} wide, but a ${f.board} has ${said(f.whole)}.`,
    found: said(f.width),
    expected: `at most ${said(f.whole)}`,
    mend: "Use a wider board, or glue each ply up edge to edge.",
  }),
  "blank-too-long": (f: { name: string; length: Length; board: string; longest: Length }) => ({
    says: `a board for "${f.name}" is ${said(f.length)} long, but the longest ${f.board} has ${said(f.longest)}.`,
    found: said(f.length),
    expected: `at most ${said(f.longest)}`,
    mend: "Make it shorter, or add a longer board to the yard.",
  }),
  "glue-needless": (f: { name: string; width: Length; board: string; one: Length }) => ({
    says: `"${f.name}" is glued up to ${said(f.width)}, but one ${f.board} is ${said(f.one)} wide.`,
    mend: `Write \`ripped to ${said(f.width)}\` instead, or glue up to more.`,
  }),
  "outline-placed": (f: { name: string; clause: string }) => ({
    says: `"${f.clause}" can't be said of "${f.name}": its outline gives its length and its ends.`,
    mend: "Take it away, or draw the outline so.",
  }),
} satisfies Record<string, (facts: never) => Sentence>;
