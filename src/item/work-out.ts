// Recipe + yard -> the worked-out item of one variant, with every problem on the way.
import { solidOf } from "../geometry/solid.ts";
import { nearest } from "../problems/nearest.ts";
import { inReadingOrder, type Problem, problem } from "../problems/problem.ts";
import { availabilityOf } from "../recipe/availability.ts";
import { recipeFor } from "../recipe/choices-recipe-for.ts";
import { type Chosen, isCalled, variantsOf } from "../recipe/choices-variants.ts";
import { askedFor } from "../recipe/price.ts";
import type { Recipe } from "../recipe/recipe.ts";
import type { Division } from "../units/division.ts";
import type { Yard } from "../yard/yard.ts";
import { checkClaims } from "./claims.ts";
import { checkClashes, checkFittings } from "./clashes.ts";
import { cordsOf, pairsHeld } from "./cord/cords.ts";
import { loadCords } from "./cord/hanging.ts";
import { workedCuts } from "./cuts/worked-cuts.ts";
import { workProse } from "./figures.ts";
import { coatsOn, openAreas, schemeOf, schemesOf, variantOf } from "./finish.ts";
import { shapeOf } from "./frame.ts";
import type { Item, Member } from "./item.ts";
import { checkHeld } from "./joins/held-together.ts";
import { joinCuts } from "./joins/join-cuts.ts";
import { joinsOf } from "./joins/joins.ts";
import { pairKey } from "./joins/meetings.ts";
import { checkWoodTaken } from "./joins/wood-taken.ts";
import { workLoads } from "./loads.ts";
import { neighboursOf } from "./neighbours.ts";
import { piecesOf } from "./pieces.ts";
import type { Placing } from "./placed.ts";
import { placeMembers } from "./places/place-members.ts";
import { workSections } from "./steps.ts";
import { checkOrder } from "./steps-feasible.ts";
import { textFieldsOf } from "./text-fields/text-fields.ts";
import { weigh } from "./weight.ts";

/** As most tapes are divided; a shop may say otherwise. */
export const sixteenths: Division = { unit: "in", per: 16 };

type WorkedOut = { readonly item?: Item; readonly problems: readonly Problem[] };

/**
 * The item in the variant of this slug, or in the standard one. All problems are told at once, in reading order; there is no item
 * where its members have no place or its prose asks for a figure that can't be had.
 */
export function workOut(recipe: Recipe, yard: Yard, variantSlug?: string, division: Division = sixteenths): WorkedOut {
  const variants = variantsOf(recipe);
  const chosen = variantSlug === undefined ? variants[0] : variants.find(({ slug }) => slug === variantSlug);
  if (!chosen) return { problems: [unknownVariant(recipe, variants, variantSlug ?? "")] };
  const bodied = workBodies(recipeFor(recipe, chosen), yard);
  return workFinished(recipe, yard, bodied, { chosen, variants }, division);
}

/** All of a variant that its finish doesn't touch: members in place, their bodies, how they meet and what holds them. */
export type Bodied = {
  readonly recipe: Recipe;
  readonly problems: readonly Problem[];
  readonly standing?: ReturnType<typeof workStanding>;
};

/** The recipe is that of one variant, without a choice left in it. */
export function workBodies(recipe: Recipe, yard: Yard): Bodied {
  const { placing, problems } = placeMembers(recipe, yard);
  if (!placing) return { recipe, problems };
  const standing = workStanding(recipe, yard, placing);
  return { recipe, problems: [...problems, ...standing.problems], standing };
}

function workStanding(recipe: Recipe, yard: Yard, placing: Placing) {
  const cut = workedCuts(recipe.cuts, placing);
  const carved = joinCuts(recipe.joins, placing);
  const bodies = placing.members.map((placed) => {
    const cuts = [...(cut.cuts.get(placed.id) ?? []), ...(carved.cuts.get(placed.id) ?? [])];
    const shape = shapeOf(placed, cuts);
    return { placed, id: placed.id, cuts, shape, solid: solidOf(shape) };
  });
  const { contacts, overlaps } = neighboursOf(bodies);
  const cutsOf = new Map(bodies.map(({ id, cuts }) => [id, cuts]));
  const { joins, nowhere, problems: joining } = joinsOf(recipe.joins, placing, contacts, yard, cutsOf);
  const bored = checkWoodTaken(joins, placing.members, cutsOf);
  const roped = cordsOf(recipe.cords, placing, cutsOf, yard);
  const lettered = textFieldsOf(recipe.texts, placing, cutsOf);
  const holding = [...joins, ...pairsHeld(roped.cords)];
  const held = checkHeld(placing.members, holding, contacts, new Set([...nowhere, ...roped.nowhere]));
  // A pair that its own join could not cut was told by the join.
  const unsaid = overlaps.filter(({ a, b }) => !carved.refused.has(pairKey(a, b)));
  const clashes = [...checkClashes(placing.members, unsaid), ...checkFittings(placing.fittings, bodies)];
  const problems = [
    ...[cut.problems, carved.problems, joining, bored, roped.problems, lettered.problems, held, clashes],
  ].flat();
  const pieces = piecesOf(recipe, bodies);
  return {
    placing,
    bodies,
    contacts,
    overlaps,
    joins,
    cords: roped.cords,
    textFields: lettered.fields,
    pieces,
    problems,
  };
}

