// Pieces in one strip, some as wide as it with slanted ends -> how long they are together, turned and turned over so that ends share a cut or nest.
import type { Laid } from "./fill.ts";
import type { Job, Kind } from "./job.ts";
import type { Line, LineItem } from "./strip-contents.ts";

/** How a piece may lie: how far its left and right end lean, upper edge less lower edge. */
type Lie = { readonly left: number; readonly right: number; readonly turned: boolean; readonly flipped: boolean };
const square: Lie = { left: 0, right: 0, turned: false, flipped: false };

/** More arrangements than this are not gone through: the pieces then count as square blanks. */
const mostStates = 20_000;

export const isMitred = ({ ends }: { readonly ends: readonly number[] }): boolean => ends.some((end) => end !== 0);

/**
 * In a strip `size` wide and `room` long. Pieces in order take their mid-line lengths and, between two of them, half the difference of
 * the leans that meet and a kerf that is longer the steeper it runs. A piece narrower than its strip is sawn off square first.
 */
export class MitreLine implements Line {
  readonly kinds: readonly number[];
  readonly #items: readonly LineItem[];
  readonly #pieces: readonly Kind[];
  readonly #size: number;
  readonly #room: number;
  readonly #kerf: number;
  /** Kinds that lie in the same ways cost the same between their neighbours: they are counted together. */
  readonly #ways: readonly (readonly Lie[])[];
  readonly #wayOf: readonly number[];
  readonly #middles: readonly number[];
  readonly #known = new Map<string, { readonly cost: number; readonly way: number; readonly lie: Lie }>();

  constructor(job: Job, items: readonly LineItem[], size: number, room: number) {
    this.kinds = items.map(({ kind }) => kind);
    this.#items = items;
    this.#pieces = this.kinds.map((kind) => job.kinds[kind] as Kind);
    this.#size = size;
    this.#room = room;
    this.#kerf = job.kerf;
    const full = (i: number): boolean => items[i]?.wide === size && !items[i]?.quarter;
    const lies = this.#pieces.map((piece, i) => (full(i) ? liesOf(piece) : [square]));
    const names = lies.map((each) => each.map(({ left, right }) => `${left} ${right}`).join());
    const different = [...new Set(names)];
    this.#ways = different.map((name) => lies[names.indexOf(name)] as Lie[]);
    this.#wayOf = names.map((name) => different.indexOf(name));
    this.#middles = items.map(({ long }, i) => (full(i) ? middleOf(this.#pieces[i] as Kind) : long));
  }

  /** What pieces take at least, kerf included, in whole numbers: for a bound. */
  get leastSizes(): number[] {
    return this.#middles.map((middle) => Math.max(1, Math.floor(middle + 1e-9)) + this.#kerf);
  }

