// A name that is not known -> the known name the maker most likely meant.

/** Single-letter changes, insertions, deletions and swaps of neighbours that turn a into b. */
export function editDistance(a: string, b: string): number {
  let before: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      let d = Math.min((last[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1, (last[j - 1] ?? 0) + same);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) d = Math.min(d, (before[j - 2] ?? 0) + 1);
      row.push(d);
    }
    before = last;
    last = row;
  }
  return last[b.length] ?? 0;
}

/** `2 x 4` for `2x4`: the same but for its blanks. */
const isSpacedOut = (a: string, b: string): boolean => a.replace(/\s/g, "") === b.replace(/\s/g, "");

/** The nearest of the names, if at most a third of its letters (and at least one) differ; the first of equals. Case does not count, nor do blanks alone. */
export function nearest(name: string, names: Iterable<string>): string | undefined {
  const from = name.toLowerCase();
  let best: { name: string; distance: number } | undefined;
  for (const candidate of names) {
    const to = candidate.toLowerCase();
    const distance = isSpacedOut(from, to) ? Math.min(1, editDistance(from, to)) : editDistance(from, to);
    const allowed = Math.max(1, Math.floor(Math.max(from.length, candidate.length) / 3));
    if (
      distance <= allowed &&
      distance < Math.max(from.length, candidate.length) &&
      distance < (best?.distance ?? Infinity)
    )
      best = { name: candidate, distance };
  }
  return best?.name;
}
