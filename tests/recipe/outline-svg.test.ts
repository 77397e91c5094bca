import { describe, expect, test } from "vitest";
import { toldWith, workedWith } from "../item/demo-tried.ts";

const matter = (more = "") => `
overall: fit x fit x fit
pieces:
  arm: 1x10, outline arm.svg${more}
stand:
  arm: arm, upright, facing left, at left, at front, at bottom
`;

/** A sheet of 9 x 9 in, ten units an inch, y down. */
const sheet = (body: string, size = 'width="9in" height="9in" viewBox="0 0 90 90"') =>
  `<svg xmlns="http://www.w3.org/2000/svg" ${size}>\n${body}\n</svg>`;

/** Square inches of the drawing: the volume of a 3/4 board over its thickness. */
function areaOf(svg: string): number {
  const [piece] = workedWith(matter(", wood at least 1/16"), { "arm.svg": svg }).pieces;
  return (piece?.volume ?? 0) / 0.75;
}
const sizeOf = (svg: string) =>
  workedWith(matter(", wood at least 1/16"), { "arm.svg": svg }).pieces.map((p) => [
    Number(p.length),
    Number(p.width),
  ])[0];
const told = (svg: string) => toldWith(matter(), { "arm.svg": svg });

describe("an outline drawn beside the recipe is read in true size", () => {
  const cases: readonly (readonly [string, string, number])[] = [
    ["a square path, 9 x 9 = 81", '<path d="M0 0h90v90H0z"/>', 81],
    ["absolute lines, half of 9 x 9", '<path d="M 0,0 L 90,0 L 90,90 Z"/>', 40.5],
    ["a rect, 4 x 3 = 12", '<rect x="10" y="10" width="40" height="30"/>', 12],
    ["a rect with corners of 1, 12 - (4 - pi)", '<rect width="40" height="30" rx="10"/>', 12 - (4 - Math.PI)],
    ["a circle of radius 2, 4 pi", '<circle cx="40" cy="40" r="20"/>', 4 * Math.PI],
    ["an ellipse 3 x 1, 3 pi", '<ellipse cx="40" cy="40" rx="30" ry="10"/>', 3 * Math.PI],
    ["a polygon, 1/2 x 8 x 6", '<polygon points="0,0 80,0 0,60"/>', 24],
    [
      "an arc for a corner of 3, 81 - 9 (1 - pi/4)",
      '<path d="M0 0h90v60a30 30 0 0 1-30 30H0z"/>',
      81 - 9 * (1 - Math.PI / 4),
    ],
    ["arc flags without blanks", '<path d="M0 0h90v60a30 30 0 01-30 30H0z"/>', 81 - 9 * (1 - Math.PI / 4)],
    ["a quadratic bow, 2/3 x 8 x 2 (Archimedes)", '<path d="M0 40Q40 0 80 40z"/>', (2 / 3) * 8 * 2],
    ["the same with a smooth second half", '<path d="M0 40Q20 20 40 40T80 40V60H0z"/>', 16],
    ["cubic and smooth cubic in half turn symmetry", '<path d="M0 40C10 20 30 20 40 40S70 60 80 40V80H0z"/>', 32],
    ["a cut-out, 81 - pi", '<path d="M0 0h90v90H0zM55 45a10 10 0 1 0-20 0a10 10 0 1 0 20 0z"/>', 81 - Math.PI],
    ["moved and halved, 81 / 4", '<g transform="translate(10 20) scale(.5)"><path d="M0 0h90v90H0z"/></g>', 81 / 4],
    ["turned, still 12", '<rect width="40" height="30" transform="rotate(30 20 15)"/>', 12],
    ["stretched circle, pi x 4 x 2", '<circle cx="20" cy="40" r="20" transform="scale(2 1)"/>', 8 * Math.PI],
  ];
  test.each(cases)("%s", (_, body, area) => {
    expect(Math.abs(areaOf(sheet(body)) / area - 1)).toBeLessThan(0.001);
  });

  test("millimetres: 228.6 mm are 9 in", () => {
    const [length = 0, width = 0] =
      sizeOf(sheet('<path d="M0 0h9v9h-9z"/>', 'width="228.6mm" height="228.6mm" viewBox="0 0 9 9"')) ?? [];
    expect(length).toBeCloseTo(9, 12);
    expect(width).toBeCloseTo(9, 12);
  });

  test("without a viewBox a unit is a pixel of 1/96 in (CSS Values and Units)", () => {
    const [length = 0] = sizeOf(sheet('<path d="M0 0h480v480h-480z"/>', 'width="9in" height="9in"')) ?? [];
    expect(length).toBeCloseTo(5, 12);
  });

  test("what is drawn in defs or a title is no outline", () => {
    expect(areaOf(sheet('<title>Arm</title><defs><circle r="5"/></defs><rect width="40" height="30"/>'))).toBeCloseTo(
      12,
      9,
    );
  });
});

describe("a drawing that is no outline", () => {
  const cases: readonly (readonly [string, string, string])[] = [
    [
      "is open",
      sheet('<path d="M0 0h90v60"/>'),
      "arm.svg:2:1 svg-open the line of this <path> is not closed: it ends at 9, 3, 10.8167 from where it starts.",
    ],
    ["has letters in it", sheet("<text>Arm</text>"), "arm.svg:2:1 svg-thing <text> is nothing that a saw can follow."],
    [
      "has no size",
      sheet('<path d="M0 0h9v9z"/>', 'width="90" height="90"'),
      'arm.svg:1:1 svg-no-size this drawing doesn\'t say how large it is: its width is "90", its height "90".',
    ],
    [
      "is stretched",
      sheet('<path d="M0 0h9v9z"/>', 'width="9in" height="8in" viewBox="0 0 9 9"'),
      "arm.svg:1:1 svg-stretched this drawing is stretched: 9 x 8 shows 9 x 9 units.",
    ],
    [
      "has a viewBox of three numbers",
      sheet('<path d="M0 0h9v9z"/>', 'width="9in" height="9in" viewBox="0 0 9"'),
      'arm.svg:1:1 svg-view-box the viewBox "0 0 9" is not four numbers with a width and a height above 0.',
    ],
    ["has nothing in it", sheet(""), "arm.svg:1:1 svg-lines nothing is drawn here."],
    [
      "has a path of letters",
      sheet('<path d="M0 0h90 90x"/>'),
      'arm.svg:2:1 svg-numbers the numbers of this <path> can\'t be read from "x" on.',
    ],
    [
      "is moved by words",
      sheet('<g transform="up(3)"><circle r="3"/></g>'),
      'arm.svg:2:1 svg-transform the transform "up(3)" can\'t be read.',
    ],
    [
      "is too long",
      sheet(`<path d="M0 0${"h1".repeat(260_000)}"/>`),
      "arm.svg:1:1 svg-too-long this drawing has 520109 letters; 500000 is the most that is read.",
    ],
  ];
  test.each(cases)("%s", (_, svg, says) => {
    expect(told(svg)).toContain(says);
  });

  test("is cut short or no drawing: `svg-broken` and `svg-not-one`", () => {
    expect(told("<svg><g></svg>").join()).toContain("svg-broken");
    expect(told("<html></html>").join()).toContain("svg-not-one");
    expect(told("").join()).toContain("svg-");
  });
});
