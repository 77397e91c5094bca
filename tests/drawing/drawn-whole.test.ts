// What isn't wood: panes, plates and ropes stand in every drawing that they belong in, and hide nothing that they let through.
import { describe, expect, test } from "vitest";
import { drawCoatedView } from "../../src/drawing/coated-view.ts";
import type { Drawing } from "../../src/drawing/drawing.ts";
import { drawExploded, moveApart } from "../../src/drawing/exploded-view.ts";
import { lineOf } from "../../src/drawing/extras.ts";
import { drawMeasuredView } from "../../src/drawing/measured-view.ts";
import { drawPanel } from "../../src/drawing/panel-drawing.ts";
import { differentPanels } from "../../src/drawing/panel-space.ts";
import { binderSheet } from "../../src/drawing/sheet.ts";
import { hasPicture, stepFor } from "../../src/drawing/step-extras.ts";
import { drawStep, findScene } from "../../src/drawing/step-picture.ts";
import { formatSvg } from "../../src/drawing/svg.ts";
import { seenExtra, seenParts } from "../../src/drawing/visibility.ts";
import { demoItem, demoItems, sixteenths } from "./demo.ts";

const frame = demoItem("raked-cold-frame");
const arm = demoItem("hanging-basket-arms");
const ladder = demoItem("stall-price-ladder");

const tones = (drawing: Drawing): ReadonlySet<string> =>
  new Set(drawing.marks.flatMap((mark) => (mark.kind === "region" ? [mark.tone.kind] : [])));
const textOf = (drawing: Drawing): string =>
  drawing.marks.flatMap((mark) => (mark.kind === "text" ? [mark.text] : [])).join(" ");
const stepsOf = (item: typeof frame) =>
  item.sections.flatMap((section) => section.steps.map((step) => ({ section, step })));

describe("a pane", () => {
  test("is a tint that lets through what is behind it, in the looks, the measured view, the exploded view and on its panel", () => {
    const [lid] = differentPanels(frame);
    if (lid === undefined) throw new Error("the frame has a lid");
    const views = [
      drawCoatedView(frame),
      drawMeasuredView(frame, sixteenths),
      drawExploded(frame),
      drawPanel(frame, lid, sixteenths, binderSheet),
    ];
    for (const drawing of views) {
      expect([drawing.id, tones(drawing).has("pane")]).toEqual([drawing.id, true]);
      expect(formatSvg(drawing)).toMatch(/class="d-pane"[^>]*fill-opacity="0?\.45"/);
    }
  });

  test("takes nothing from what is seen of the boards under it", () => {
    const { picture } = moveApart(frame);
    expect(picture.panes.regions.length).toBeGreaterThan(0);
    const without = { ...frame, fittings: [] };
    const seen = (item: typeof frame) => seenParts(findLook(item)).reduce((sum, part) => sum + part.seen, 0);
    const findLook = (item: typeof frame) => {
      const last = stepsOf(item).at(-1);
      if (last === undefined) throw new Error("no step");
      return findScene(item, last.section, last.step).picture;
    };
    expect(seen(frame)).toBeCloseTo(seen(without), 6);
  });
});

describe("fittings in steps", () => {
  const placed = demoItems.flatMap((item) =>
    item.fittings
      .filter(({ solid }) => solid !== undefined)
      .map((fitting) => [`${item.slug} ${fitting.id}`, item, fitting] as const),
  );

  test("some of the demo's fittings have a place", () => {
    expect(placed.map(([name]) => name)).toEqual(["hanging-basket-arms plate", "raked-cold-frame lid/pane"]);
  });

  test.each(placed)(
    "%s is put on in the step that names it: off its seat, with an arrow, 30 % of it seen, and told",
    (_, item, fitting) => {
      const found = stepsOf(item).find(({ step }) => step === stepFor(item, fitting));
      if (found === undefined) throw new Error("no step");
      const { section, step } = found;
      expect(step.text.markdown.toLowerCase()).toMatch(new RegExp(`${lineOf(fitting)}|${fitting.fitting.name}`));
      const { picture, extras } = findScene(item, section, step);
      const { seen, whole } = seenExtra(picture, lineOf(fitting));
      expect(seen / whole).toBeGreaterThan(0.3);
      const [entry] = extras.entries;
      expect(Math.hypot(...(entry?.by.get(fitting.id) ?? [0, 0, 0]))).toBeGreaterThan(0.5);
      const drawing = drawStep(item, step);
      expect(drawing.marks.some((mark) => mark.kind === "arrowhead" && mark.size >= 1.6)).toBe(true);
      expect(textOf(drawing)).toContain(`Put on now: ${lineOf(fitting)}`);
      expect(drawing.description).toContain(`Put on now: ${lineOf(fitting)}`);
    },
  );

  test("a plate on the back turns the view, and says so", () => {
    const step = stepsOf(arm).find(({ step }) => arm.fittings.some((fitting) => stepFor(arm, fitting) === step))?.step;
    expect(step && textOf(drawStep(arm, step))).toMatch(/Turned: seen from the back/);
  });

  test("in an exploded view it stands off its seat, with a line to it", () => {
    const { picture, by } = moveApart(arm);
    const plate = picture.extras.find(({ stuff }) => stuff === "fitting");
    expect(plate?.by[1]).toBeGreaterThan(1);
    expect(by.get("arm") ?? by.get("arm/1")).not.toEqual(plate?.by);
    const paths = drawExploded(arm).marks.flatMap((mark) =>
      mark.kind === "lines" && mark.line === "path" ? mark.chains : [],
    );
    expect(paths.length).toBeGreaterThan(0);
  });
});

describe("a rope", () => {
  test("stands in the exploded view with its knots; where wood hides it its middle line is drawn", () => {
    const drawing = drawExploded(ladder);
    const rods = ladder.cords.reduce((sum, cord) => sum + cord.tube.length, 0);
    expect(moveApart(ladder).picture.extras).toHaveLength(rods);
    const hidden = drawing.marks.flatMap((mark) => (mark.kind === "lines" && mark.line === "path" ? mark.chains : []));
    // Behind each of five planks on two sides.
    expect(hidden.length).toBeGreaterThanOrEqual(10);
  });

  test("is drawn strong and told in the step that threads it, and there is no picture of a step that adds nothing", () => {
    const pictures = stepsOf(ladder).filter(({ step }) => hasPicture(ladder, step));
    const threading = pictures.filter(({ step }) =>
      textOf(drawStep(ladder, step)).includes("Put on now: hanging rope"),
    );
    expect(threading).toHaveLength(1);
    expect(pictures.map(({ step }) => step.shown.length > 0 || step === threading[0]?.step)).not.toContain(false);
  });
});

test("edges of what is painted black are pale, so that they are seen on it; those of bare wood are ink", () => {
  const kinds = (drawing: Drawing) =>
    new Set(drawing.marks.flatMap((mark) => (mark.kind === "lines" ? [mark.line] : [])));
  expect(kinds(drawCoatedView(demoItem("raked-cold-frame", "black"))).has("pale")).toBe(true);
  expect(kinds(drawCoatedView(frame)).has("pale")).toBe(false);
});
