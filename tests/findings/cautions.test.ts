import { describe, expect, it } from "vitest";
import { cautionsFor, cautionsForUse } from "../../src/findings/cautions.ts";
import {
  cuttingOperations,
  finishingOperations,
  placingOperations,
  stepOperations,
} from "../../src/findings/operations.ts";
import { toolsOf } from "../../src/findings/tools.ts";
import { type Use, useOf } from "../../src/findings/use.ts";
import type { Item, WorkedStep } from "../../src/item/item.ts";
import { type HazardClass, hazardClasses } from "../../src/recipe/recipe.ts";
import { corral, rack } from "../leaves/worked-goods.ts";
import { inch } from "./timber.ts";

const plain: Use = {
  classes: [],
  loads: [],
  carriesPeople: false,
  anchored: false,
  hasGaps: false,
  hasRope: false,
  hasLid: false,
};

const ids = (list: readonly { readonly id: string }[]): string[] => list.map(({ id }) => id);

const withPieces = (item: Item, own: Partial<Item["pieces"][number]>): Item => ({
  ...item,
  pieces: item.pieces.map((piece) => ({ ...piece, ...own })),
});

const stepWith = (item: Item, kind: string): WorkedStep => {
  const step = item.sections
    .flatMap((section) => section.steps)
    .find((one) => one.joins.some((join) => join.driven.some(({ fastener }) => fastener.kind === kind)));
  if (!step) throw new Error(`no step drives a ${kind}`);
  return step;
};

