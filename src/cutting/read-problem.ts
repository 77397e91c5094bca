// A cutting problem's JSON -> the problem in exact lengths and money, or every fault of it in plain words.
import { type Exact, exact } from "../units/length.ts";
import { parseMoney } from "../units/money.ts";
import type { CutBoard, CutPiece, CutProblem } from "./cut-problem.ts";

type Told = (says: string) => undefined;
type Fields = Readonly<Record<string, unknown>>;

/** Keys and values as the README of the handle `cut` has them. Where there are faults there is no problem. */
export function readCutProblem(json: unknown): { readonly problem?: CutProblem; readonly faults: readonly string[] } {
  const faults: string[] = [];
  const told: Told = (says) => {
    faults.push(says);
    return undefined;
  };
  if (!isFields(json)) return { faults: ["the file should be one object in braces"] };
  unknownKeys(json, ["name", "kerf", "trim", "boards", "pieces", "order", "effort"], "the problem", told);
  const name = json.name === undefined ? "" : readText(json, "name", "the problem", told);
  const kerf = json.kerf === undefined ? exact(0) : readLength(json, "kerf", "the problem", 0, told);
  const trim = json.trim === undefined ? exact(0) : readLength(json, "trim", "the problem", 0, told);
  const order = json.order ?? "either";
  if (order !== "rip" && order !== "crosscut" && order !== "either") {
    told(`the order should be "rip", "crosscut" or "either", found ${say(order)}`);
  }
  const effort = json.effort ?? 1;
  if (typeof effort !== "number" || !(effort > 0) || !Number.isFinite(effort)) {
    told(`the effort should be a number above 0, found ${say(effort)}`);
  }
  const boards = readList(json, "boards", told).map((entry, i) => readBoard(entry, `board ${i + 1}`, told));
  const pieces = readList(json, "pieces", told).map((entry, i) => readPiece(entry, `piece ${i + 1}`, told));
  if (faults.length > 0) return { faults };
  const problem = { name, kerf, trim, boards, pieces, order, effort } as unknown as CutProblem;
  together(problem, told);
  return faults.length > 0 ? { faults } : { problem, faults };
}

/** Faults that show only when boards, pieces and saw are seen together. */
function together({ boards, pieces, kerf, trim }: CutProblem, told: Told): void {
  twice(
    boards.map(({ id }) => id),
    "boards",
    told,
  );
  twice(
    pieces.map(({ mark }) => mark),
    "pieces",
    told,
  );
  // Sets of lengths alone, as research has them, say 1 for every width.
  const lengthsOnly = [...boards, ...pieces].every(({ width }) => width.equals(1));
  for (const board of boards) {
    const name = `board "${board.id}"`;
    if (!lengthsOnly && kerf.compare(board.width) >= 0)
      told(`${name}: the kerf of ${size(kerf)} is as wide as the board, ${size(board.width)}`);
    else if (kerf.compare(board.length) >= 0)
      told(`${name}: the kerf of ${size(kerf)} is as long as the board, ${size(board.length)}`);
    if (trim.compare(board.length) >= 0)
      told(`${name}: the trim of ${size(trim)} takes the whole length, ${size(board.length)}`);
  }
  const there = boards.filter((board) => board.have !== 0);
  for (const piece of pieces) {
    const name = `piece "${piece.mark}"`;
    const unknown = (piece.boards ?? []).filter((id) => !boards.some((board) => board.id === id));
    for (const id of unknown)
      told(`${name}: there is no board "${id}", only ${boards.map((b) => `"${b.id}"`).join(", ")}`);
    if (unknown.length > 0) continue;
    const own = there.filter(({ id }) => piece.boards === undefined || piece.boards.includes(id));
    const usable = own.filter((board) => piece.length.compare(board.length.sub(trim)) <= 0);
    if (own.length === 0) told(`${name}: none of its boards is there`);
    else if (usable.length === 0) {
      const longest = own.reduce((most, { length }) => (length.compare(most) > 0 ? length : most), exact(0)).sub(trim);
      told(`${name}: at ${size(piece.length)} it is longer than every board; the longest gives ${size(longest)}`);
    } else if (!own.some((board) => piece.width.compare(board.width) <= 0)) {
      const widest = own.reduce((most, { width }) => (width.compare(most) > 0 ? width : most), exact(0));
      told(`${name}: at ${size(piece.width)} it is wider than every board; the widest is ${size(widest)}`);
    } else if (!usable.some((board) => piece.width.compare(board.width) <= 0)) {
      told(`${name}: no board is both long and wide enough for ${size(piece.length)} by ${size(piece.width)}`);
    }
    const run = piece.ends.reduce((sum, end) => sum + Math.tan((Math.abs(end) * Math.PI) / 180), 0);
    if (run > 0 && longerEdgeMissing(piece)) {
      told(`${name}: its ends run past each other, ${size(piece.width)} wide and ${size(piece.length)} long`);
    }
  }
}

/** Both edges must be there: neither end may take more off an edge than its whole length. */
function longerEdgeMissing({ ends, length, width }: CutPiece): boolean {
  const cut = ends.map((end) => Math.tan((end * Math.PI) / 180) * width.valueOf());
  const upper = cut.reduce((sum, run) => sum + Math.max(0, -run), 0);
  const lower = cut.reduce((sum, run) => sum + Math.max(0, run), 0);
  return Math.max(upper, lower) >= length.valueOf();
}

