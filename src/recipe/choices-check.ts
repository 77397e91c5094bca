// Choices against the recipe they change -> what is unknown, what changes nothing, and variants that can't be told apart.
import { nearest } from "../problems/nearest.ts";
import { type Problem, problem } from "../problems/problem.ts";
import { checkSizeCircles } from "./check-sizes.ts";
import { nearChoice } from "./choices-list.ts";
import { recipeFor } from "./choices-recipe-for.ts";
import { countVariants, mostVariants, variantsOf } from "./choices-variants.ts";
import type { Change, Choice, ChoiceValue, Only, Recipe } from "./recipe.ts";

const overallSizes = ["width", "depth", "height"];

/**
 * `onlys` are all conditions of the recipe. What depends on the recipe as a whole is only looked for where it could be
 * read `whole`.
 */
export function checkChoices(recipe: Recipe, onlys: readonly Only[], whole: boolean): Problem[] {
  const unknown = [...unknownChanges(recipe), ...onlys.flatMap((only) => unknownOnly(only, recipe))];
  if (unknown.length > 0 || !whole) return unknown;
  const others = recipe.choices.filter(({ name }) => name.text !== "finish");
  const faults = [
    ...sayingTwice(recipe),
    ...changedTwice(others),
    ...others.flatMap((choice) => alike(choice, recipe, onlys)),
    ...others.flatMap((choice) => circles(choice, recipe)),
  ];
  const count = countVariants(recipe);
  if (count > mostVariants) {
    const at = others[0]?.at ?? recipe.offered[0]?.at ?? recipe.overall.at;
    const choices = recipe.choices.map(({ name, values }) => ({ name: name.text, count: values.length }));
    return [...faults, problem("too-many-variants", at, { choices, count, most: mostVariants })];
  }
  return [...faults, ...oneSlug(recipe), ...ofNothing(recipe)];
}

const sayingTwice = ({ sayings, sizes }: Recipe): Problem[] =>
  sayings.flatMap(({ name }) => {
    const twin = sizes.find((size) => size.name.text === name.text);
    return twin
      ? [problem("name-twice", name.at, { name: name.text, what: "a size", line: twin.at.line }, twin.at)]
      : [];
  });

const changesOf = (choice: Choice): readonly Change[] => choice.values.flatMap(({ changes }) => changes);

function unknownChanges(recipe: Recipe): Problem[] {
  const sizes = [...overallSizes, ...recipe.sizes.map(({ name }) => name.text)];
  const changes = recipe.choices.flatMap(changesOf);
  const boards = [
    ...new Set([
      ...recipe.pieces.flatMap(({ name, board }) => [board.text, name.text]),
      ...changes.flatMap((change) => (change.kind === "board" ? [change.to.text] : [])),
    ]),
  ];
  return changes.flatMap((change) => {
    if (change.kind === "board") {
      const found = change.from.text;
      if (boards.some((board) => board === found)) return [];
      return [problem("choice-of-no-board", change.at, { found, known: boards, nearest: nearest(found, boards) })];
    }
    const found = change.name.text;
    if (!sizes.includes(found))
      return [problem("choice-of-no-size", change.name.at, { found, known: sizes, nearest: nearest(found, sizes) })];
    if (change.to.kind === "fit" && !overallSizes.includes(found))
      return [problem("choice-fits", change.to.at, { name: found })];
    return [];
  });
}

function unknownOnly({ choice, values }: Only, recipe: Recipe): Problem[] {
  const found = recipe.choices.find(({ name }) => name.text === choice.text && name.text !== "finish");
  if (!found) return [problem("only-no-choice", choice.at, nearChoice(choice.text, recipe.choices))];
  const known = found.values.map(({ name }) => name.text);
  return values
    .filter((value) => !known.includes(value.text))
    .map(({ text, at }) =>
      problem(
        "only-no-value",
        at,
        { found: text, choice: choice.text, known, nearest: nearest(text, known) },
        found.at,
      ),
    );
}

const target = (change: Change): string => (change.kind === "size" ? change.name.text : change.from.text);

/** One size or board that two choices change, or one value changes twice. */
function changedTwice(choices: readonly Choice[]): Problem[] {
  const first = new Map<string, { readonly choice: Choice; readonly value: ChoiceValue; readonly change: Change }>();
  return choices.flatMap((choice) =>
    choice.values.flatMap((value) =>
      value.changes.flatMap((change) => {
        const before = first.get(target(change));
        if (!before) first.set(target(change), { choice, value, change });
        if (!before || (before.choice === choice && before.value !== value)) return [];
        const facts = { what: target(change), choice: choice.name.text, other: before.choice.name.text };
        return [problem("changed-twice", change.at, facts, before.change.at)];
      }),
    ),
  );
}

/** A value by which the recipe is the same as by an earlier one. */
function alike(choice: Choice, recipe: Recipe, onlys: readonly Only[]): Problem[] {
  const says = choice.values.map((value) => signature(choice, value, recipe, onlys));
  return choice.values.flatMap((value, i) => {
    const twin = choice.values[says.indexOf(says[i] ?? "")];
    if (!twin || twin === value) return [];
    const facts = { choice: choice.name.text, value: value.name.text, other: twin.name.text };
    return [problem("value-changes-nothing", value.name.at, facts, twin.name.at)];
  });
}

function signature(choice: Choice, value: ChoiceValue, recipe: Recipe, onlys: readonly Only[]): string {
  const made = recipeFor(recipe, { values: [{ choice: choice.name.text, value: value.name.text }] });
  const standing = onlys
    .map((only, i) => ({ only, i }))
    .filter(({ only }) => only.choice.text === choice.name.text && only.values.some((v) => v.text === value.name.text));
  return JSON.stringify(
    [made.overall, made.sizes.map(({ sum }) => sum), made.pieces, standing.map(({ i }) => i)],
    plainly,
  );
}

/** Without places and source texts; fractions as texts. */
function plainly(key: string, value: unknown): unknown {
  if (key === "at") return undefined;
  return typeof value === "object" && value !== null && "toFraction" in value
    ? (value as { toFraction(): string }).toFraction()
    : value;
}

/** Sizes that follow from each other in a circle once a value has changed them. */
function circles(choice: Choice, recipe: Recipe): Problem[] {
  if (checkSizeCircles(recipe).length > 0) return [];
  return choice.values.flatMap((value) =>
    checkSizeCircles(recipeFor(recipe, { values: [{ choice: choice.name.text, value: value.name.text }] })),
  );
}

/** Variants in which no line stands any more. */
function ofNothing(recipe: Recipe): Problem[] {
  if (recipe.stand.every(({ only }) => only === undefined)) return [];
  const empty = variantsOf(recipe).find((variant) => recipeFor(recipe, variant).stand.length === 0);
  const at = recipe.stand[0]?.only?.at;
  return empty && at ? [problem("variant-of-nothing", at, { variant: empty.name })] : [];
}

function oneSlug(recipe: Recipe): Problem[] {
  const variants = variantsOf(recipe);
  const at = recipe.choices.find(({ name }) => name.text !== "finish")?.at ?? recipe.offered[0]?.at;
  return variants.flatMap((variant, i) => {
    const twin = variants[variants.findIndex(({ slug }) => slug === variant.slug)];
    if (!twin || twin === variant || !at || variants.slice(0, i).filter((v) => v.slug === variant.slug).length > 1)
      return [];
    return [problem("variants-of-one-slug", at, { slug: variant.slug, one: twin.name, other: variant.name })];
  });
}