  fits(counts: Int32Array): boolean {
    const ways = this.#waysOf(counts);
    let sum = 0;
    for (let i = 0; i < counts.length; i++) sum += (counts[i] as number) * (this.#middles[i] as number);
    if (sum > this.#room + 1e-7) return false;
    if (!this.#few(ways)) return this.#blanks(counts) <= this.#room;
    return sum + this.#rest(ways, undefined).cost <= this.#room + 1e-7;
  }

  /** The pieces of a filling in their best order. */
  laid(counts: Int32Array): Laid[] {
    const left = counts.slice();
    const ways = this.#waysOf(counts);
    const few = this.#few(ways);
    const laid: Laid[] = [];
    let before: Lie | undefined;
    let middle = 0;
    let blank = 0;
    while (ways.some((count) => count > 0)) {
      const { way, lie } = few
        ? this.#rest(ways, before)
        : { way: ways.findIndex((count) => count > 0), lie: undefined };
      const i = left.findIndex((count, k) => count > 0 && this.#wayOf[k] === way);
      left[i] = (left[i] as number) - 1;
      ways[way] = (ways[way] as number) - 1;
      const { kind, long, quarter } = this.#items[i] as LineItem;
      const turns = quarter ? ({ quarter } as const) : {};
      if (lie === undefined) {
        const [first = square] = this.#ways[way] as readonly Lie[];
        laid.push({ kind, turned: false, flipped: false, ...turns, at: blank - Math.min(0, first.left) });
        blank += long + this.#kerf;
        continue;
      }
      middle += this.#between(before, lie);
      laid.push({ kind, turned: lie.turned, flipped: lie.flipped, ...turns, at: middle - lie.left / 2 });
      middle += this.#middles[i] as number;
      before = lie;
    }
    return laid.map((each) => this.#corner(each));
  }

  /** A narrower mitred piece lies as its square blank; its own lower corner may stand behind the blank's. */
  #corner(laid: Laid): Laid {
    const piece = this.#pieces[this.kinds.indexOf(laid.kind)] as Kind;
    if (piece.width === this.#size || !isMitred(piece)) return laid;
    return { ...laid, at: laid.at - Math.min(0, -leanOf(piece.ends[0], piece.width)) };
  }

  #few(ways: Int32Array): boolean {
    let states = 1;
    for (const count of ways) states *= count + 1;
    return states <= mostStates;
  }

  #blanks(counts: Int32Array): number {
    let sum = -this.#kerf;
    for (let i = 0; i < counts.length; i++)
      sum += (counts[i] as number) * ((this.#items[i] as LineItem).long + this.#kerf);
    return sum;
  }

  #waysOf(counts: Int32Array): Int32Array {
    const ways = new Int32Array(this.#ways.length);
    for (let i = 0; i < counts.length; i++) {
      const way = this.#wayOf[i] as number;
      ways[way] = (ways[way] as number) + (counts[i] as number);
    }
    return ways;
  }

  /** The least that joints and ends take behind a piece that lies so, and the next piece of that order. */
  #rest(ways: Int32Array, before: Lie | undefined): { readonly cost: number; readonly way: number; readonly lie: Lie } {
    if (ways.every((count) => count === 0)) return { cost: Math.abs(before?.right ?? 0) / 2, way: -1, lie: square };
    const key = `${ways.join()}:${before?.right ?? "start"}`;
    const known = this.#known.get(key);
    if (known) return known;
    let best = { cost: Number.POSITIVE_INFINITY, way: -1, lie: square };
    for (let way = 0; way < ways.length; way++) {
      if (ways[way] === 0) continue;
      ways[way] = (ways[way] as number) - 1;
      for (const lie of this.#ways[way] as readonly Lie[]) {
        const cost = this.#between(before, lie) + this.#rest(ways, lie).cost;
        if (cost < best.cost - 1e-9) best = { cost, way, lie };
      }
      ways[way] = (ways[way] as number) + 1;
    }
    this.#known.set(key, best);
    return best;
  }

  #between(before: Lie | undefined, { left }: Lie): number {
    if (before === undefined) return Math.abs(left) / 2;
    const steepest = Math.max(Math.abs(before.right), Math.abs(left));
    return Math.abs(before.right - left) / 2 + this.#kerf * Math.hypot(1, steepest / this.#size);
  }
}

const leanOf = (degrees: number, width: number): number =>
  degrees === 0 ? 0 : Math.tan((degrees * Math.PI) / 180) * width;

/** Length along the middle: the square blank less half of what each end leans. */
export const middleOf = ({ length, width, ends }: Kind): number =>
  length - ends.reduce((sum, end) => sum + Math.abs(leanOf(end, width)), 0) / 2;

/** Half a turn changes the ends about, turning over mirrors both; a face that must show is not turned over. */
function liesOf({ ends, width, showFace }: Kind): Lie[] {
  const [left, right] = [-leanOf(ends[0], width) || 0, leanOf(ends[1], width)];
  const lies: Lie[] = [];
  for (const flipped of showFace ? [false] : [false, true]) {
    for (const turned of [false, true]) {
      const [a, b] = turned ? [right, left] : [left, right];
      const lie = { left: (flipped ? -a : a) || 0, right: (flipped ? -b : b) || 0, turned, flipped };
      if (!lies.some((each) => same(each.left, lie.left) && same(each.right, lie.right))) lies.push(lie);
    }
  }
  return lies;
}

const same = (a: number, b: number): boolean => Math.abs(a - b) < 1e-9;