/** The item in one finish, from bodies that may serve other finishes too. */
export function workFinished(
  whole: Recipe,
  yard: Yard,
  { recipe, problems: before, standing }: Bodied,
  { chosen, variants }: { readonly chosen: Chosen; readonly variants: readonly Chosen[] },
  division: Division,
): WorkedOut {
  if (!standing) return { problems: inReadingOrder(before) };
  const { placing, bodies, contacts, overlaps, joins, pieces } = standing;
  const { schemes, problems: coating } = schemesOf(recipe, placing, yard);
  const scheme = schemeOf(chosen, schemes);
  const marks = new Map(pieces.flatMap((piece) => piece.members.map((id) => [id, piece.mark])));
  const members = bodies.map(({ placed, cuts, shape, solid }): Member => {
    const { ripped: _r, planed: _p, ...rest } = placed;
    const weight = solid.volume * placed.board.density;
    const mark = marks.get(placed.id) ?? "";
    return { ...rest, mark, cuts, shape, solid, weight, coats: coatsOn(placed.id, scheme) };
  });
  const weights = weigh(members, joins, placing.fittings, standing.cords);
  const cords = loadCords(standing.cords, weights.weight);
  const areas = openAreas(members, contacts);

  const measured = { placing, item: { weight: weights.weight, joins, members, cords }, areas };
  const figuring: Problem[] = [];
  const intro = recipe.intro.map((prose) => workProse(prose, undefined, measured, figuring));
  const { sections, problems: stepping } = workSections(recipe, joins, measured);
  const { panels, assemblies } = placing;
  const ordering = checkOrder(sections, { bodies, contacts, cords: standing.cords, panels, assemblies });
  const claiming = checkClaims(recipe.claims, measured, division);
  const { loads, problems: loading } = workLoads(recipe.loads, placing, members);

  const problems = oncePerPlace([...before, coating, figuring, stepping, ordering, claiming, loading].flat());
  const prose = [
    intro,
    sections.flatMap((s) => [s.heading, ...s.notes, ...s.steps.flatMap((t) => [t.text, ...t.checks, ...t.cautions])]),
  ].flat();
  const isWhole = prose.every((p) => figureMarks(p.markdown) <= p.figures.length);
  if (!isWhole) return { problems: inReadingOrder(problems) };
  const item: Item = {
    title: recipe.title,
    slug: recipe.slug,
    file: recipe.file,
    classes: recipe.classes,
    hasPlan: recipe.hasPlan,
    revisions: recipe.revisions,
    evidence: recipe.evidence,
    ...(recipe.listed === undefined ? {} : { listed: recipe.listed }),
    availability: availabilityOf(recipe.availability, chosen.slug),
    photoWords: recipe.photoWords.map(({ number, words }) => ({ number: Number(number.text), words: words.text })),
    ...(recipe.line === undefined ? {} : { line: recipe.line }),
    ...(recipe.notes === undefined ? {} : { notes: recipe.notes }),
    ...(recipe.purpose === undefined ? {} : { purpose: recipe.purpose }),
    variant: variantOf(scheme, chosen, areas),
    variants: variants.map(({ slug, name, form }) => ({ slug, name, form })),
    sayings: whole.sayings.map(({ name, most, standard }) => ({ name: name.text, most, standard })),
    loads,
    madeFor: recipe.madeFor,
    ...soldAsOf(recipe, weights.weight),
    ...askedOf(recipe, chosen),
    ...(recipe.leftToBuyer ? { leftToBuyer: recipe.leftToBuyer.text } : {}),
    ...(recipe.season ? { season: recipe.season } : {}),
    ...recordOf(recipe, variants, chosen),
    ...(recipe.comparables.length > 0 ? { comparables: recipe.comparables.map(({ at: _, ...one }) => one) } : {}),
    overall: placing.overall,
    ...weights,
    pieces,
    members,
    panels: placing.panels,
    fittings: placing.fittings,
    contacts,
    overlaps,
    joins,
    cords,
    textFields: standing.textFields,
    intro,
    sections,
    gaps: placing.gaps,
  };
  return { item, problems: inReadingOrder(problems) };
}

const figureMarks = (markdown: string): number => markdown.match(/⟦\d+⟧/g)?.length ?? 0;

function unknownVariant(recipe: Recipe, offered: readonly { readonly slug: string }[], what: string): Problem {
  const known = offered.map((s) => s.slug);
  const at = recipe.offered[0]?.at ?? recipe.overall.at;
  return problem("unknown-variant", at, { what, known, nearest: nearest(what, known) });
}

const soldAsOf = ({ soldAs }: Recipe, each: number): Pick<Item, "soldAs"> =>
  soldAs ? { soldAs: { count: soldAs.count, words: soldAs.words, weight: soldAs.count * each } } : {};

function askedOf(recipe: Recipe, chosen: Chosen): Pick<Item, "asked"> {
  const asked = askedFor(recipe, chosen);
  if (!asked) return {};
  const { at: _, variant: __, ...prices } = asked;
  return { asked: prices };
}

/** A batch in another finish tells about all but the coats; one of another form tells nothing. */
function recordOf({ record }: Recipe, variants: readonly Chosen[], chosen: Chosen): Pick<Item, "record"> {
  const own = record.flatMap(({ day, units, minutes, variant }) => {
    const made = variant && variants.find((one) => isCalled(variant.text, one));
    if (made && made.form !== chosen.form) return [];
    return [{ day, units, minutes, sameFinish: made === undefined || made.slug === chosen.slug }];
  });
  return own.length > 0 ? { record: own } : {};
}

/** The same mistake at the same place is told once, by the first member that shows it. */
function oncePerPlace(problems: readonly Problem[]): Problem[] {
  const seen = new Set<string>();
  return problems.filter(({ code, at }) => {
    const key = `${code} ${at.file}:${at.line}:${at.column}`;
    return !seen.has(key) && seen.add(key);
  });
}