function readBoard(entry: unknown, place: string, told: Told): CutBoard | undefined {
  if (!isFields(entry)) return told(`${place} should be an object in braces, found ${say(entry)}`);
  const id = readText(entry, "id", place, told);
  const name = id === undefined ? place : `board "${id}"`;
  unknownKeys(entry, ["id", "length", "width", "cost", "have", "priced"], name, told);
  const length = readLength(entry, "length", name, 1, told);
  const width = readLength(entry, "width", name, 1, told);
  const cost = readCost(entry, name, told);
  if (entry.priced !== undefined && !isDay(entry.priced)) {
    told(`${name}: its price should have the day it was seen, such as "2026-03-01", found ${say(entry.priced)}`);
  }
  const { have } = entry;
  if (have !== undefined && !isWhole(have, 0))
    told(`${name}: "have" should be a whole number, 0 or more, found ${say(have)}`);
  if (id === undefined || length === undefined || width === undefined || cost === undefined) return undefined;
  return { id, length, width, cost, ...(have === undefined ? {} : { have: have as number }) };
}

function readPiece(entry: unknown, place: string, told: Told): CutPiece | undefined {
  if (!isFields(entry)) return told(`${place} should be an object in braces, found ${say(entry)}`);
  const mark = readText(entry, "mark", place, told);
  const name = mark === undefined ? place : `piece "${mark}"`;
  unknownKeys(entry, ["mark", "length", "width", "count", "ends", "showFace", "boards"], name, told);
  const length = readLength(entry, "length", name, 1, told);
  const width = readLength(entry, "width", name, 1, told);
  const count = entry.count ?? 1;
  if (!isWhole(count, 1)) told(`${name}: the count should be a whole number, 1 or more, found ${say(count)}`);
  const ends = readEnds(entry.ends, name, told);
  const showFace = entry.showFace ?? false;
  if (typeof showFace !== "boolean") told(`${name}: "showFace" should be true or false, found ${say(showFace)}`);
  const { boards } = entry;
  if (
    boards !== undefined &&
    !(Array.isArray(boards) && boards.length > 0 && boards.every((id) => typeof id === "string"))
  ) {
    told(`${name}: "boards" should be a list of board names, found ${say(boards)}`);
  }
  if (mark === undefined || length === undefined || width === undefined || ends === undefined) return undefined;
  return {
    mark,
    length,
    width,
    count: count as number,
    ends,
    showFace: showFace as boolean,
    ...(boards === undefined ? {} : { boards: boards as string[] }),
  };
}

function readEnds(ends: unknown, name: string, told: Told): readonly [number, number] | undefined {
  if (ends === undefined) return [0, 0];
  if (!Array.isArray(ends) || ends.length !== 2)
    return told(`${name}: it has two ends, left and right, found ${say(ends)}`);
  const angles = ends.map((end) => (isFields(end) ? (end.mitre ?? 0) : undefined));
  if (!angles.every((angle) => typeof angle === "number" && Math.abs(angle) < 90)) {
    return told(`${name}: a mitre is in degrees off square, under 90, found ${say(ends)}`);
  }
  return [angles[0] as number, angles[1] as number];
}

function readLength(from: Fields, key: string, name: string, least: 0 | 1, told: Told): Exact | undefined {
  const value = from[key];
  if (value === undefined) return told(`${name}: it has no ${key}`);
  if (typeof value !== "number" || !Number.isFinite(value))
    return told(`${name}: the ${key} should be a number, found ${say(value)}`);
  if (value < 0 || (value === 0 && least === 1)) return told(`${name}: the ${key} should be above 0, found ${value}`);
  if (value >= 1e9) return told(`${name}: the ${key} should be below 1000000000, found ${value}`);
  return exact(String(value));
}

function readCost(from: Fields, name: string, told: Told): Exact | undefined {
  const { cost } = from;
  if (cost === undefined || cost === null || cost === "") return told(`${name}: it has no price`);
  const money = typeof cost === "string" || typeof cost === "number" ? parseMoney(String(cost)) : undefined;
  return money ?? told(`${name}: the price should be money such as "4.10", found ${say(cost)}`);
}

function readText(from: Fields, key: string, name: string, told: Told): string | undefined {
  const value = from[key];
  if (typeof value === "string" && (value !== "" || key === "name")) return value;
  return told(
    value === undefined ? `${name}: it has no ${key}` : `${name}: the ${key} should be a text, found ${say(value)}`,
  );
}

function readList(from: Fields, key: string, told: Told): readonly unknown[] {
  const value = from[key];
  if (Array.isArray(value) && value.length > 0) return value;
  told(
    Array.isArray(value) || value === undefined
      ? `there are no ${key}`
      : `the ${key} should be a list, found ${say(value)}`,
  );
  return [];
}

function unknownKeys(from: Fields, known: readonly string[], name: string, told: Told): void {
  for (const key of Object.keys(from)) {
    if (!known.includes(key)) told(`${name}: "${key}" is not known here, only ${known.join(", ")}`);
  }
}

function twice(names: readonly string[], what: string, told: Told): void {
  for (const name of new Set(names.filter((each, i) => names.indexOf(each) !== i))) {
    told(`there are two ${what} called "${name}"`);
  }
}

const isFields = (value: unknown): value is Fields =>
  typeof value === "object" && value !== null && !Array.isArray(value);
const isWhole = (value: unknown, least: number): boolean =>
  typeof value === "number" && Number.isInteger(value) && value >= least && value <= 1e6;
const isDay = (value: unknown): boolean =>
  typeof value === "string" &&
  /^\d{4}-\d{2}-\d{2}$/.test(value) &&
  new Date(`${value}T00:00:00Z`).toJSON()?.startsWith(value);
const say = (value: unknown): string => JSON.stringify(value) ?? "nothing";
const size = (length: Exact): string => String(length.valueOf());
