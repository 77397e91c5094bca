// The results of pure functions, kept in memory under a hash of what they were made from.
import { createHash } from "node:crypto";

/** A hash of texts in their order; the lengths keep ["ab", "c"] and ["a", "bc"] apart. */
export function hashOf(...texts: readonly string[]): string {
  const hash = createHash("sha256");
  for (const text of texts) hash.update(`${text.length}:`).update(text);
  return hash.digest("hex");
}

/**
 * A pure function that answers at once what it was asked before. It keeps the answers of the last two rounds only:
 * `turn` ends a round, so what a watched recipe no longer says is let go.
 */
export class Remembered<Answer> {
  #now = new Map<string, Answer>();
  #before = new Map<string, Answer>();

  answer(key: string, compute: () => Answer): Answer {
    const known = this.#now.get(key) ?? this.#before.get(key) ?? compute();
    this.#now.set(key, known);
    return known;
  }

  turn(): void {
    this.#before = this.#now;
    this.#now = new Map();
  }
}
