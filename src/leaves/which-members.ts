// Some of a piece's members -> which they are, in the words of the recipe: "rails 1, 3 and 5 of each face".
import { listed } from "../drawing/paper-text.ts";
import type { Item, Member } from "../item/item.ts";

/** One phrase for each line that they stand in; panels of a kind that have the same ones share it. */
export function whichMembers(item: Item, ids: readonly string[]): string {
  const meant = new Set(ids);
  const chosen = item.members.filter(({ id }) => meant.has(id));
  const lines = new Map<string, { readonly first: Member; readonly byPlace: Map<string, number[]> }>();
  for (const member of chosen) {
    const key = `${member.panelKind ?? member.assemblyKind ?? ""}|${member.group}`;
    const line = lines.get(key) ?? { first: member, byPlace: new Map<string, number[]>() };
    const place = member.panel ?? member.assembly ?? "";
    line.byPlace.set(place, [...(line.byPlace.get(place) ?? []), member.number]);
    lines.set(key, line);
  }
  return listed(
    [...lines.values()].flatMap(({ first, byPlace }) => {
      const kind = first.panelKind ?? first.assemblyKind;
      const phrases = [...byPlace].map(([place, numbers]) => ({ place, says: numbersOf(item, first, place, numbers) }));
      const isAlike = phrases.every(({ says }) => says === phrases[0]?.says);
      if (kind === undefined) return phrases.map(({ says }) => says);
      if (!isAlike || phrases.length < countOf(item, kind))
        return phrases.map(({ place, says }) => `${says} of the ${place.replaceAll("-", " ")}`);
      return [`${phrases[0]?.says} of ${phrases.length > 1 ? "each" : "the"} ${kind}`];
    }),
  );
}

/** "rails 1, 3 and 5", or the line's name alone where all of it is meant. */
function numbersOf(item: Item, { group }: Member, place: string, numbers: readonly number[]): string {
  const name = group.replaceAll("-", " ");
  const all = item.members.filter((one) => one.group === group && (one.panel ?? one.assembly ?? "") === place).length;
  if (all === numbers.length) return name;
  const one = numbers.length === 1 ? name.replace(/([^s])s$/, "$1") : name;
  return `${one} ${listed([...numbers].sort((a, b) => a - b).map(String))}`;
}

const countOf = (item: Item, kind: string): number =>
  new Set(item.members.flatMap((m) => ((m.panelKind ?? m.assemblyKind) === kind ? [m.panel ?? m.assembly] : []))).size;
