// The text rules of a recipe -> each row of letters as a rectangle on its board, with the room it has.
import type { Vec3 } from "../../geometry/shape.ts";
import { add, cross, dot, times } from "../../geometry/vector.ts";
import type { Written } from "../../problems/place.ts";
import { type Problem, problem } from "../../problems/problem.ts";
import type { TextRule } from "../../recipe/recipe.ts";
import { sameLength } from "../../units/length.ts";
import type { Side } from "../../units/side.ts";
import { sideToward } from "../cord/rope-holes.ts";
import { cutLength } from "../cuts/cut-length.ts";
import { blankOf, type OwnAxis, ownAxes, ownEntry, unit } from "../frame.ts";
import type { TextField, WorkedCut } from "../item.ts";
import type { PlacedMember, Placing } from "../placed.ts";
import { ownSideOf } from "../sides.ts";
import { sayingWidth, unknownLetters } from "./letter-widths.ts";

/** A side of a board as a page: the corner at its lower left as one looks at it, its two directions, and its size. */
type Page = {
  readonly side: Side;
  readonly own: OwnAxis;
  readonly corner: Vec3;
  readonly across: Vec3;
  readonly up: Vec3;
  readonly width: number;
  readonly height: number;
};

type CutsOf = ReadonlyMap<string, readonly WorkedCut[]>;

/** Fields in the order they are read in: from the top down, then from the left. */
export function textFieldsOf(
  rules: readonly TextRule[],
  placing: Placing,
  cutsOf: CutsOf,
): { fields: readonly TextField[]; problems: Problem[] } {
  const problems: Problem[] = [];
  const fields = rules.flatMap((rule): readonly TextField[] => {
    const members = placing.find(rule.of, undefined);
    const height = cutLength(rule.height, placing);
    const inside = rule.inside ? cutLength(rule.inside, placing) : 0;
    const broken = [members, height, inside].flatMap((one) => (typeof one === "object" && "code" in one ? [one] : []));
    problems.push(...broken);
    if ("code" in members || typeof height !== "number" || typeof inside !== "number") return [];
    if (height <= 0) {
      problems.push(problem("text-no-height", rule.height.at, { name: rule.name.text, height }));
      return [];
    }
    const texts = rule.sayings.length;
    if (texts > 1 && texts !== members.length) {
      problems.push(
        problem("text-count", (rule.sayings[0] ?? rule).at, { name: rule.name.text, texts, fields: members.length }),
      );
      return [];
    }
    const pages = members.map((member) => ({ member, page: pageOf(member, rule.side, placing) }));
    return [...pages].sort(inReading).flatMap(({ member, page }, i) => {
      const row = rowOn(page, member, cutsOf.get(member.id) ?? [], rule, height, inside);
      if ("code" in row) {
        problems.push(row);
        return [];
      }
      const said = rule.sayings[texts > 1 ? i : 0] ?? rule.name;
      problems.push(...sayingProblems(said, height, row.width, member));
      const says = said.text;
      const { side, across, up } = page;
      return [
        {
          name: rule.name.text,
          member: member.id,
          side,
          across,
          up,
          height,
          ...row,
          says,
          ways: rule.ways,
          at: rule.at,
        },
      ];
    });
  });
  return { fields, problems };
}

type Paged = { readonly member: PlacedMember; readonly page: Page };

const inReading = (a: Paged, b: Paged): number => {
  const down = b.page.corner[2] + b.page.up[2] * b.page.height - (a.page.corner[2] + a.page.up[2] * a.page.height);
  return Math.abs(down) > sameLength ? down : dot(a.page.corner, a.page.across) - dot(b.page.corner, a.page.across);
};

