// Moving apart: every seat opens along its own normal, and nothing moves that need not.
import { expect, test } from "vitest";
import { explode, singly, unitsOf } from "../../src/drawing/explode.ts";
import type { Vec3 } from "../../src/geometry/shape.ts";
import type { Contact } from "../../src/item/item.ts";
import { corral, rack } from "./demo.ts";

const touch = (a: string, b: string, normal: Vec3): Contact => ({ a, b, area: 1, normal, patch: [] });

test("leg, rail, leg in a row with a gap of 2: the legs move 2 out, the rail stays", () => {
  const by = explode(
    [touch("left", "rail", [1, 0, 0]), touch("right", "rail", [-1, 0, 0])],
    singly(["left", "rail", "right"]),
    2,
  );
  expect(by.get("left")).toEqual([-2, 0, 0]);
  expect(by.get("rail")).toEqual([0, 0, 0]);
  expect(by.get("right")).toEqual([2, 0, 0]);
});

test("a lid on two of three boxes goes up; the box that touches nothing stays", () => {
  const contacts = [touch("one", "lid", [0, 0, 1]), touch("two", "lid", [0, 0, 1])];
  const by = explode(contacts, singly(["one", "two", "three", "lid"]), 5);
  expect((by.get("lid") as Vec3)[2] - (by.get("one") as Vec3)[2]).toBe(5);
  expect(by.get("three")).toEqual([0, 0, 0]);
});

test("boards that lie on each other in a ring are not torn: the ring ends, the others open", () => {
  const ring = [touch("a", "b", [0, 0, 1]), touch("b", "c", [0, 0, 1]), touch("c", "a", [0, 0, 1])];
  const by = explode(ring, singly(["a", "b", "c"]), 1);
  const opened = ring.filter(({ a, b }) => (by.get(b) as Vec3)[2] - (by.get(a) as Vec3)[2] >= 1);
  expect(opened.length).toBe(2);
});

test.each([corral, rack])("$title: between panels and loose boards every seat opens by at least the gap", (item) => {
  const units = unitsOf(item, new Set([item.panels[0]?.name ?? ""]), 2);
  const unitOf = new Map(units.flatMap((unit) => unit.members.map((id) => [id, unit.name] as const)));
  const by = explode(item.contacts, units, 6);
  let opened = 0;
  for (const { a, b, normal } of item.contacts) {
    if (unitOf.get(a) === unitOf.get(b)) continue;
    const [from, to] = [by.get(a) as Vec3, by.get(b) as Vec3];
    const apart = normal.reduce((sum, part, k) => sum + part * ((to[k] as number) - (from[k] as number)), 0);
    expect(apart).toBeGreaterThanOrEqual(6 - 1e-9);
    opened += 1;
  }
  expect(opened).toBeGreaterThan(20);
});

test("the corral's panel that is opened: its two legs move 2 out along the panel, its rails stay together", () => {
  const units = unitsOf(corral, new Set(["front-face"]), 2);
  const inner = units.find((unit) => unit.name === "front-face")?.inner;
  expect(inner?.get("front-face/legs/1")).toEqual([-2, 0, 0]);
  expect(inner?.get("front-face/legs/2")).toEqual([2, 0, 0]);
  expect(inner?.get("front-face/rails/3")).toEqual([0, 0, 0]);
});
