// `loads:` -> each load over the boards that bear it: how heavy, and where its middle stands.
import type { Vec3 } from "../geometry/shape.ts";
import { type Problem, problem } from "../problems/problem.ts";
import type { Load } from "../recipe/recipe.ts";
import { isFar } from "../units/side.ts";
import type { Member, WorkedLoad } from "./item.ts";
import type { Placing } from "./placed.ts";

/** Members whose upper sides are within this of each other are one level; inches. */
const oneLevel = 1 / 32;

type Standing = Pick<Member, "id" | "solid">;

/** Loads whose members can't be told are problems and left out. */
export function workLoads(
  loads: readonly Load[],
  placing: Placing,
  members: readonly Standing[],
): { readonly loads: readonly WorkedLoad[]; readonly problems: readonly Problem[] } {
  const problems: Problem[] = [];
  const byId = new Map(members.map((member) => [member.id, member]));
  const worked = loads.flatMap((load): WorkedLoad[] => {
    const found = placing.find(load.on, undefined);
    if ("code" in found) {
      problems.push(found);
      return [];
    }
    const bearing = found.flatMap(({ id }) => byId.get(id) ?? []);
    const levels = levelsOf(bearing);
    const facts = { name: load.name.text, on: load.on.text };
    if (levels.length === 0) problems.push(problem("load-on-nothing", load.on.at, facts));
    if (levels.length > 1 && !load.on.each) {
      const each = `each ${load.on.text}`;
      problems.push(problem("load-levels", load.on.at, { ...facts, levels: levels.length, each }));
      return [];
    }
    const places = levels.flatMap((level) => placesOn(level, load));
    const pounds = load.pounds.valueOf();
    return [{ name: load.name.text, pounds, total: pounds * places.length, places }];
  });
  return { loads: worked, problems };
}

/** The members by the height of their upper sides, the lowest level first. */
function levelsOf(members: readonly Standing[]): readonly (readonly Standing[])[] {
  const levels: Standing[][] = [];
  for (const member of [...members].sort((a, b) => topOf(a) - topOf(b))) {
    const level = levels.at(-1);
    const last = level?.at(-1);
    if (level && last && topOf(member) - topOf(last) < oneLevel) level.push(member);
    else levels.push([member]);
  }
  return levels;
}

const topOf = ({ solid }: Standing): number => solid.box.max[2];

/** Along the longer level direction each load has an equal share; `centred` and a side put all of them in one place. */
function placesOn(level: readonly Standing[], { count, where }: Load): WorkedLoad["places"] {
  const on = level.map(({ id }) => id);
  const lo = (axis: 0 | 1): number => Math.min(...level.map(({ solid }) => solid.box.min[axis]));
  const hi = (axis: 0 | 1): number => Math.max(...level.map(({ solid }) => solid.box.max[axis]));
  const box = [
    [lo(0), hi(0)],
    [lo(1), hi(1)],
  ] as const;
  const top = Math.max(...level.map(topOf));
  const middle = [(box[0][0] + box[0][1]) / 2, (box[1][0] + box[1][1]) / 2] as const;
  const along = box[0][1] - box[0][0] >= box[1][1] - box[1][0] ? 0 : 1;
  return Array.from({ length: count }, (_, i) => {
    const at: [number, number, number] = [middle[0], middle[1], top];
    if (where === undefined) at[along] = box[along][0] + ((i + 1 / 2) / count) * (box[along][1] - box[along][0]);
    else if (where !== "centred") {
      const axis = where === "left" || where === "right" ? 0 : 1;
      at[axis] = box[axis][isFar(where) ? 1 : 0];
    }
    return { at: at as Vec3, on };
  });
}
