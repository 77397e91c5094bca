// Saw settings and lengths of slanted work against published tables: worked from solids in place, never from the same formula.
import { describe, expect, test } from "vitest";
import { type SawAngles, sawAngles, secondEnd } from "../../src/geometry/saw-settings.ts";
import type { Vec3 } from "../../src/geometry/shape.ts";
import { cross, dot, subtract, unit } from "../../src/geometry/vector.ts";
import type { PlacedMember, Slant } from "../../src/item/placed.ts";
import { inches } from "../../src/units/length.ts";
import { worked } from "../item/bench-yard.ts";
import { member, placed } from "../item/placing.ts";
import { type Answer, given, type Published, published, testPublished } from "./published.ts";

const radians = (degrees: number): number => (degrees * Math.PI) / 180;
const degrees = (angle: number): number => (angle * 180) / Math.PI;

/** A plane's normal in a board's own frame. */
const inBoard = (slant: Slant, normal: Vec3): Vec3 => [
  dot(normal, slant.length),
  dot(normal, slant.width),
  dot(normal, slant.thickness),
];

/**
 * Two neighbouring walls of a ring of n, their faces p degrees from level: each lies along the ring, its width runs out and up.
 * The plane between them is the one that mirrors the one wall into the other.
 */
function ringSettings(sides: number, pitch: number): { miter: number; bevel: number } {
  const wall = (turn: number) => {
    const [c, s] = [Math.cos(turn), Math.sin(turn)];
    const length: Vec3 = [-s, c, 0];
    const width: Vec3 = [Math.cos(radians(pitch)) * c, Math.cos(radians(pitch)) * s, Math.sin(radians(pitch))];
    return { length, width, thickness: cross(length, width) };
  };
  const [one, next] = [wall(0), wall((2 * Math.PI) / sides)];
  const mirror = unit(subtract(next.thickness, one.thickness));
  const normal: Vec3 = pitch === 0 ? unit(subtract(next.width, one.width)) : mirror;
  const setting = sawAngles([dot(normal, one.length), dot(normal, one.width), dot(normal, one.thickness)]);
  return { miter: Math.abs(setting.mitre), bevel: Math.abs(setting.bevel) };
}

/** A 2x4 leg from the floor to a level above, leaning to the right and to the back; its lean may be told as a slope. */
function leg(height: number, right: string, back?: string): PlacedMember {
  const placing = placed(`
overall: fit x fit x ${height}
pieces:
  stud: 2x4
stand:
  leg: 1 stud, upright, facing front, from bottom to top, at left, at front, leaning ${right} right${back ? `, leaning ${back} back` : ""}
`);
  return member(placing, "leg");
}

const slantOf = ({ slant }: PlacedMember): Slant => {
  if (slant === undefined) throw new Error("the board is not slanted");
  return slant;
};

/** Along the board, through its origin, between its two end planes; they are parallel. */
const axisLength = ({ trims, length, origin }: Slant): number => {
  const places = trims.map(({ point, normal }) => dot(subtract(point, origin), normal) / dot(length, normal));
  return Math.max(...places) - Math.min(...places);
};

/** The two long edges between the end planes, the shorter first. */
function edgesOf(slant: Slant): readonly [number, number] {
  const spans = [0, slant.size[1]].map((w) => {
    const ends = slant.trims.map(({ point, normal }) => {
      const [l, n] = inBoard(slant, normal);
      return (dot(normal, subtract(point, slant.origin)) - n * w) / l;
    });
    return Math.max(...ends) - Math.min(...ends);
  });
  return [Math.min(...spans), Math.max(...spans)];
}

/** A 2x6 between two legs that meet at the top, set so low that the room at its lower edge is `long`. */
function brace(long: number, lean: number): PlacedMember {
  const down = long / 2 / Math.tan(radians(lean));
  const placing = placed(`
overall: fit x fit x 60
pieces:
  stud: 2x4
  plank: 2x6
panels:
  trestle:
    size: fit x height
    legs: 2 stud, mirrored, leaning ${lean} deg inward, from bottom to top, touching at top
    brace: 1 plank, level, between legs, bottom at ${(60 - down).toFixed(9)}
stand:
  frame: trestle, at front
`);
  return member(placing, "frame/brace");
}

