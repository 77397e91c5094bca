// Stated figures -> problems where they aren't true as printed.
import { type Problem, problem } from "../problems/problem.ts";
import type { Claim, Sum } from "../recipe/recipe.ts";
import { formatArea } from "../units/area.ts";
import type { Division } from "../units/division.ts";
import { asPrinted, formatMarked } from "../units/format-length.ts";
import { formatPounds, poundsAsPrinted } from "../units/mass.ts";
import { type Axis, axes } from "../units/side.ts";
import { figureOf, kindWords, type Measured } from "./figures.ts";
import { along, boxOf } from "./frame.ts";
import type { Figure } from "./item.ts";
import type { PlacedMember } from "./placed.ts";

/** One problem for each claim that is false, or compares two things of a different kind. */
export function checkClaims(claims: readonly Claim[], measured: Measured, division: Division): Problem[] {
  return claims.flatMap((claim): Problem[] => {
    const come = figureOf(claim.what, undefined, measured);
    if ("code" in come) return [come];
    const said = statedFigure(claim.value, come.kind, measured);
    if ("code" in said) return [said];
    const bound = claim.bound ? `${claim.bound} ` : "";
    const facts = { claim: claim.text, said: `${bound}${print(said, division)}`, come: print(come, division) };
    if (said.kind !== come.kind)
      return [
        problem("claim-mixes", claim.at, { ...facts, saidKind: kindWords[said.kind], comeKind: kindWords[come.kind] }),
      ];
    if (isTrue(said, come, division, claim.bound)) return [];
    const from = comesFrom(claim.what, measured);
    return [problem("claim-false", claim.at, { ...facts, from: from.words }, from.at)];
  });
}

/** A number without a unit states a count where a count is claimed, inches elsewhere. */
function statedFigure(value: Claim["value"], as: Figure["kind"], measured: Measured): Figure | Problem {
  if (value.kind === "pounds") return { kind: "weight", pounds: value.value.valueOf() };
  if (as === "number" && value.kind === "length" && value.bare) return { kind: "number", value: value.value.valueOf() };
  return figureOf(value, undefined, measured);
}

function isTrue(said: Figure, come: Figure, division: Division, bound: Claim["bound"]): boolean {
  // A stated weight is meant to the last digit it is written with.
  const stated = said.kind === "weight" ? said.pounds : printed(said, division);
  const over = printed(come, division) - stated;
  if (Math.abs(over) < 1e-9 || (said.kind !== "weight" && print(said, division) === print(come, division))) return true;
  return bound === "at least" ? over > 0 : bound === "at most" && over < 0;
}

/** The number that is printed, in the unit of its kind. */
function printed(figure: Figure, division: Division): number {
  switch (figure.kind) {
    case "length":
      return asPrinted(figure.value, division).valueOf();
    case "weight":
      return poundsAsPrinted(figure.pounds);
    case "area":
      return figure.squareInches;
    case "angle":
      return figure.degrees;
    case "number":
      return figure.value;
  }
}

function print(figure: Figure, division: Division): string {
  switch (figure.kind) {
    case "length":
      return formatMarked(figure.value, division);
    case "weight":
      return formatPounds(figure.pounds);
    case "area":
      return formatArea(figure.squareInches);
    case "angle":
      return `${Number(figure.degrees.toFixed(1))} deg`;
    case "number":
      return String(figure.value);
  }
}

/** Where the computed figure comes from, in words, and the line to look at. */
function comesFrom(what: Sum, { placing, item }: Measured): { words: string; at?: Problem["at"] } {
  const axis = axisOfSum(what);
  const of = what.kind === "measure" ? what.of : undefined;
  const found = of ? placing.find(of, undefined) : placing.members;
  const members = "code" in found ? [] : found;
  const first = members[0];
  if (what.kind === "measure" && what.measure === "weight") {
    const wood = item.members.filter((m) => members.some((f) => f.id === m.id));
    const pounds = wood.reduce((sum, m) => sum + m.weight, 0);
    const count = wood.length === 1 ? "1 board" : `${wood.length} boards`;
    return {
      words: `${count} of together ${formatPounds(pounds)}${of ? "" : ", with fasteners and fittings"}`,
      ...(first && of ? { at: first.at } : {}),
    };
  }
  if (axis && first) {
    const low = members.reduce<PlacedMember>((m, n) => (edge(n, axis, false) < edge(m, axis, false) ? n : m), first);
    const high = members.reduce<PlacedMember>((m, n) => (edge(n, axis, true) > edge(m, axis, true) ? n : m), first);
    return { words: low === high ? low.id : `${low.id} and ${high.id}`, at: high.at };
  }
  return { words: of ? of.text : "the sizes above", ...(first && of ? { at: first.at } : {}) };
}

const edge = (member: PlacedMember, axis: Axis, far: boolean): number =>
  along(far ? boxOf(member).max : boxOf(member).min, axis);

/** The way through the item that a plain width, depth or height is measured along. */
function axisOfSum(sum: Sum): Axis | undefined {
  const name = sum.kind === "size" ? sum.name : sum.kind === "measure" ? sum.measure : "";
  const at = ["width", "depth", "height"].indexOf(name);
  // The width of a board or panel runs its own way; only the height is always up.
  return sum.kind === "measure" && name !== "height" ? undefined : axes[at];
}
