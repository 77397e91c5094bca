// Sums in the prose and in claims -> figures: lengths from the places, weights and areas from the solids.
import { type Problem, problem } from "../problems/problem.ts";
import type { Measure, Prose, Reference, Sum } from "../recipe/recipe.ts";
import { inches } from "../units/length.ts";
import type { Figure, Item, WorkedProse } from "./item.ts";
import type { Placing, Within } from "./placed.ts";

/** What figures are read from. `areas` are the square inches of each member that air reaches. */
export type Measured = {
  readonly placing: Placing;
  readonly item: Pick<Item, "weight" | "joins" | "members">;
  readonly areas: ReadonlyMap<string, number>;
};

/** The figure of a sum, or why it has none. */
export function figureOf(sum: Sum, within: Within, measured: Measured): Figure | Problem {
  if (!weighs(sum)) {
    const worked = measured.placing.work(sum, within);
    if ("code" in worked) return worked;
    if (worked.kind === "length") return { kind: "length", value: worked.value };
    const value = inches(worked.value);
    return worked.kind === "angle" ? { kind: "angle", degrees: value } : { kind: "number", value };
  }
  if (sum.kind === "measure") return bodily(sum.measure, sum.of, within, measured);
  if (sum.kind === "times" || sum.kind === "over") {
    const figure = figureOf(sum.sum, within, measured);
    const by = sum.kind === "times" ? sum.by.valueOf() : 1 / sum.by.valueOf();
    return "code" in figure ? figure : withValue(figure, plainOf(figure) * by);
  }
  if (sum.kind !== "plus" && sum.kind !== "minus") throw new Error(`a ${sum.kind} has no weight`);
  const left = figureOf(sum.left, within, measured);
  const right = figureOf(sum.right, within, measured);
  if ("code" in left) return left;
  if ("code" in right) return right;
  if (left.kind !== right.kind)
    return problem("mixed-sum", sum.at, { left: kindWords[left.kind], right: kindWords[right.kind], sign: sum.kind });
  return withValue(left, plainOf(left) + (sum.kind === "plus" ? 1 : -1) * plainOf(right));
}

/** Whether a sum asks for a weight or an area anywhere; all others are the placing's own. */
function weighs(sum: Sum): boolean {
  switch (sum.kind) {
    case "measure":
      return sum.measure === "weight" || sum.measure === "area";
    case "plus":
    case "minus":
      return weighs(sum.left) || weighs(sum.right);
    case "times":
    case "over":
      return weighs(sum.sum);
    default:
      return false;
  }
}

/**
 * Of the whole item, or of the members meant: their wood with the fasteners that hold them to each other; the area that air
 * reaches in the finished item. A panel kind or a line that stands several times means all of them together.
 */
function bodily(measure: Measure, of: Reference | undefined, within: Within, measured: Measured): Figure | Problem {
  const { placing, item, areas } = measured;
  const found = of ? placing.find(of, within) : undefined;
  if (found && "code" in found) return found;
  const ids = new Set((found ?? placing.members).map((m) => m.id));
  if (measure === "area") {
    return { kind: "area", squareInches: [...ids].reduce((sum, id) => sum + (areas.get(id) ?? 0), 0) };
  }
  if (!found) return { kind: "weight", pounds: item.weight };
  const wood = item.members.reduce((sum, m) => sum + (ids.has(m.id) ? m.weight : 0), 0);
  const inside = item.joins.filter((join) => ids.has(join.a) && ids.has(join.b)).flatMap((join) => join.driven);
  return { kind: "weight", pounds: inside.reduce((sum, d) => sum + d.fastener.weight, wood) };
}

const plainOf = (figure: Figure): number => {
  switch (figure.kind) {
    case "length":
      return inches(figure.value);
    case "angle":
      return figure.degrees;
    case "weight":
      return figure.pounds;
    case "area":
      return figure.squareInches;
    case "number":
      return figure.value;
  }
};

function withValue(figure: Figure, value: number): Figure {
  switch (figure.kind) {
    case "length":
      return { kind: "length", value };
    case "angle":
      return { kind: "angle", degrees: value };
    case "weight":
      return { kind: "weight", pounds: value };
    case "area":
      return { kind: "area", squareInches: value };
    case "number":
      return { kind: "number", value };
  }
}

/** Prose with its figures; figures that have a problem are told and left out. */
export function workProse(prose: Prose, within: Within, measured: Measured, problems: Problem[]): WorkedProse {
  const figures = prose.figures.flatMap((sum): Figure[] => {
    const figure = figureOf(sum, within, measured);
    if (!("code" in figure)) return [figure];
    problems.push(figure);
    return [];
  });
  return { markdown: prose.markdown, figures, at: prose.at };
}

/** A figure's kind in a sentence. */
export const kindWords: Readonly<Record<Figure["kind"], string>> = {
  length: "a length",
  angle: "an angle",
  weight: "a weight",
  area: "an area",
  number: "a plain number",
};
