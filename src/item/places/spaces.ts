// Recipe + yard -> the item's space and the panels' spaces with every thing in them, lying the way its words say.
import { nearest } from "../../problems/nearest.ts";
import { type Problem, problem } from "../../problems/problem.ts";
import type { ClauseKind, Line, PanelKind, PieceKind, Recipe, Sum } from "../../recipe/recipe.ts";
import { compareLengths, type Exact, isExact, type Length } from "../../units/length.ts";
import { axisOf, type Side } from "../../units/side.ts";
import type { Yard } from "../../yard/yard.ts";
import { formPiece } from "../outlines/form-piece.ts";
import { Fault, orFault } from "./fault.ts";
import { panelSpaces } from "./find.ts";
import { layOf, rowAxisOf } from "./lay.ts";
import { type Body, clauseOf, type Section, type Space, type Thing } from "./thing.ts";
import { turnOf } from "./turn.ts";

const notForPanels: readonly ClauseKind[] = [
  "run",
  "lapping",
  "long",
  "gaps at most",
  "meeting",
  "mitred",
  "edges level",
  "in panel",
];
/** An outline has its own length and ends. */
const notForOutlines: readonly ClauseKind[] = ["long", "lapping", "leaning", "meeting", "mitred", "edges level"];
const notForPieces: readonly ClauseKind[] = ["sloping", "in panel"];
const notForFittings: readonly ClauseKind[] = ["sloping"];

/** How a size is worked out before anything is placed: sizes and lengths, but no line and no measure of a placed thing. */
export type SizeOf = (sum: Sum) => Length;

/** The sections of the pieces by name; of one that can't be had, what stands in the way. */
export type Sections = ReadonlyMap<string, Section | Fault>;

export function sectionsOf(recipe: Recipe, yard: Yard, sizeOf: SizeOf): Sections {
  return new Map(
    recipe.pieces.map((kind): [string, Section | Fault] => [
      kind.name.text,
      orFault(() => sectionOf(kind, yard, sizeOf, recipe.outlines)),
    ]),
  );
}

/** The section of this name. Throws the fault that stands in its way; undefined where nothing is declared by that name. */
export function sectionNamed(sections: Sections, name: string): Section | undefined {
  const found = sections.get(name);
  if (found instanceof Fault) throw found;
  return found;
}

/** The item's space, filled as far as the recipe's words allow; what they don't allow is added to `problems`. */
export function spacesOf(recipe: Recipe, yard: Yard, sections: Sections, problems: Problem[]): Space {
  const panels = new Map([...recipe.panels, ...recipe.assemblies].map((p) => [p.name.text, p]));
  const item: Space = {
    key: "",
    kind: "item",
    panel: undefined,
    host: undefined,
    things: new Map(),
    faults: new Map(),
  };

  const put = (space: Space, line: Line, make: () => Thing | undefined) => {
    const thing = orFault(make);
    if (thing instanceof Fault) {
      space.faults.set(line.name.text, thing);
      problems.push(thing.problem);
    } else if (thing) space.things.set(line.name.text, thing);
  };
  const fill = (space: Space, lines: readonly Line[]) => {
    for (const line of lines) {
      const what = line.what.text;
      const key = space.key === "" ? line.name.text : `${space.key}/${line.name.text}`;
      put(space, line, () => {
        const section = sectionNamed(sections, what);
        if (section) return pieceThing(key, line, space, section);
        const panel = panels.get(what);
        // The reader lets no unknown name through.
        if (!panel) throw new Error(`${key} asks for the unknown thing ${what}`);
        return panelThing(key, line, space, panel, fill);
      });
    }
  };
  fill(item, recipe.stand);
  for (const line of recipe.fittings) {
    const spaces = orFault(() => spacesFor(line, item));
    if (spaces instanceof Fault) problems.push(spaces.problem);
    else for (const space of spaces) put(space, line, () => fittingThing(line, space, yard));
  }
  return item;
}

function sectionOf(kind: PieceKind, yard: Yard, sizeOf: SizeOf, outlines: Recipe["outlines"]): Section {
  const board = yard.boards.find((b) => b.name === kind.board.text);
  if (!board) {
    const known = yard.boards.map((b) => b.name);
    const what = kind.board.text;
    throw new Fault(problem("unknown-board", kind.board.at, { what, known, nearest: nearest(what, known) }));
  }
  const finished = (sum: Sum | undefined, whole: Exact, way: "ripped" | "planed"): Exact => {
    if (!sum) return whole;
    const size = sizeOf(sum);
    if (!isExact(size) || size.compare(0) <= 0) {
      throw new Fault(problem("no-such-size", sum.at, { name: kind.name.text, way, size }));
    }
    if (compareLengths(size, whole) > 0) {
      const facts = { name: kind.name.text, way, size, board: board.name, whole, short: size.sub(whole) };
      throw new Fault(problem("piece-over-board", sum.at, facts, board.at));
    }
    return size;
  };
  const width = finished(kind.ripped, board.width, "ripped");
  const thickness = finished(kind.planed, board.thickness, "planed");
  const name = kind.name.text;
  const formed = formPiece(kind, { board, width, thickness }, outlines, sizeOf);
  return { name, board, ...formed, ripped: kind.ripped !== undefined, planed: kind.planed !== undefined };
}

function refuse(line: Line, kinds: readonly ClauseKind[], kind: "panel" | "piece"): void {
  const clause = line.clauses.find((c) => kinds.includes(c.kind));
  if (clause) throw new Fault(problem("clause-not-here", clause.at, { clause: clause.text, kind }));
}

