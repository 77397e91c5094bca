// Pieces in one strip of a board with bad stretches -> whether the clear ones find clear wood, and where each lies.
import type { Laid } from "./fill.ts";
import type { Job, Kind } from "./job.ts";
import { isMitred } from "./mitre-line.ts";
import type { Line, LineItem } from "./strip-contents.ts";

/** More counts than this below a filling are not gone through: it then counts as one that doesn't fit. */
const mostStates = 20_000;

type Last = { readonly end: number; readonly i: number; readonly at: number };

/**
 * In a strip `room` long: clear pieces lie within one of the clear stretches, the others anywhere, all as square blanks. What ends
 * soonest with its last piece of any kind leaves the most for the next: so the soonest end of each set of counts is enough to know.
 */
export class ClearLine implements Line {
  readonly kinds: readonly number[];
  readonly #items: readonly LineItem[];
  readonly #pieces: readonly Kind[];
  readonly #clear: readonly (readonly [number, number])[];
  readonly #room: number;
  /** What a slanted end's longer kerf takes on either side. */
  readonly #spare: readonly number[];
  readonly #kerf: number;
  readonly #known = new Map<string, Last>();

  constructor(job: Job, items: readonly LineItem[], clear: readonly (readonly [number, number])[], room: number) {
    this.kinds = items.map(({ kind }) => kind);
    this.#items = items;
    this.#pieces = this.kinds.map((kind) => job.kinds[kind] as Kind);
    this.#clear = clear;
    this.#spare = this.#pieces.map(({ ends }) => {
      const steepest = Math.max(...ends.map(Math.abs));
      return Math.ceil(job.kerf * (1 / Math.cos((steepest * Math.PI) / 180) - 1) - 1e-9);
    });
    this.#room = room;
    this.#kerf = job.kerf;
  }

  fits(counts: Int32Array): boolean {
    let states = 1;
    for (const count of counts) states *= count + 1;
    return states <= mostStates && this.#last(counts).end <= this.#room;
  }

  laid(counts: Int32Array): Laid[] {
    const left = counts.slice();
    const laid: Laid[] = [];
    for (;;) {
      const { i, at } = this.#last(left);
      if (i < 0) return laid.reverse();
      const { ends, width } = this.#pieces[i] as Kind;
      // A slanted end's lower corner may stand behind its blank's.
      const corner = isMitred({ ends }) ? Math.max(0, Math.tan((ends[0] * Math.PI) / 180) * width) : 0;
      const { kind, quarter } = this.#items[i] as LineItem;
      laid.push({ kind, turned: false, flipped: false, ...(quarter ? { quarter } : {}), at: at + corner });
      left[i] = (left[i] as number) - 1;
    }
  }

  #last(counts: Int32Array): Last {
    const key = counts.join();
    const known = this.#known.get(key);
    if (known) return known;
    const none = counts.every((count) => count === 0);
    let best: Last = { end: none ? -this.#kerf : Number.POSITIVE_INFINITY, i: -1, at: 0 };
    for (let i = 0; i < counts.length; i++) {
      if (counts[i] === 0) continue;
      counts[i] = (counts[i] as number) - 1;
      const at = this.#start(this.#last(counts).end + this.#kerf + (this.#spare[i] as number), i);
      counts[i] = (counts[i] as number) + 1;
      const end = at + (this.#items[i] as LineItem).long + (this.#spare[i] as number);
      if (end < best.end) best = { end, i, at };
    }
    this.#known.set(key, best);
    return best;
  }

  /** The first place at or behind this one where the piece may begin. */
  #start(from: number, i: number): number {
    if (!this.#pieces[i]?.clear) return from;
    const { long } = this.#items[i] as LineItem;
    const stretch = this.#clear.find(([start, end]) => Math.max(from, start) + long <= end);
    return stretch ? Math.max(from, stretch[0]) : Number.POSITIVE_INFINITY;
  }
}
