// Solids of members -> where they touch and where two are in one place.
import { contactOf } from "../geometry/contact.ts";
import { nearPairs } from "../geometry/near-pairs.ts";
import { isClash, overlapOf } from "../geometry/overlap.ts";
import type { Solid } from "../geometry/solid.ts";
import { inInches } from "../geometry/tolerance.ts";
import type { Contact, Overlap } from "./item.ts";

/** One contact for each flat patch; overlaps of more than 1 mm3 and 0.05 mm. Both in the order of the members. */
export function neighboursOf(members: readonly { readonly id: string; readonly solid: Solid }[]): {
  contacts: Contact[];
  overlaps: Overlap[];
} {
  const contacts: Contact[] = [];
  const overlaps: Overlap[] = [];
  for (const [i, j] of nearPairs(
    members.map((m) => m.solid),
    inInches.touch,
  )) {
    const [a, b] = [members[i], members[j]];
    if (!a || !b) throw new Error(`no members ${i} and ${j} among ${members.length}`);
    for (const { area, normal, loops } of contactOf(a.solid, b.solid).patches) {
      contacts.push({ a: a.id, b: b.id, area, normal, patch: loops[0] ?? [] });
    }
    const overlap = overlapOf(a.solid, b.solid);
    if (isClash(overlap)) overlaps.push({ a: a.id, b: b.id, ...overlap });
  }
  return { contacts, overlaps };
}
