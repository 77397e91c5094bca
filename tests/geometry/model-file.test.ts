// Model files: what they give, and what is told of one that can't be read.
import { expect, test } from "vitest";
import { readModel, tolerancesOf } from "../../src/geometry/model-file.ts";
import { inInches, inMillimetres } from "../../src/geometry/tolerance.ts";

const frame = { origin: [0, 0, 0], x: [1, 0, 0], y: [0, 1, 0] };
const square = [
  [0, 0],
  [2, 0],
  [2, 2],
  [0, 2],
];
const good = { id: "rail", frame, outline: square, depth: 1 };
const faultsOf = (...parts: unknown[]) => readModel({ units: "mm", model: { parts } }).faults;

test("a part with an arc, a round hole, a trim and a removal is read whole", () => {
  const part = {
    ...good,
    outline: [[0, 0], [2, 0], { mid: [1, 1], to: [0, 2] }],
    holes: [{ circle: [1, 0.5, 0.1] }],
    trims: [{ point: [0, 0, 1], normal: [0, 0, 1] }],
    removals: [{ frame, circle: [0, 0, 1], depth: 2, note: "a remark is let be" }],
  };
  const { model, faults } = readModel({ model: { parts: [part] } });
  expect(faults).toEqual([]);
  expect(model.parts[0]?.shape).toEqual({
    frame,
    outline: { kind: "path", items: [[0, 0], [2, 0], { mid: [1, 1], to: [0, 2] }] },
    holes: [{ kind: "circle", centre: [1, 0.5], radius: 0.1 }],
    depth: 1,
    trims: [{ point: [0, 0, 1], normal: [0, 0, 1] }],
    removals: [{ frame, outline: { kind: "circle", centre: [0, 0], radius: 1 }, holes: [], depth: 2 }],
  });
});

test("the unit chooses the tolerances; the inner object by itself is in mm", () => {
  expect(tolerancesOf(readModel({ parts: [good] }).model)).toBe(inMillimetres);
  expect(tolerancesOf(readModel({ units: "in", model: { parts: [good] } }).model)).toBe(inInches);
  expect(readModel({ units: "ft", parts: [good] }).faults).toEqual(['"units": expected "mm" or "in", found "ft"']);
});

test("a file that is no model is told so", () => {
  expect(readModel(null).faults).toEqual(['"parts": expected a list, found nothing']);
  expect(readModel([1]).faults).toEqual(['"parts": expected a list, found nothing']);
  expect(readModel({ model: { parts: "none" } }).faults).toEqual(['"parts" of "model": expected a list, found "none"']);
});

test("every fault of every part is told at once, and the good parts are still read", () => {
  const bad = { id: "slat", frame: { ...frame, x: [2, 0, 0] }, outline: square.slice(0, 2), depth: 0 };
  const { model, faults } = readModel({ parts: [good, bad, { ...good, id: 7 }, good] });
  expect(faults).toEqual([
    '"frame" of part "slat": x and y should be one long and at right angles',
    '"outline" of part "slat": an outline needs three sides, found 2',
    '"depth" of part "slat": expected a number above 0, found 0',
    '"id" of entry 3 in "parts": expected a name in quotes, found 7',
    'part "rail": there are two parts of this name',
  ]);
  expect(model.parts.map((part) => part.id)).toEqual(["rail"]);
});

test("points, circles and trims that can't be read are told with what was found", () => {
  expect(faultsOf({ ...good, outline: [[0, 0], [1], [1, 1]] })).toEqual([
    'entry 2 in "outline" of part "rail": expected a point [x, y], found [1]',
  ]);
  expect(faultsOf({ ...good, holes: [{ circle: [0, 0, -1] }] })).toEqual([
    '"circle" of entry 1 in "holes" of part "rail": the radius should be above 0, found -1',
  ]);
  expect(faultsOf({ ...good, trims: [{ point: [0, 0, 0], normal: [0, 0, 0] }] })).toEqual([
    'entry 1 in "trims" of part "rail": the normal has no direction',
  ]);
  expect(faultsOf({ ...good, removals: [{ frame, outline: square }] })).toEqual([
    '"depth" of entry 1 in "removals" of part "rail": expected a number above 0, found nothing',
  ]);
});
