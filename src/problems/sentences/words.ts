// Small turns of phrase that several sentences share.

/** Names in quotes, at most a dozen of them. */
export function quoted(names: readonly string[]): string {
  const shown = names.slice(0, 12).map((name) => `"${name}"`);
  return names.length > shown.length ? `${shown.join(", ")} or ${names.length - shown.length} more` : shown.join(", ");
}

/** The word with "a" or "an" before it, by its first letter. */
export const withArticle = (word: string): string => `${/^[aeiou]/i.test(word.replace(/^"/, "")) ? "an" : "a"} ${word}`;

/** How a section says that it builds this on the bench: `makes end, twice`. */
export const makesWords = (panel: string, times: number): string =>
  `makes ${panel}${times === 1 ? "" : times === 2 ? ", twice" : `, ${times} times`}`;

/** The nearest name as a field of a sentence, left out where there is none. */
export const near = (nearest: string | undefined): { readonly nearest?: string } =>
  nearest === undefined ? {} : { nearest };

/** A sentence in the middle of another one: its first letter small unless it stands for something, its stop left out. */
export const within = (sentence: string): string =>
  sentence.replace(/^(?![B-Z] )./, (first) => first.toLowerCase()).replace(/\.$/, "");
