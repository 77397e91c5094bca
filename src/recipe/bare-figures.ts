// A line of prose -> the numbers with a unit that stand in it as plain text and would go stale.

/** `index` counts from 0; `sum` is how the figure would be written between braces. */
export type BareFigure = { readonly text: string; readonly index: number; readonly sum: string };

const number = /^[(~±+-]*((?:\d|\.\d|[½⅓⅔¼¾⅛⅜⅝⅞])[\d.,/½⅓⅔¼¾⅛⅜⅝⅞-]*)/;
const units: ReadonlySet<string> = new Set(
  `in inch inches " ″ ” '' mm cm ft foot feet ' ′ lb lbs pound pounds kg oz deg degree degrees °`.split(" "),
);
/** After these the "in" of "rails 2 in the middle" is no unit. */
const notAfterIn: ReadonlySet<string> = new Set(
  "front place line order turn between the a an each all both any one two your this that it its their to".split(" "),
);

export function findBareFigures(line: string): BareFigure[] {
  const words = [...line.matchAll(/[^\s]+/g)].map((m) => {
    const lead = /^[*_`]*/.exec(m[0])?.[0].length ?? 0;
    return { text: m[0].slice(lead).replace(/[*_`]+$/, ""), index: m.index + lead };
  });
  return words.flatMap((word, i) => {
    const digits = number.exec(word.text);
    if (!digits) return [];
    const amount = (digits[1] ?? "").replace(/[-.,]+$/, "");
    const glued = trimmed(word.text.slice(digits[0].length));
    const next = words[i + 1]?.text ?? "";
    if (units.has(glued))
      return [
        { text: trimmed(word.text), index: word.index, sum: `${amount}${/^[a-z]/.test(glued) ? " " : ""}${glued}` },
      ];
    if (glued !== "" || word.text.length > digits[0].length || !units.has(trimmed(next))) return [];
    const after = words[i + 2]?.text ?? "";
    if (next === "in" && (notAfterIn.has(trimmed(after).toLowerCase()) || /^\d/.test(after))) return [];
    return [{ text: `${word.text} ${trimmed(next)}`, index: word.index, sum: `${amount} ${trimmed(next)}` }];
  });
}

const trimmed = (word: string): string => word.replace(/[.,;:!?)*]+$/, "");
