// Fittings and ropes of an item -> bodies that are drawn with its boards: solid ones, and panes that are seen through.
import { contactOf } from "../geometry/contact.ts";
import type { Vec3 } from "../geometry/shape.ts";
import { type Solid, solidOf } from "../geometry/solid.ts";
import { inInches } from "../geometry/tolerance.ts";
import type { Contact, Cord, Item, Member, PlacedFitting } from "../item/item.ts";

export type Extra = {
  /** As its line in the recipe is called: "pane", "hanging-rope". */
  readonly name: string;
  readonly stuff: "rope" | "fitting" | "pane";
  readonly solid: Solid;
  readonly by: Vec3;
};

const still: Vec3 = [0, 0, 0];

/** Ropes are thin on paper: rods of eight sides do, and keep the drawing light. */
const coarse = { ...inInches, chord: 1 / 64 };

export const ropeExtras = (cord: Cord, by: Vec3 = still): readonly Extra[] =>
  cord.tube.map((rod) => ({ name: cord.name, stuff: "rope", solid: solidOf(rod, coarse), by }));

/** The name of a fitting's line, without its panel and its number. */
export const lineOf = ({ id }: PlacedFitting): string =>
  id
    .split("/")
    .filter((part) => !/^\d+$/.test(part))
    .at(-1) ?? id;

/** What its yard entry calls clear or glass is seen through. */
const isClear = ({ fitting }: PlacedFitting): boolean => /\b(clear|glass)\b/i.test(`${fitting.name} ${fitting.words}`);

/** A line's name as it is said: "hanging rope". */
export const spoken = (name: string): string => name.replaceAll("-", " ");

/** None for a loose kit: it has no place. */
export const fittingExtras = (fitting: PlacedFitting, by: Vec3 = still): readonly Extra[] =>
  fitting.solid === undefined
    ? []
    : [{ name: lineOf(fitting), stuff: isClear(fitting) ? "pane" : "fitting", solid: fitting.solid, by }];

/** All of them where they stand. */
export const extrasOf = (item: Pick<Item, "cords" | "fittings">): readonly Extra[] => [
  ...item.cords.flatMap((cord) => ropeExtras(cord)),
  ...item.fittings.flatMap((fitting) => fittingExtras(fitting)),
];

/** Where fittings lie on members: as contacts, each from the member into the fitting. */
export const fittingSeats = (
  fittings: readonly PlacedFitting[],
  members: readonly Pick<Member, "id" | "solid">[],
): readonly Contact[] =>
  fittings.flatMap(({ id, solid }) =>
    solid === undefined
      ? []
      : members.flatMap((member) =>
          contactOf(member.solid, solid).patches.map(
            ({ area, normal, loops }): Contact => ({ a: member.id, b: id, area, normal, patch: loops[0] ?? [] }),
          ),
        ),
  );
