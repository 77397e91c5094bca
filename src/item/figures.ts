// Sums in the prose and in claims -> figures: lengths from the places, weights and areas from the solids.
import { type Problem, problem } from "../problems/problem.ts";
import type { Measure, Prose, Reference, Sum } from "../recipe/recipe.ts";
import { inches } from "../units/length.ts";
import type { Cord, Figure, Item, WorkedProse } from "./item.ts";
import type { Placing, Within } from "./placed.ts";

/** What figures are read from. `areas` are the square inches of each member that air reaches. */
export type Measured = {
  readonly placing: Placing;
  readonly item: Pick<Item, "weight" | "joins" | "members" | "cords">;
  readonly areas: ReadonlyMap<string, number>;
};

/** The figure of a sum, or why it has none. */
export function figureOf(sum: Sum, within: Within, measured: Measured): Figure | Problem {
  if (!isBodily(sum, measured)) {
    const worked = measured.placing.work(sum, within);
    if ("code" in worked) return worked;
    if (worked.kind === "length") {
      const gap = sum.kind === "measure" && sum.measure === "gap" ? ({ gap: true } as const) : {};
      return { kind: "length", value: worked.value, ...gap };
    }
    const value = inches(worked.value);
    return worked.kind === "angle" ? { kind: "angle", degrees: value } : { kind: "number", value };
  }
  const cord = sum.kind === "measure" ? cordNamed(sum.of, measured) : undefined;
  if (sum.kind === "measure" && cord) return ofCord(sum, cord);
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

/** Whether a sum asks anywhere for a weight, an area or something of a cord; all others are the placing's own. */
function isBodily(sum: Sum, measured: Measured): boolean {
  switch (sum.kind) {
    case "measure":
      return sum.measure === "weight" || sum.measure === "area" || cordNamed(sum.of, measured) !== undefined;
    case "plus":
    case "minus":
      return isBodily(sum.left, measured) || isBodily(sum.right, measured);
    case "times":
    case "over":
      return isBodily(sum.sum, measured);
    default:
      return false;
  }
}

const cordNamed = (of: Reference | undefined, { item }: Measured): Cord | undefined =>
  of?.names.length === 1 ? item.cords.find((cord) => cord.name === of.names[0]?.text) : undefined;

/** A cord's length as it is cut, its thickness, or its weight. */
function ofCord(sum: Sum & { kind: "measure" }, cord: Cord): Figure | Problem {
  switch (sum.measure) {
    case "length":
      return { kind: "length", value: cord.length };
    case "thickness":
      return { kind: "length", value: cord.rope.diameter };
    case "weight":
      return { kind: "weight", pounds: cord.weight };
    default: {
      const may = ["length", "thickness", "weight"];
      return problem("no-such-measure", sum.at, { measure: sum.measure, what: cord.name, may });
    }
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
