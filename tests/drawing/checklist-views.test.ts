// How things are shown apart and going in, asked of every item of the demo. Sources: Agrawala et al. 2003, Heiser et al. 2004 (principles
// of assembly instructions), Li et al. 2008 (exploded views): abstracts and excerpts read.
import { describe, expect, test } from "vitest";
import { moveApart } from "../../src/drawing/exploded-view.ts";
import { drawStep, findScene } from "../../src/drawing/step-picture.ts";
import { isSeen, seenStretches } from "../../src/drawing/visibility.ts";
import { comesPast } from "../../src/drawing/way-in.ts";
import type { Vec3 } from "../../src/geometry/shape.ts";
import { add, dot, length, subtract, times } from "../../src/geometry/vector.ts";
import { demoItems, guideItem } from "./demo.ts";
import { slantedItems } from "./slanted.ts";

const items = [...demoItems, ...slantedItems];
const still: Vec3 = [0, 0, 0];

const steps = items.flatMap((item) =>
  item.sections.flatMap((section) =>
    section.steps
      .filter((step) => step.shown.length > 0)
      .map((step) => [`${item.slug} step ${step.number}`, { item, section, step }] as const),
  ),
);

describe("steps", () => {
  test.each(steps)(
    "2, 10: %s: what goes in goes one straight way, and nothing that is there stands in it",
    (_, one) => {
      const { entries } = findScene(one.item, one.section, one.step);
      const there = one.item.members.filter(({ id }) => one.step.there.includes(id));
      for (const { members, by, goesIn } of entries) {
        if (!goesIn) continue;
        const ways = members.map(({ id }) => by.get(id) as Vec3);
        for (const way of ways) expect(way).toEqual(ways[0]);
        for (const { id, solid } of members) {
          for (const other of there) {
            const clear = comesPast(solid, by.get(id) as Vec3, other.solid);
            expect([id, other.id, clear]).toEqual([id, other.id, true]);
          }
        }
      }
    },
  );

  test.each(steps)("4: %s: a seat of what goes in is seen, or its fasteners or its way are drawn to it", (_, one) => {
    const { entries, picture } = findScene(one.item, one.section, one.step);
    const arrows = drawStep(one.item, one.step).marks.filter((mark) => mark.kind === "arrowhead").length;
    for (const { members, by, goesIn } of entries) {
      if (!goesIn) continue;
      const own = new Set(members.map(({ id }) => id));
      const there = new Set(one.step.there);
      const seats = one.item.contacts.filter(
        ({ a, b }) => (own.has(a) && there.has(b)) || (own.has(b) && there.has(a)),
      );
      const seen = seats.some(({ a, b, normal, patch }) => {
        const middle = times(
          patch.reduce((sum, p) => add(sum, p), still),
          1 / patch.length,
        );
        // Just off the seat that stays, and just off the face that comes, on the side of the room between them.
        const out = own.has(a) ? times(normal, -0.02) : times(normal, 0.02);
        return (
          isSeen(picture, add(middle, out)) ||
          isSeen(picture, add(add(middle, by.get(own.has(a) ? a : b) as Vec3), times(out, -1)))
        );
      });
      expect(seen || arrows > 0).toBe(true);
    }
  });

  test.each(items.map((item) => [item.slug, item] as const))(
    "6, 7: %s: what a step has put in place is there, whole and still, in the next one",
    (_, item) => {
      for (const { steps } of item.sections) {
        steps.forEach((step, i) => {
          const next = steps[i + 1];
          if (next === undefined) return;
          expect([...step.there, ...step.shown].filter((id) => !next.there.includes(id))).toEqual([]);
        });
      }
    },
  );
});

describe.each(items.map((item) => [item.slug, item] as const))("exploded view of %s", (_, item) => {
  const { picture, units } = moveApart(item);
  const by = new Map(picture.bodies.map((body) => [body.member.id, body.by]));
  const unitOf = new Map(units.flatMap((unit, i) => unit.members.map((id) => [id, i] as const)));

  test("6: a panel that isn't opened moves as one", () => {
    for (const { members, inner } of units) {
      if ([...inner.values()].some((step) => length(step) > 1e-9)) continue;
      const first = by.get(members[0] as string) as Vec3;
      for (const id of members) expect(length(subtract(by.get(id) as Vec3, first))).toBeLessThan(1e-9);
    }
  });

  test("10, 12: along a seat's own normal what lies farther out moves farther out, never back through its seat", () => {
    for (const { a, b, normal } of item.contacts) {
      if (unitOf.get(a) === unitOf.get(b)) continue;
      expect([a, b, dot(subtract(by.get(b) as Vec3, by.get(a) as Vec3), normal) > -1e-9]).toEqual([a, b, true]);
    }
  });

  test("11: no unit that moves could stay nearer by its whole step: each step along an axis opens a seat there", () => {
    units.forEach((unit, i) => {
      const step = by.get(unit.members[0] as string) as Vec3;
      step.forEach((part, axis) => {
        if (Math.abs(part) < 1e-9 || unit.inner.size > 0) return;
        const opens = item.contacts.some(({ a, b, normal }) => {
          const [from, to] = [unitOf.get(a), unitOf.get(b)];
          if ((from !== i && to !== i) || from === to || Math.abs(normal[axis] as number) < 0.3) return false;
          const other = by.get(from === i ? b : a) as Vec3;
          return Math.abs((other[axis] as number) - part) > 1e-9;
        });
        const travels = item.contacts.some(({ a, b }) => {
          const [from, to] = [unitOf.get(a), unitOf.get(b)];
          if ((from !== i && to !== i) || from === to) return false;
          const other = by.get(from === i ? b : a) as Vec3;
          return Math.abs((other[axis] as number) - part) < 1e-9;
        });
        expect([unit.name, axis, opens || travels]).toEqual([unit.name, axis, true]);
      });
    });
  });
});

test("13: a line that runs behind a board is left out there and drawn beside it", () => {
  const { picture } = moveApart(guideItem("06-standing-up"));
  const [board] = picture.bodies;
  if (board === undefined) throw new Error("no board");
  const alone = { ...picture, bodies: [board] };
  const { toViewer, right } = picture.view;
  const middle = add(board.member.solid.centroid, board.by);
  const line = (nearer: number, half: number) => {
    const at = add(middle, times(toViewer, nearer));
    return seenStretches(alone, add(at, times(right, -half)), add(at, times(right, half)));
  };
  expect(line(100, 0.01)).toHaveLength(1);
  expect(line(-100, 0.01)).toEqual([]);
  const wide = board.member.solid.edges.map(({ a }) => dot(subtract(a, board.member.solid.centroid), right));
  const half = 2 * Math.max(...wide.map(Math.abs));
  expect(line(100, half)).toHaveLength(1);
  expect(line(-100, half)).toHaveLength(2);
});