/** The named side, or the good side, seen from outside: what is most nearly upright (or, lying, runs to the back) is up. */
function pageOf(member: PlacedMember, named: Side | undefined, placing: Placing): Page {
  const blank = blankOf(member);
  const panel = placing.turned(member);
  const { show } = member.lie;
  const good = ownAxes.find((axis) => member.lie[axis] === show.axis) ?? "thickness";
  const { own, far } = named ? ownSideOf(member, panel, named) : { own: good, far: shows(member, good) };
  const out = times(blank[own], far ? 1 : -1);
  const flat = ownAxes.filter((axis) => axis !== own) as [OwnAxis, OwnAxis];
  const rise = (axis: OwnAxis) => Math.abs(blank[axis][2]) * 2 + Math.abs(blank[axis][1]);
  const [upAxis, acrossAxis] = rise(flat[0]) > rise(flat[1]) ? flat : ([flat[1], flat[0]] as const);
  const isUp = Math.abs(blank[upAxis][2]) > sameLength ? blank[upAxis][2] > 0 : blank[upAxis][1] > 0;
  const up = times(blank[upAxis], isUp ? 1 : -1);
  const across = cross(up, out);
  const start = ownAxes.reduce((point, axis) => {
    const way = axis === own ? out : axis === upAxis ? times(up, -1) : times(across, -1);
    return dot(way, blank[axis]) > 0 ? add(point, times(blank[axis], ownEntry(blank.size, axis))) : point;
  }, blank.origin);
  return {
    side: named ?? sideToward(out),
    own,
    corner: start,
    across,
    up,
    width: ownEntry(blank.size, acrossAxis),
    height: ownEntry(blank.size, upAxis),
  };
}

/** Whether the good side is at the high end of that axis of the board. */
const shows = (member: PlacedMember, own: OwnAxis): boolean => {
  const { show } = member.lie;
  return dot(blankOf(member)[own], unit(show.axis, show.sign)) > 0;
};

/** Where the row starts and how wide it is; it stands on the middle of the side's height. */
function rowOn(
  page: Page,
  member: PlacedMember,
  cuts: readonly WorkedCut[],
  rule: TextRule,
  height: number,
  inside: number,
): { readonly corner: Vec3; readonly width: number; readonly free: number } | Problem {
  if (height > page.height + sameLength) {
    const facts = { member: member.id, height, room: page.height, side: page.side };
    return problem("text-too-tall", rule.height.at, facts, member.at);
  }
  const holes = rule.betweenHoles ? holesAcross(page, member, cuts) : [];
  const middle = page.width / 2;
  const left = holes.filter((hole) => hole.at < middle - sameLength);
  const right = holes.filter((hole) => hole.at > middle + sameLength);
  if (rule.betweenHoles && (left.length === 0 || right.length === 0))
    return problem("text-no-holes", rule.at, { member: member.id, side: page.side }, member.at);
  const from = Math.max(0, ...left.map((hole) => hole.at + hole.radius));
  const to = Math.min(page.width, ...right.map((hole) => hole.at - hole.radius));
  const free = to - from;
  const width = free - 2 * inside;
  if (width <= sameLength) return problem("text-no-room", rule.at, { member: member.id, free, inside }, member.at);
  const corner = add(add(page.corner, times(page.across, from + inside)), times(page.up, (page.height - height) / 2));
  return { corner, width, free };
}

/** Whether the letters are there to be set, and whether they are as wide as their room at most. */
function sayingProblems(said: Written, height: number, room: number, member: PlacedMember): Problem[] {
  const unknown = unknownLetters(said.text);
  if (unknown.length > 0) return [problem("text-letters", said.at, { saying: said.text, unknown })];
  const width = sayingWidth(said.text, height);
  if (width <= room + sameLength) return [];
  const fits = Math.floor(((height * room) / width) * 16) / 16;
  const facts = {
    saying: said.text,
    member: member.id,
    height,
    width: Math.ceil(width * 16) / 16,
    room,
    fits,
  };
  return [problem("text-too-long", said.at, facts)];
}

/** The holes seen on this side: how far across their middles are. */
function holesAcross(page: Page, member: PlacedMember, cuts: readonly WorkedCut[]) {
  const blank = blankOf(member);
  return cuts.flatMap((cut) => {
    if (cut.kind !== "hole" || cut.axis !== page.own || cut.why !== "cut") return [];
    const centre = ownAxes.reduce(
      (point, axis, i) => (axis === cut.axis ? point : add(point, times(blank[axis], cut.at3[i] as number))),
      blank.origin,
    );
    return [{ at: dot(centre, page.across) - dot(page.corner, page.across), radius: cut.across / 2 }];
  });
}
