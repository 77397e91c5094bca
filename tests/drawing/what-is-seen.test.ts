// Enough of everything is seen: what is moved apart, and what a step adds.
import { describe, expect, test } from "vitest";
import type { Paper } from "../../src/drawing/drawing.ts";
import { drawExploded, moveApart } from "../../src/drawing/exploded-view.ts";
import { binderSheet, phoneSheet } from "../../src/drawing/sheet.ts";
import { drawStep, findScene } from "../../src/drawing/step-picture.ts";
import { seenParts, seenShare } from "../../src/drawing/visibility.ts";
import { corral, rack } from "./demo.ts";

describe.each([corral, rack])("$title", (item) => {
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
    const { picture } = moveApart(item);
    const boxes = picture.bodies.map(({ member, by }) =>
      [0, 1, 2].map(
        (k) =>
          [
            (member.solid.box.min[k] as number) + (by[k] as number),
            (member.solid.box.max[k] as number) + (by[k] as number),
          ] as const,
      ),
    );
    boxes.forEach((a, i) => {
      for (const [j, b] of boxes.slice(i + 1).entries()) {
        const apart = a.some(([low, high], k) => low >= (b[k]?.[1] ?? 0) - 1e-6 || high <= (b[k]?.[0] ?? 0) + 1e-6);
        expect([picture.bodies[i]?.member.id, picture.bodies[i + 1 + j]?.member.id, apart]).toEqual([
          picture.bodies[i]?.member.id,
          picture.bodies[i + 1 + j]?.member.id,
          true,
        ]);
      }
    });
  });

  test("exploded: all seen regions and all hidden ones make up each board's outline, never more", () => {
    for (const { seen, whole } of seenParts(moveApart(item).picture))
      expect(seen).toBeLessThanOrEqual(whole * (1 + 1e-4) + 1e-4);
  });

  test("steps: 30 % of what is added is seen, piece by piece, and what was there keeps its place", () => {
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
          expect([step.number, mark, seenShare(own) >= 0.3]).toEqual([step.number, mark, true]);
        }
        for (const { member, by } of picture.bodies) if (!shown.has(member.id)) expect(by).toEqual([0, 0, 0]);
      }
    }
  });

  test("steps: whatever goes into something that is there has an arrow of its way in", () => {
    for (const section of item.sections) {
      for (const step of section.steps) {
        const { entries } = findScene(item, section, step);
        if (!entries.some((entry) => entry.goesIn)) continue;
        const heads = drawStep(item, step).marks.filter((mark) => mark.kind === "arrowhead" && mark.size >= 1.6);
        expect([step.number, heads.length > 0]).toEqual([step.number, true]);
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
