// A cutting problem's JSON -> the problem in exact lengths and money, or every fault of it in plain words.
import { exact } from "../units/length.ts";
import { checkProblem } from "./check-problem.ts";
import type { CutBoard, CutPiece, CutProblem, Stretch } from "./cut-problem.ts";
import {
  isDay,
  isFields,
  isWhole,
  readCost,
  readFlag,
  readLength,
  readList,
  readText,
  say,
  type Told,
  unknownKeys,
} from "./read-fields.ts";

const problemKeys = ["name", "kerf", "trim", "trimBothEnds", "useful", "boards", "pieces", "order", "effort"];
const boardKeys = ["id", "length", "width", "cost", "have", "priced", "knotty", "bad"];
const pieceKeys = ["mark", "length", "width", "count", "ends", "showFace", "boards", "clear", "together", "grain"];

/** Keys and values as the README of the handle `cut` has them. Where there are faults there is no problem. */
export function readCutProblem(json: unknown): { readonly problem?: CutProblem; readonly faults: readonly string[] } {
  const faults: string[] = [];
  const told: Told = (says) => {
    faults.push(says);
    return undefined;
  };
  if (!isFields(json)) return { faults: ["the file should be one object in braces"] };
  unknownKeys(json, problemKeys, "the problem", told);
  const name = json.name === undefined ? "" : readText(json, "name", "the problem", told);
  const kerf = json.kerf === undefined ? exact(0) : readLength(json, "kerf", "the problem", 0, told);
  const trim = json.trim === undefined ? exact(0) : readLength(json, "trim", "the problem", 0, told);
  const trimBothEnds = readFlag(json, "trimBothEnds", "the problem", told);
  const useful = json.useful === undefined ? undefined : readLength(json, "useful", "the problem", 1, told);
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
  const problem = {
    ...{ name, kerf, trim, boards, pieces, order, effort },
    ...(trimBothEnds ? { trimBothEnds } : {}),
    ...(useful === undefined ? {} : { useful }),
  } as unknown as CutProblem;
  checkProblem(problem, told);
  return faults.length > 0 ? { faults } : { problem, faults };
}

function readBoard(entry: unknown, place: string, told: Told): CutBoard | undefined {
  if (!isFields(entry)) return told(`${place} should be an object in braces, found ${say(entry)}`);
  const id = readText(entry, "id", place, told);
  const name = id === undefined ? place : `board "${id}"`;
  unknownKeys(entry, boardKeys, name, told);
  const length = readLength(entry, "length", name, 1, told);
  const width = readLength(entry, "width", name, 1, told);
  const cost = readCost(entry, name, told);
  if (entry.priced !== undefined && !isDay(entry.priced)) {
    told(`${name}: its price should have the day it was seen, such as "2026-03-01", found ${say(entry.priced)}`);
  }
  const { have } = entry;
  if (have !== undefined && !isWhole(have, 0))
    told(`${name}: "have" should be a whole number, 0 or more, found ${say(have)}`);
  const knotty = readFlag(entry, "knotty", name, told);
  const bad = entry.bad === undefined ? undefined : readStretches(entry.bad, name, told);
  if (id === undefined || length === undefined || width === undefined || cost === undefined) return undefined;
  return {
    ...{ id, length, width, cost },
    ...(have === undefined ? {} : { have: have as number }),
    ...(knotty ? { knotty } : {}),
    ...(bad === undefined ? {} : { bad }),
  };
}

function readPiece(entry: unknown, place: string, told: Told): CutPiece | undefined {
  if (!isFields(entry)) return told(`${place} should be an object in braces, found ${say(entry)}`);
  const mark = readText(entry, "mark", place, told);
  const name = mark === undefined ? place : `piece "${mark}"`;
  unknownKeys(entry, pieceKeys, name, told);
  const length = readLength(entry, "length", name, 1, told);
  const width = readLength(entry, "width", name, 1, told);
  const count = entry.count ?? 1;
  if (!isWhole(count, 1)) told(`${name}: the count should be a whole number, 1 or more, found ${say(count)}`);
  const ends = readEnds(entry.ends, name, told);
  const showFace = readFlag(entry, "showFace", name, told);
  const clear = readFlag(entry, "clear", name, told);
  const together = entry.together === undefined ? undefined : readText(entry, "together", name, told);
  const { grain } = entry;
  if (grain !== undefined && grain !== "along" && grain !== "any")
    told(`${name}: the grain should be "along" or "any", found ${say(grain)}`);
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
    showFace,
    ...(boards === undefined ? {} : { boards: boards as string[] }),
    ...(clear ? { clear } : {}),
    ...(together === undefined ? {} : { together }),
    ...(grain === "any" ? { grain } : {}),
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

function readStretches(bad: unknown, name: string, told: Told): Stretch[] | undefined {
  if (!Array.isArray(bad)) return told(`${name}: "bad" should be a list of stretches, found ${say(bad)}`);
  return bad.flatMap((entry, i) => {
    const place = `${name}, bad stretch ${i + 1}`;
    if (!isFields(entry)) {
      told(`${place} should be an object with "from" and "to", found ${say(entry)}`);
      return [];
    }
    unknownKeys(entry, ["from", "to"], place, told);
    const [from, to] = [readLength(entry, "from", place, 0, told), readLength(entry, "to", place, 1, told)];
    if (from === undefined || to === undefined) return [];
    if (from.compare(to) >= 0) told(`${place}: it ends at ${to.valueOf()}, before it begins at ${from.valueOf()}`);
    return [{ from, to }];
  });
}
