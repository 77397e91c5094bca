import { describe, expect, test } from "vitest";
import { told, tried, worked } from "./bench-yard.ts";

/** Two faces of two legs and a rail, held 12 apart by two ties. */
const matter = `
overall: 20 x 12 x 10
pieces:
  strip: fence board, ripped to 2
panels:
  face:
    size: width x height
    legs: 2 strip, upright, from bottom to top, spread left to right
    rail: strip, level, between legs, top at top
stand:
  front-face: face, at front
  back-face: face, at back
  ties: 2 strip, flat, from front to back, on rail-top, spread left to right
joins:
  rail to legs: 2 pocket screw No. 6 x 1, back
  ties to legs: 1 screw No. 6 x 1 5/8
claims:
CLAIMS
`
  .replace("on rail-top", "on front-face")
  .replace("overall: 20 x 12 x 10", "overall: 20 x 12 x fit\nsizes:\n  tall: 10")
  .replace("width x height", "width x tall");

const plain = matter.replace(/claims:\nCLAIMS\n/, "");
const claims = (lines: string) => matter.replace("CLAIMS", lines);

const body = (over: Partial<Record<"makes" | "legs" | "rail" | "stand" | "ties", string>> = {}) => `## Make the faces
${over.makes ?? "makes face, twice"}

1. Lay the ${over.legs ?? "**legs**"} down {width} wide.
2. Screw the ${over.rail ?? "**rail**"} between them.

## Stand them up

1. Stand ${over.stand ?? "**front-face** and **back-face**"} up.
2. Screw on the ${over.ties ?? "**ties**"}; it weighs {weight}.

   Check: it is {height} high.
`;

describe("steps", () => {
  const item = worked(plain, body());

  test("count on through the sections, and a panel's are shown once for both of them", () => {
    expect(item.sections.map((s) => s.makes)).toEqual([
      { kind: "face", panels: ["front-face", "back-face"], times: 2 },
      undefined,
    ]);
    expect(
      item.sections.flatMap((s) => s.steps.map((t) => [t.number, t.adds.length, t.shown.length, t.there.length])),
    ).toEqual([
      [1, 4, 2, 0],
      [2, 2, 1, 2],
      [3, 6, 6, 0],
      [4, 2, 2, 6],
    ]);
  });

  test("close a join when its second member arrives: 2 in the shown face, then 4 under the ties", () => {
    expect(item.sections.flatMap((s) => s.steps.map((t) => t.joins.length))).toEqual([0, 2, 0, 4]);
    expect(item.joins).toHaveLength(2 * 2 + 4);
  });

  test("carry their figures: 20 wide, 10 + 5/8 high", () => {
    const [first, , , last] = item.sections.flatMap((s) => s.steps);
    expect(first?.text.figures.map((f) => f.kind === "length" && f.value.toString())).toEqual(["20"]);
    expect(last?.text.figures).toEqual([{ kind: "weight", pounds: item.weight }]);
    expect(last?.checks[0]?.figures.map((f) => f.kind === "length" && f.value.valueOf())).toEqual([10.625]);
  });
});

describe("members are named once", () => {
  test("a forgotten one, one named again, and a panel that is never stood are told at their lines", () => {
    expect(told(plain, body({ rail: "rail" }))).toEqual([
      "in-no-step 12: front-face/rail is put in place by no step of the section that makes face.",
    ]);
    expect(told(plain, body({ ties: "ties" }))).toEqual([
      "in-no-step 16: ties/1 and ties/2 are put in place by no step.",
    ]);
    expect(told(plain, body({ ties: "**ties 1** and **ties**" }))).toEqual([
      'named-twice 32: "ties" puts ties/1 in place a second time.',
    ]);
    expect(told(plain, body({ stand: "**front-face**" }))).toEqual([
      "panel-not-stood 15: back-face is made as a face, but no step stands it in place.",
    ]);
    expect(told(plain, body({ stand: "**front-face**, **back-face** and **front-face rail**" }))[0]).toMatch(
      /^named-twice 31: "front-face rail"/,
    );
  });

  test("what is no part of the panel has no place in the section that makes it", () => {
    expect(told(plain, body({ rail: "**rail** and **ties**", ties: "ties" }))).toEqual([
      "in-no-step 16: ties/1 and ties/2 are put in place by no step.",
      'not-of-panel 27: "ties" is no part of "face": it means ties/1 and ties/2.',
    ]);
  });

  test("a panel made once that stands twice is told with both numbers", () => {
    const { problems } = tried(plain, body({ makes: "makes face" }));
    expect(problems[0]).toMatchObject({ code: "made-count", found: "1", expected: "2" });
  });

  test("a recipe without a step is told once", () => {
    expect(told(plain, "")).toEqual(["no-steps 3: there is no step, so its 8 members are never put in place."]);
  });

  test("a panel no section makes is put together where it stands", () => {
    expect(told(plain, "## Build\n\n1. Put up **front-face**, **back-face** and **ties**.")).toEqual([]);
  });
});

describe("claims", () => {
  test("are true as printed: 10 + 5/8 high, 2 oz of screws and wood to the nearest ounce", () => {
    expect(told(claims("  height: 10 5/8\n  width of ties: 2"), body())).toEqual([]);
    expect(told(claims("  height: 10.6"), body())).toEqual([]);
  });

  test("false ones are told with both figures and where the true one comes from", () => {
    const { problems } = tried(claims("  height: 11"), body());
    expect(problems).toMatchObject([{ code: "claim-false", found: '11"', expected: '10 5/8"' }]);
    expect(problems[0]?.says).toBe('"height: 11" isn\'t true: it comes to 10 5/8", from front-face/legs/1 and ties/1.');
  });

  test("a count is stated as a plain number: 2 ties", () => {
    expect(told(claims("  count of ties: 2"), body())).toEqual([]);
    expect(told(claims("  count of ties: 3"), body())[0]).toMatch(/^claim-false .*: it comes to 2, from ties\.$/);
  });

  test("a weight is compared as it is printed, to a tenth of a pound", () => {
    const item = worked(plain, body());
    const tenth = Math.round(item.weight * 10) / 10;
    expect(told(claims(`  weight: ${tenth} lb`), body())).toEqual([]);
    expect(told(claims(`  weight: ${tenth + 0.1} lb`), body())[0]).toMatch(
      /^claim-false .*lb, from 8 boards of together/,
    );
  });
});
