// Recipe + yard -> the item's space and the panels' spaces with every thing in them, lying the way its words say.
import { nearest } from "../../problems/nearest.ts";
import { type Problem, problem } from "../../problems/problem.ts";
import type { ClauseKind, Line, PanelKind, PieceKind, Recipe, Sum } from "../../recipe/recipe.ts";
import { compareLengths, type Exact, isExact, type Length } from "../../units/length.ts";
import { axisOf, type Side } from "../../units/side.ts";
import type { Yard } from "../../yard/yard.ts";
import { Fault, orProblem } from "./fault.ts";
import { layOf, rowAxisOf } from "./lay.ts";
import { type Body, clauseOf, type Section, type Space, type Thing } from "./thing.ts";
import { turnOf } from "./turn.ts";

const notForPanels: readonly ClauseKind[] = ["run", "lapping", "long", "gaps at most"];
const notForPieces: readonly ClauseKind[] = ["mirrored"];

/** How a size is worked out before anything is placed: sizes and lengths, but no line and no measure of a placed thing. */
export type SizeOf = (sum: Sum) => Length;

/** The item's space, filled as far as the recipe's words allow; what they don't allow is added to `problems`. */
export function spacesOf(recipe: Recipe, yard: Yard, sizeOf: SizeOf, problems: Problem[]): Space {
  const sections = new Map<string, Section>();
  for (const kind of recipe.pieces) {
    const section = orProblem(problems, () => sectionOf(kind, yard, sizeOf));
    if (section) sections.set(kind.name.text, section);
  }
  const declared = new Set(recipe.pieces.map((p) => p.name.text));
  const panels = new Map(recipe.panels.map((p) => [p.name.text, p]));
  const item: Space = { key: "", kind: "item", panel: undefined, host: undefined, things: new Map() };

  const fill = (space: Space, lines: readonly Line[]) => {
    for (const line of lines) {
      const what = line.what.text;
      const key = space.key === "" ? line.name.text : `${space.key}/${line.name.text}`;
      const thing = orProblem(problems, (): Thing | undefined => {
        if (declared.has(what)) {
          const section = sections.get(what);
          // A piece whose board is unknown was told once where it is declared.
          return section && pieceThing(key, line, space, section);
        }
        const panel = panels.get(what);
        if (!panel) {
          const known = [...declared, ...(space.kind === "item" ? panels.keys() : [])];
          throw new Fault(problem("unknown-thing", line.what.at, { what, known, nearest: nearest(what, known) }));
        }
        return panelThing(key, line, space, panel, fill);
      });
      if (thing) space.things.set(line.name.text, thing);
    }
  };
  fill(item, recipe.stand);
  for (const line of recipe.fittings) {
    const thing = orProblem(problems, () => fittingThing(line, item, yard));
    if (thing) item.things.set(line.name.text, thing);
  }
  return item;
}

function sectionOf(kind: PieceKind, yard: Yard, sizeOf: SizeOf): Section {
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
  return { name, board, width, thickness, ripped: kind.ripped !== undefined, planed: kind.planed !== undefined };
}

function refuse(line: Line, kinds: readonly ClauseKind[], kind: "panel" | "piece"): void {
  const clause = line.clauses.find((c) => kinds.includes(c.kind));
  if (clause) throw new Fault(problem("clause-not-here", clause.at, { clause: clause.text, kind }));
}

function checkRow(line: Line, rowAxis: unknown): void {
  if (rowAxis !== undefined || line.count === 1) return;
  throw new Fault(problem("not-spread", line.at, { name: line.name.text, count: line.count }));
}

function pieceThing(key: string, line: Line, space: Space, section: Section): Thing {
  refuse(line, notForPieces, "piece");
  const lay = layOf(line, space);
  const rowAxis = rowAxisOf(line, space, lay);
  checkRow(line, rowAxis);
  return { key, line, space, body: { kind: "piece", section, lay }, rowAxis };
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
  refuse(line, notForPieces, "piece");
  const lay = layOf(line, space);
  const rowAxis = rowAxisOf(line, space, lay);
  checkRow(line, rowAxis);
  return { key: line.name.text, line, space, body: { kind: "fitting", fitting, lay }, rowAxis };
}

/** The side a standing panel's good side looks to, from its words. */
function facingOf(line: Line): Side {
  const facing = clauseOf(line, "facing");
  if (facing) return facing.side;
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
  const facing = facingOf(line);
  const mirrored = clauseOf(line, "mirrored") !== undefined;
  const turn = turnOf(facing, mirrored);
  // A row of panels runs along its own words, else along the way the panels look.
  const rowAxis = rowAxisOf(line, space, { length: turn.x.axis, width: turn.y.axis, thickness: turn.z.axis });
  checkRow(line, rowAxis);
  let self: Thing;
  const inner = Array.from({ length: count }, (_, index): Space => {
    const name = count === 1 ? key : `${key} ${index + 1}`;
    const host = { thing: () => self, index };
    return { key: name, kind: "panel", panel, host, things: new Map() };
  });
  for (const space of inner) fill(space, panel.lines);
  const body: Body = { kind: "panel", panel, facing, mirrored, turn, inner };
  self = { key, line, space, body, rowAxis };
  return self;
}
