// Enough of everything is seen: what is moved apart, and what a step adds.
import { describe, expect, test } from "vitest";
import type { Paper } from "../../src/drawing/drawing.ts";
import { drawExploded, moveApart } from "../../src/drawing/exploded-view.ts";
import { binderSheet, phoneSheet } from "../../src/drawing/sheet.ts";
import { drawStep, findScene } from "../../src/drawing/step-picture.ts";
import { seenParts, seenShare } from "../../src/drawing/visibility.ts";
import { hullOf, isClear } from "../../src/geometry/clear-way.ts";
import { subtract } from "../../src/geometry/vector.ts";
import { demoItems } from "./demo.ts";
import { slantedItems } from "./slanted.ts";

describe.each([...demoItems, ...slantedItems])("$title", (item) => {
  test("exploded: of every panel and loose board 30 % is seen, and 55 % of some board of every piece", () => {
    const { picture, units } = moveApart(item);
    const parts = seenParts(picture);
    const of = (id: string) =>
      parts[picture.bodies.findIndex(({ member }) => member.id === id)] as (typeof parts)[number];
    for (const unit of units) expect([unit.name, seenShare(unit.members.map(of)) >= 0.3]).toEqual([unit.name, true]);
    for (const { mark, members } of item.pieces) {
      const best = Math.max(...members.map((id) => seenShare([of(id)])));
      expect([mark, best >= 0.55]).toEqual([mark, true]);
    }
  });

  test("exploded: no two boards overlap where they have moved to", () => {
    const { bodies } = moveApart(item).picture;
    bodies.forEach((a, i) => {
      for (const b of bodies.slice(i + 1)) {
        const by = subtract(a.by, b.by);
        if (by.every((step) => step === 0)) continue;
        expect([a.member.id, b.member.id, isClear(hullOf(a.member.solid), by, by, hullOf(b.member.solid))]).toEqual([
          a.member.id,
          b.member.id,
          true,
        ]);
      }
    });
  });

  test("exploded: all seen regions and all hidden ones make up each board's outline, never more", () => {
    for (const { seen, whole } of seenParts(moveApart(item).picture))
      expect(seen).toBeLessThanOrEqual(whole * (1 + 1e-4) + 1e-4);
  });

  test("steps: 30 % of what is added is seen, piece by piece, or told as hidden, and what was there keeps its place", () => {
    for (const section of item.sections) {
      for (const step of section.steps) {
        if (step.shown.length === 0) continue;
        const { picture } = findScene(item, section, step);
        const parts = seenParts(picture);
        const shown = new Set(step.shown);
        const marks = new Set(item.members.filter((member) => shown.has(member.id)).map((member) => member.mark));
        for (const mark of marks) {
          const own = parts.filter((_, i) => {
            const member = picture.bodies[i]?.member;
            return member !== undefined && member.mark === mark && shown.has(member.id);
          });
          const told = drawStep(item, step).marks.some(
            (one) => one.kind === "text" && one.text.includes("behind the others") && one.text.includes(mark),
          );
          expect([step.number, mark, seenShare(own) >= 0.3 || told]).toEqual([step.number, mark, true]);
        }
        for (const { member, by } of picture.bodies) if (!shown.has(member.id)) expect(by).toEqual([0, 0, 0]);
      }
    }
  });

  test("leaders are neither level nor upright (from memory of drawing practice): 1 degree at least", () => {
    for (const sheet of [binderSheet, phoneSheet]) {
      const leaders = drawExploded(item, sheet).marks.flatMap((mark) =>
        mark.kind === "lines" && mark.line === "dimension" ? mark.chains : [],
      );
      for (const [from, to] of leaders as (readonly [Paper, Paper])[]) {
        const turn = (Math.atan2(Math.abs(to[1] - from[1]), Math.abs(to[0] - from[0])) * 180) / Math.PI;
        expect(turn).toBeGreaterThan(1);
        expect(turn).toBeLessThan(89);
      }
    }
  });
});

describe.each([...demoItems, ...slantedItems])("$title", (item) => {
  test("steps: whatever is put against something that is there has an arrow of its way in", () => {
    for (const section of item.sections) {
      for (const step of section.steps) {
        const touches = item.contacts.some(
          ({ a, b }) =>
            (step.shown.includes(a) && step.there.includes(b)) || (step.shown.includes(b) && step.there.includes(a)),
        );
        if (!touches) continue;
        const { entries } = findScene(item, section, step);
        const heads = drawStep(item, step).marks.filter((mark) => mark.kind === "arrowhead" && mark.size >= 1.6);
        expect([step.number, entries.some((entry) => entry.goesIn), heads.length > 0]).toEqual([
          step.number,
          true,
          true,
        ]);
      }
    }
  });

  test("steps: boards that touch only each other are shown apart", () => {
    for (const section of item.sections) {
      for (const step of section.steps) {
        const isBeside = item.contacts.some(
          ({ a, b }) =>
            (step.shown.includes(a) && step.there.includes(b)) || (step.shown.includes(b) && step.there.includes(a)),
        );
        if (isBeside) continue;
        const units = new Map(item.members.map(({ id, panel }) => [id, panel ?? id]));
        const seats = item.contacts.filter(
          ({ a, b }) => step.shown.includes(a) && step.shown.includes(b) && units.get(a) !== units.get(b),
        );
        if (seats.length === 0) continue;
        const { picture } = findScene(item, section, step);
        const by = new Map(picture.bodies.map((body) => [body.member.id, body.by]));
        for (const { a, b } of seats)
          expect([step.number, a, b, by.get(a)]).not.toEqual([step.number, a, b, by.get(b)]);
      }
    }
  });
});
