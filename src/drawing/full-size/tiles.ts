// A pattern and the room of a page -> its tiles: windows that overlap, with marks that meet again where two are joined.
import type { Mark, Paper } from "../drawing.ts";
import { marksIn, type Window } from "./clip-marks.ts";
import { turnedMarks } from "./placed-marks.ts";
import { type Template, templateType } from "./template.ts";

export type Room = { readonly width: number; readonly height: number };

/** One page's worth of a pattern. `column` and `row` count from 0 at its upper left, as it lies on the page. */
export type Tile = {
  readonly template: Template;
  readonly column: number;
  readonly row: number;
  readonly columns: number;
  readonly rows: number;
  readonly turned: boolean;
  /** In the pattern as it lies on the page. */
  readonly window: Window;
  readonly marks: readonly Mark[];
};

/** Two neighbours share a band this wide, mm; they are cut or folded along its middle. */
export const overlap = 10;

/** The tiles of a pattern as it is asked to lie; "either" is the way that takes fewer of them, upright where both take as many. */
export function tilesOf(template: Template, room: Room, way: "either" | "upright" | "turned"): readonly Tile[] {
  if (way !== "either") return tilesLying(template, room, way === "turned");
  const upright = tilesLying(template, room, false);
  const turned = tilesLying(template, room, true);
  return turned.length < upright.length ? turned : upright;
}

function tilesLying(template: Template, room: Room, turned: boolean): readonly Tile[] {
  const [width, height] = turned ? [template.height, template.width] : [template.width, template.height];
  const own = turned ? turnedMarks(template.marks, template.width) : template.marks;
  const across = starts(width, room.width);
  const down = starts(height, room.height);
  const seams = seamsOf(across, down, { width, height }, room);
  const windows = down.flatMap((top, row) =>
    across.map((left, column) => ({
      column,
      row,
      window: { left, top, width: Math.min(room.width, width - left), height: Math.min(room.height, height - top) },
    })),
  );
  const texts = spreadTexts(
    own,
    windows.map(({ window }) => window),
  );
  return windows.flatMap(({ column, row, window }, i): Tile[] => {
    const drawn = [
      ...marksIn(
        own.filter(({ kind }) => kind !== "text"),
        window,
      ),
      ...(texts[i] ?? []),
    ];
    if (drawn.length === 0) return [];
    const marks = [...drawn, ...marksIn(seams, window)];
    return [{ template, column, row, columns: across.length, rows: down.length, turned, window, marks }];
  });
}

/** Where each window starts: as many as are needed, all but the last as large as the room. */
function starts(length: number, room: number): readonly number[] {
  const count = length <= room + 1e-6 ? 1 : Math.ceil((length - overlap - 1e-6) / (room - overlap));
  return Array.from({ length: count }, (_, i) => i * (room - overlap));
}

/** A text that no window holds whole is moved by the least into the one that holds its anchor. */
function spreadTexts(marks: readonly Mark[], windows: readonly Window[]): Mark[][] {
  const held: Mark[][] = windows.map(() => []);
  for (const mark of marks) {
    if (mark.kind !== "text") continue;
    const whole = windows.map((window) => marksIn([mark], window));
    if (whole.some((one) => one.length > 0)) {
      whole.forEach((one, i) => {
        held[i]?.push(...one);
      });
      continue;
    }
    const shifted = windows.flatMap((window, i) => {
      const moved = intoWindow(mark, window);
      return moved === undefined ? [] : [{ i, ...moved }];
    });
    const [best] = shifted.sort((a, b) => a.by - b.by);
    if (best) held[best.i]?.push(best.mark);
  }
  return held;
}

type Text = Extract<Mark, { kind: "text" }>;

/** Tried step by step along the line of the text, either way, up to the length of a page. */
function intoWindow(text: Text, window: Window): { readonly mark: Mark; readonly by: number } | undefined {
  const turn = ((text.turn ?? 0) * Math.PI) / 180;
  for (let by = 0; by < 300; by += 2) {
    for (const sign of [1, -1]) {
      const step = sign * by;
      const at: Paper = [text.at[0] + step * Math.cos(turn), text.at[1] - step * Math.sin(turn)];
      const [mark] = marksIn([{ ...text, at }], window);
      if (mark) return { mark, by };
    }
  }
  return undefined;
}

/**
 * Along every seam its cutting line, and two diamonds with the seam's number. They are drawn in the pattern's own place, so
 * that both neighbours carry them and lie true when the diamonds cover each other.
 */
function seamsOf(across: readonly number[], down: readonly number[], size: Room, room: Room): Mark[] {
  const middle = (start: number): number => start + overlap / 2;
  const numbers = new Map<string, number>();
  const numberOf = (key: string): string => {
    const known = numbers.get(key) ?? numbers.size + 1;
    numbers.set(key, known);
    return String(known);
  };
  const upright = across.slice(1).flatMap((left, i) =>
    down.flatMap((top, row) => {
      const end = Math.min(top + room.height, size.height);
      return seam([middle(left), top], [middle(left), end], numberOf(`${i} across ${row}`));
    }),
  );
  const level = down.slice(1).flatMap((top, i) =>
    across.flatMap((left, column) => {
      const end = Math.min(left + room.width, size.width);
      return seam([left, middle(top)], [end, middle(top)], numberOf(`${i} down ${column}`));
    }),
  );
  return [...upright, ...level];
}

const diamond = 2.5;

function seam(from: Paper, to: Paper, number: string): Mark[] {
  const along = (part: number): Paper => [from[0] + (to[0] - from[0]) * part, from[1] + (to[1] - from[1]) * part];
  const isUpright = from[0] === to[0];
  const spots = [along(0.25), along(0.75)];
  return [
    { kind: "lines", line: "path", chains: [[from, to]] },
    {
      kind: "lines",
      line: "dimension",
      chains: spots.flatMap(([u, v]) => [
        [
          [u - diamond, v],
          [u, v - diamond],
          [u + diamond, v],
          [u, v + diamond],
          [u - diamond, v],
        ],
        [
          [u - diamond, v],
          [u + diamond, v],
        ],
        [
          [u, v - diamond],
          [u, v + diamond],
        ],
      ]),
    },
    ...spots.map(
      ([u, v]): Mark => ({
        kind: "text",
        at: isUpright ? [u + 1.2, v - diamond - 0.8] : [u + diamond + 1, v - 1],
        text: number,
        size: templateType,
        anchor: "start",
        strong: true,
      }),
    ),
  ];
}
