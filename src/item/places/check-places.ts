// Placed members and panels -> problems of the whole: false sizes, boards too short, panels that differ or overflow.
import { type Problem, problem } from "../../problems/problem.ts";
import type { Recipe } from "../../recipe/recipe.ts";
import { compareLengths, type Length, minus, most } from "../../units/length.ts";
import type { Axis } from "../../units/side.ts";
import type { Panel } from "../item.ts";
import type { PlacedMember } from "../placed.ts";
import { orProblem } from "./fault.ts";
import { panelSpaces } from "./find.ts";
import { type Interval, sizeOf } from "./interval.ts";
import type { Places } from "./places.ts";
import { overallAxis, overallNames, overallOf } from "./sizes.ts";
import type { Space } from "./thing.ts";

/** Every size must be workable, used or not: a wrong one waits to be used. */
export function checkSizes(recipe: Recipe, places: Places, problems: Problem[]): void {
  const reading = { space: places.item, axis: undefined, set: 0 };
  for (const size of recipe.sizes) {
    orProblem(problems, () => places.value({ kind: "size", at: size.at, name: size.name.text }, reading));
  }
  for (const name of overallNames) {
    const extent = overallOf(recipe, name);
    if (extent.kind !== "fit") orProblem(problems, () => places.far(places.item, overallAxis[name]));
  }
}

export function checkPanelsUsed(recipe: Recipe, item: Space, problems: Problem[]): void {
  const lines = [...recipe.stand, ...recipe.assemblies.flatMap((kit) => kit.lines)];
  const meant = new Set(lines.map((line) => line.what.text));
  for (const panel of [...recipe.panels, ...recipe.assemblies]) {
    const name = panel.name.text;
    if (panel.lines.length === 0) problems.push(problem("empty-panel", panel.at, { name }));
    else if (!meant.has(name))
      problems.push(problem("panel-unused", panel.at, { name, stands: [...item.things.keys()] }));
  }
}

/** A stated overall size must be what the members fill, exactly. */
export function checkOverall(
  recipe: Recipe,
  places: Places,
  boxes: ReadonlyMap<string, Record<Axis, Interval>>,
  whole: Record<Axis, Interval>,
  problems: Problem[],
): void {
  for (const name of overallNames) {
    const extent = overallOf(recipe, name);
    if (extent.kind === "fit") continue;
    const axis = overallAxis[name];
    const said = places.far(places.item, axis);
    const come = sizeOf(whole[axis]);
    if (compareLengths(said, come) === 0) continue;
    const at = (end: "lo" | "hi") =>
      [...boxes].find(([, box]) => compareLengths(box[axis][end], whole[axis][end]) === 0)?.[0] ?? "";
    problems.push(problem("overall-false", extent.at, { name, said, come, from: at("lo"), to: at("hi") }));
  }
}

export function checkBoardLength(member: PlacedMember, problems: Problem[]): void {
  const longest = member.board.lengths.reduce<Length>((best, l) => most(best, l.usable), 0);
  if (member.board.lengths.length === 0 || compareLengths(member.length, longest) <= 0) return;
  const facts = { name: member.group, length: member.length, board: member.board.name, longest };
  problems.push(
    problem("piece-too-long", member.at, { ...facts, short: minus(member.length, longest) }, member.board.at),
  );
}

/** Bevelled edges take a wider blank than the finished face; the board must be as wide. Glued-up widths have no such limit. */
export function checkBlankWidth(member: PlacedMember, problems: Problem[]): void {
  const { board, width } = member;
  if (!member.slant || member.blanks || compareLengths(width, board.width) <= 0) return;
  const facts = { name: member.group, width, board: board.name, whole: board.width, short: minus(width, board.width) };
  problems.push(problem("blank-over-board", member.at, facts, board.at));
}

/** Panels of one kind are built from one drawing, so they must come out alike. */
export function checkPanelsAlike(panels: readonly Panel[], problems: Problem[]): void {
  for (const panel of panels) {
    const first = panels.find((p) => p.kind === panel.kind) as Panel;
    for (const side of ["width", "height", "thickness"] as const) {
      if (compareLengths(first[side], panel[side]) === 0) continue;
      const facts = { kind: panel.kind, a: first.name, b: panel.name, side, sizeA: first[side], sizeB: panel[side] };
      problems.push(problem("panels-differ", panel.at, facts, first.at));
      break;
    }
  }
}

/** No member stands out of the size its panel is said to have. */
export function checkPanelSizes(places: Places, item: Space, problems: Problem[]): void {
  for (const space of panelSpaces(item)) {
    const panel = space.panel;
    const host = space.host?.thing();
    if (!panel || host?.body.kind !== "panel") continue;
    for (const [axis, extent] of [
      ["x", panel.width],
      ["y", panel.depth],
      ["z", panel.height],
    ] as const) {
      if (!extent || extent.kind === "fit") continue;
      const said = minus(places.far(space, axis), places.near(space, axis));
      const come = places.bodily(space, axis);
      const out =
        compareLengths(come.lo, places.near(space, axis)) < 0 || compareLengths(come.hi, places.far(space, axis)) > 0;
      if (!out) continue;
      const facts = {
        kind: panel.name.text,
        side: axis === "x" ? "width" : axis === "y" ? "depth" : "height",
        said,
        lo: come.lo,
        hi: come.hi,
      };
      problems.push(problem("panel-over-size", extent.at, facts));
    }
  }
}