function checkRow(line: Line, rowAxis: unknown): void {
  if (rowAxis !== undefined || line.count === 1) return;
  throw new Fault(problem("not-spread", line.at, { name: line.name.text, count: line.count }));
}

/** A mirrored line is a pair that leans; what meets is mirrored. */
function checkPair(line: Line): void {
  const mirrored = clauseOf(line, "mirrored");
  const meeting = clauseOf(line, "meeting");
  const name = line.name.text;
  if (mirrored && (line.count !== 2 || !clauseOf(line, "leaning"))) {
    throw new Fault(problem("mirrored-pair", mirrored.at, { name, count: line.count }));
  }
  if (!meeting) return;
  if (!mirrored) throw new Fault(problem("meets-alone", meeting.at, { name }));
  const inward = clauseOf(line, "leaning")?.toward === "inward";
  if (meeting.where !== (inward ? "top" : "bottom")) {
    throw new Fault(problem("meets-nowhere", meeting.at, { name, where: meeting.where, inward }));
  }
}

function pieceThing(key: string, line: Line, space: Space, section: Section): Thing {
  refuse(line, notForPieces, "piece");
  checkPair(line);
  const own = section.outline && line.clauses.find((c) => notForOutlines.includes(c.kind));
  if (own) throw new Fault(problem("outline-placed", own.at, { name: line.name.text, clause: own.text }));
  const lay = layOf(line, space);
  const rowAxis = rowAxisOf(line, space, lay);
  checkRow(line, rowAxis);
  return { key, line, space, body: { kind: "piece", section, lay }, rowAxis };
}

/** Where a fitting's line is read: in the item, or in every panel its `in` means. */
function spacesFor(line: Line, item: Space): readonly Space[] {
  const clause = clauseOf(line, "in panel");
  if (!clause) return [item];
  const [name, ...more] = clause.of.names.map((n) => n.text);
  const spaces = panelSpaces(item).filter((space) => {
    const host = space.host?.thing();
    return more.length === 0 && (space.panel?.name.text === name || host?.line.name.text === name);
  });
  if (spaces.length > 0) return spaces;
  const known = [
    ...new Set(panelSpaces(item).flatMap((s) => [s.panel?.name.text ?? "", s.host?.thing().line.name.text ?? ""])),
  ];
  const what = clause.of.text;
  throw new Fault(
    problem("nothing-called", clause.of.at, { what, where: undefined, known, nearest: nearest(what, known) }),
  );
}

function fittingThing(line: Line, space: Space, yard: Yard): Thing | undefined {
  const fitting = yard.fittings.find((f) => f.name === line.what.text);
  if (!fitting) {
    const known = yard.fittings.map((f) => f.name);
    const what = line.what.text;
    throw new Fault(problem("unknown-fitting", line.what.at, { what, known, nearest: nearest(what, known) }));
  }
  if (clauseOf(line, "loose")) return undefined;
  if (!fitting.size) {
    throw new Fault(
      problem("fitting-has-no-size", line.at, { name: line.name.text, fitting: fitting.name }, fitting.at),
    );
  }
  refuse(line, notForFittings, "piece");
  const lay = layOf(line, space);
  const rowAxis = rowAxisOf(line, space, lay);
  checkRow(line, rowAxis);
  const key = space.key === "" ? line.name.text : `${space.key}/${line.name.text}`;
  return { key, line, space, body: { kind: "fitting", fitting, lay }, rowAxis };
}

/** The side a panel's good side looks to, from its words; the front of an assembly looks to the front unless told otherwise. */
function facingOf(line: Line, panel: PanelKind): Side {
  const facing = clauseOf(line, "facing");
  if (facing) return facing.side;
  if (panel.depth) return "front";
  if (clauseOf(line, "lie")?.lie === "flat") return "top";
  const named = line.clauses.flatMap((c): Side[] => {
    if (c.kind === "in from") return [c.side];
    return c.kind === "side at" && c.line.kind === "line" && c.line.side === c.side && !c.line.of ? [c.side] : [];
  });
  const level = [...new Set(named.filter((side) => axisOf[side] !== "z"))];
  if (level.length === 1) return level[0] as Side;
  throw new Fault(problem("panel-faces", line.at, { name: line.name.text, sides: level }));
}

function panelThing(
  key: string,
  line: Line,
  space: Space,
  panel: PanelKind,
  fill: (space: Space, lines: readonly Line[]) => void,
): Thing {
  refuse(line, notForPanels, "panel");
  if (line.count === "follows" || line.clauses.some((c) => "of" in c && typeof c.of === "object" && c.of.each)) {
    throw new Fault(problem("panel-count", line.at, { name: line.name.text }));
  }
  const count = line.count;
  const facing = facingOf(line, panel);
  const mirrored = clauseOf(line, "mirrored") !== undefined;
  const turn = turnOf(facing, mirrored);
  // A row of panels runs along its own words, else along the way the panels look.
  const rowAxis = rowAxisOf(line, space, { length: turn.x.axis, width: turn.y.axis, thickness: turn.z.axis });
  checkRow(line, rowAxis);
  let self: Thing;
  const inner = Array.from({ length: count }, (_, index): Space => {
    const name = count === 1 ? key : `${key} ${index + 1}`;
    const host = { thing: () => self, index };
    const kind = panel.depth ? "assembly" : "panel";
    return { key: name, kind, panel, host, things: new Map(), faults: new Map() };
  });
  for (const space of inner) fill(space, panel.lines);
  const body: Body = { kind: "panel", panel, facing, mirrored, turn, inner };
  self = { key, line, space, body, rowAxis };
  return self;
}