describe("cautions", () => {
  it("strips of 1 11/16 are narrow: the push stick is called for before ripping them", () => {
    expect(ids(cautionsFor(cuttingOperations(corral[0])))).toEqual(["rip", "rip-narrow", "crosscut", "sand"]);
  });

  it("a strip of 4 in is ripped without the caution for narrow ones", () => {
    const wide = withPieces(corral[0], { width: inch("4") });
    expect(ids(cautionsFor(cuttingOperations(wide)))).toEqual(["rip", "crosscut", "sand"]);
  });

  it("a piece of 5 in is too short to hold at the saw", () => {
    expect(ids(cautionsFor(cuttingOperations(withPieces(corral[0], { length: inch("5") }))))).toContain(
      "crosscut-short",
    );
  });

  it("treated boards bring the caution about their dust and smoke before all others", () => {
    const [piece] = corral[0].pieces;
    if (!piece) throw new Error("no piece");
    const treated = withPieces(corral[0], { board: { ...piece.board, treatment: "preservative" } });
    expect(cautionsFor(cuttingOperations(treated))[0]?.id).toBe("treated-wood");
  });

  it("a step that drives pocket screws has the cautions for the jig and for the driver, in the step", () => {
    const found = cautionsFor(stepOperations(stepWith(corral[0], "pocket screw"), corral[0], true));
    expect(ids(found)).toEqual(expect.arrayContaining(["pocket-holes", "drive-screws"]));
  });

  it("a step that closes no join needs none", () => {
    const step = { ...stepWith(corral[0], "screw"), joins: [] };
    expect(stepOperations(step, corral[0], true)).toEqual([]);
  });

  it("what weighs 35 lb or more is lifted by two, at 34.9 it is not", () => {
    const step = { ...stepWith(corral[0], "screw"), joins: [] };
    const heavy = (each: number): Item => ({
      ...corral[0],
      members: corral[0].members.map((m) => ({ ...m, weight: each })),
    });
    const inHand = new Set([...step.there, ...step.shown]).size;
    expect(stepOperations(step, heavy(35 / inHand + 1e-9), false)).toEqual(["lift"]);
    expect(stepOperations(step, heavy(34.9 / inHand), false)).toEqual([]);
  });

  it("the whole is carried to its place by two from 35 lb on", () => {
    expect(placingOperations({ ...rack[0], weight: 35 })).toEqual(["lift"]);
    expect(placingOperations({ ...rack[0], weight: 34.9 })).toEqual([]);
  });

  it("a drying oil brings the oily rags, paint alone does not (29 CFR 1926.252(e); NFPA)", () => {
    expect(ids(cautionsFor(finishingOperations([corral[2]])))).toEqual(["sand", "coat", "oily-rags"]);
    const [white] = corral[1].variant.finish;
    if (!white) throw new Error("no coat");
    const painted = { ...corral[1], variant: { ...corral[1].variant, finish: [white] } };
    expect(ids(cautionsFor(finishingOperations([painted])))).toEqual(["sand", "coat"]);
  });

  const pounds = (weight: number): string => `${weight} lb`;
  const forUse = (own: Partial<Use>) => cautionsForUse({ ...plain, ...own }, pounds);

  it("class T with an anchor is to be fastened to the wall; without one it is stood on firm level ground", () => {
    expect(ids(cautionsForUse(useOf(rack[0]), pounds))).toContain("anchor-it");
    const [free] = forUse({ classes: ["T"] });
    expect(free?.id).toBe("stand-it-level");
    expect(`${free?.hazard} ${free?.avoidance}`).not.toMatch(/wall|anchor|deck/);
    expect(ids(cautionsForUse(useOf(corral[0]), pounds))).toEqual(["not-a-seat", "wet-wood"]);
  });

  it("2 loads of 15 lb are said as meant for 15 lb each, and nothing says that no load is worked out", () => {
    const [stated] = forUse({ classes: ["L"], loads: [{ name: "basket", pounds: 15, count: 2 }] });
    expect(stated?.hazard).toBe("It is meant for 15 lb each; that has not been tested.");
    expect(forUse({ classes: ["L"] })[0]?.hazard).toBe("No load has been worked out or tested for it.");
  });

  it("what holds wet soil is lined before food grows in it, what lies on a board has a liner under it", () => {
    expect(forUse({ classes: ["F", "X"] }).find(({ id }) => id === "not-food-tested")?.avoidance).toMatch(/grow food/);
    expect(forUse({ classes: ["F"] })[0]?.avoidance).toMatch(/unpacked food/);
  });

  it("what carries a person is not forbidden to be sat on", () => {
    const loads = [{ name: "grown-up", pounds: 250, count: 1 }];
    expect(forUse({ classes: ["L"], loads, carriesPeople: true })[0]?.avoidance).not.toMatch(/sit/);
  });

  it("what hangs is not told to stand on gravel; a clear panel without a lid has no stay to set", () => {
    expect(ids(forUse({ classes: ["H", "X"] }))).toEqual(["hang-it-well"]);
    expect(forUse({ classes: ["G"] })[0]?.avoidance).toBe("Do not lean on the panel.");
    expect(forUse({ classes: ["G"], hasLid: true })[0]?.avoidance).toMatch(/stay/);
  });

  it("limewash is caustic: goggles and gloves are in its caution and among the tools (NIOSH, calcium hydroxide)", () => {
    const [coat] = corral[1].variant.finish;
    if (!coat) throw new Error("no coat");
    const lime = { ...coat, finish: { ...coat.finish, kind: "limewash" as const, oilyRags: false } };
    const limed: Item = { ...corral[1], variant: { ...corral[1].variant, finish: [lime] } };
    expect(ids(cautionsFor(finishingOperations([limed])))).toEqual(["sand", "coat", "lime"]);
    expect(toolsOf([limed]).names).toEqual(expect.arrayContaining(["goggles", "waterproof gloves"]));
    expect(toolsOf([corral[1]]).names).not.toContain("goggles");
  });

  it("warnings come before cautions, cautions before notices", () => {
    const rank = { WARNING: 0, CAUTION: 1, NOTICE: 2 };
    const order = forUse({ classes: Object.keys(hazardClasses) as HazardClass[] }).map(({ signal }) => rank[signal]);
    expect(order).toEqual([...order].sort());
    expect(order.length).toBeGreaterThan(5);
  });

  it("names hazard, consequence and avoidance each as a sentence, and its source (IEC/IEEE 82079-1, statement 9)", () => {
    const all = [
      ...cautionsFor(cuttingOperations(withPieces(corral[0], { length: inch("5"), planed: true }))),
      ...cautionsFor(finishingOperations(corral)),
      ...forUse({ classes: Object.keys(hazardClasses) as HazardClass[] }),
    ];
    for (const { hazard, consequence, avoidance, source } of all) {
      for (const sentence of [hazard, consequence, avoidance]) expect(sentence).toMatch(/^[A-Z].{8,}[.]$/);
      expect(source).not.toBe("");
    }
  });
});
