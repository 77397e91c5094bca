// A recipe's choices -> every variant: one value of each choice, with a slug and a name.
import { slug } from "../units/slug.ts";
import type { Choice, Recipe } from "./recipe.ts";

/** One value of each choice. */
export type Chosen = {
  /** Made of the values that differ from the standard ones; of the standard variant the first finish, or "unfinished". */
  readonly slug: string;
  readonly name: string;
  readonly standard: boolean;
  readonly values: readonly { readonly choice: string; readonly value: string }[];
  /** The finish scheme; absent where the recipe has none. */
  readonly finish?: string;
  /** The slug of the values other than the finish that differ: variants of one form have the same boards. Empty for the standard form. */
  readonly form: string;
  /** The values other than the finish, in words; empty where there is no other choice. */
  readonly formName: string;
};

/** A recipe with more variants than this is refused. */
export const mostVariants = 200;

type Offers = Pick<Recipe, "choices">;

export const countVariants = ({ choices }: Offers): number =>
  choices.reduce((count, choice) => count * choice.values.length, 1);

/** "with lid", "without lid"; other values speak for themselves. */
export const valueWords = (choice: string, value: string): string =>
  value === "with" || value === "without" ? `${value} ${choice}` : value;

/** Whether a maker's words mean this variant: its slug, or its name. */
export const isCalled = (words: string, { slug: known, name }: Pick<Chosen, "slug" | "name">): boolean =>
  [known, slug(name)].includes(slug(words));

/**
 * Every variant, the standard one first. The order is that of the choices as written, the values of the last one changing
 * fastest. Not for recipes with more than `mostVariants`.
 */
export function variantsOf({ choices }: Offers): readonly [Chosen, ...Chosen[]] {
  const combinations = choices.reduce<readonly (readonly number[])[]>(
    (before, choice) => before.flatMap((taken) => choice.values.map((_, i) => [...taken, i])),
    [[]],
  );
  const [first = [], ...others] = combinations;
  return [chosen(choices, first), ...others.map((taken) => chosen(choices, taken))];
}

function chosen(choices: readonly Choice[], taken: readonly number[]): Chosen {
  const values = choices.map((choice, i) => {
    const index = taken[i] ?? 0;
    return { choice: choice.name.text, value: choice.values[index]?.name.text ?? "", differs: index > 0 };
  });
  const others = values.filter(({ choice }) => choice !== "finish");
  const finish = values.find(({ choice }) => choice === "finish")?.value;
  const slugOf = (some: typeof values): string =>
    some
      .filter(({ differs }) => differs)
      .map(({ choice, value }) => slug(valueWords(choice, value)))
      .join("-");
  const standard = values.every(({ differs }) => !differs);
  const words = (some: typeof values): string => some.map(({ choice, value }) => valueWords(choice, value)).join(", ");
  return {
    slug: standard ? slug(finish ?? "unfinished") : slugOf(values),
    name: values.length === 0 ? "unfinished" : words(values),
    standard,
    values: values.map(({ choice, value }) => ({ choice, value })),
    ...(finish === undefined ? {} : { finish }),
    form: slugOf(others),
    formName: words(others),
  };
}