/** A rail of a square frame mitred in its face, so wide over all that the opening is `inside`. */
function rail(inside: number, strip: number): PlacedMember {
  const over = inside + 2 * strip;
  const placing = placed(`
overall: ${over} x 3/4 x ${over}
pieces:
  strip: 1x6, ripped to ${strip}
panels:
  frame:
    size: width x height
    stiles: 2 strip, upright, spread left to right, mitred with rails 1 and rails 2
    rails: 2 strip, level, spread bottom to top, mitred with stiles 1 and stiles 2
stand:
  frame: frame, at front
`);
  return member(placing, "frame/rails/1");
}

/** The figure that a text about a frame of this size prints. */
function frameDiagonal(width: number, height: number): number {
  const matter = `
overall: ${width} x 1 1/2 x ${height}
pieces:
  stud: 2x4
panels:
  frame:
    size: width x height
    stiles: 2 stud, upright, from bottom to top, spread left to right
    rails: 2 stud, level, between stiles, spread bottom to top
stand:
  frame: frame, at front
joins:
  rails to stiles: glue
`;
  const body = "## Make\nmakes frame\n\n1. **stiles**, **rails**, {diagonal of frame}.\n\n## Stand\n\n1. **frame**.";
  const figure = worked(matter, body).sections[0]?.steps[0]?.text.figures[0];
  if (figure?.kind !== "length") throw new Error("the text has no length");
  return inches(figure.value);
}

function answer(row: Published): Answer {
  const input = (key: string): number => given(row, key);
  const deg = (key: string): string => `${input(key)} deg`;
  switch (row.id.replace(/^trig\./, "").replace(/\.[\d.]+$/, "")) {
    case "hopper":
      return ringSettings(input("sides"), input("pitch_deg"));
    case "hopper.tilt":
      return ringSettings(input("sides"), 90 - input("tilt_deg"));
    case "leg.len":
      return axisLength(slantOf(leg(input("H"), deg("a"), input("b") === 0 ? undefined : deg("b"))));
    case "leg.res":
      return degrees(Math.acos(slantOf(leg(20, deg("a"), deg("b"))).length[2]));
    case "par": {
      const board = leg(input("H"), deg("deg"));
      return row.title.includes("blank") ? inches(board.length) : edgesOf(slantOf(board))[1];
    }
    case "trap": {
      if (row.inputs?.long !== undefined) {
        const [short, long] = edgesOf(slantOf(brace(input("long"), input("deg"))));
        expect(long).toBeCloseTo(input("long"), 6);
        return short;
      }
      const [short, long] = edgesOf(slantOf(rail(input("short"), input("w"))));
      expect(short).toBeCloseTo(input("short"), 9);
      return long;
    }
    case "brace": {
      const slant = slantOf(leg(input("rise"), `${input("run")} in ${input("rise")}`));
      return { length: axisLength(slant), angle: degrees(Math.asin(slant.length[2])) };
    }
    case "diag":
      return frameDiagonal(input("a"), input("b"));
    default:
      return undefined;
  }
}

describe("slanted work", () => testPublished(published("trig"), answer));

describe.each([5, 15, 20, 45])("a hopper of four walls placed by a recipe, %d degrees from plumb", (tilt) => {
  const wall = (name: string, run: string, side: string, neighbours: string): string =>
    `  ${name}: 1 wall, running ${run}, on edge, leaning ${tilt} deg ${side}, at ${side}, bottom at bottom, mitred with ${neighbours}`;
  const placing = placed(`
overall: 30 x 24 x fit
pieces:
  wall: 1x6
stand:
${wall("front-wall", "left to right", "front", "left-wall and right-wall")}
${wall("back-wall", "left to right", "back", "left-wall and right-wall")}
${wall("left-wall", "front to back", "left", "front-wall and back-wall")}
${wall("right-wall", "front to back", "right", "front-wall and back-wall")}
`);

  test.each(["front-wall", "back-wall", "left-wall", "right-wall"])(
    "%s is sawn at tan M = cos p tan 45, sin B = sin p sin 45 (two table-saw manuals; p from level)",
    (name) => {
      const pitch = radians(90 - tilt);
      const slant = slantOf(member(placing, name));
      expect(slant.trims).toHaveLength(2);
      const [one, other] = slant.trims.map(({ normal }) => sawAngles(inBoard(slant, normal))) as [SawAngles, SawAngles];
      for (const { mitre, bevel } of [one, other]) {
        expect(Math.abs(mitre)).toBeCloseTo(degrees(Math.atan(Math.cos(pitch))), 9);
        expect(Math.abs(bevel)).toBeCloseTo(degrees(Math.asin(Math.sin(pitch) * Math.SQRT1_2)), 9);
      }
      expect(secondEnd(one, other)).toBe("swing");
    },
  );
});
