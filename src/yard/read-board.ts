// One board of a yard file -> a Board: true size, weight, and its lengths with dated prices.

import type { z } from "zod";
import { nearest } from "../problems/nearest.ts";
import type { Written } from "../problems/place.ts";
import { problem } from "../problems/problem.ts";
import { checkShape, type Placed } from "../problems/tree-shape.ts";
import { entriesUnder, type TreeEntry } from "../problems/yaml-tree.ts";
import { type Exact, zero } from "../units/length.ts";
import { woodDensity } from "./density.ts";
import { dressedSize, dryMoisture, isNominal, nearestNominal, type Sawn } from "./dressed-sizes.ts";
import {
  type Problems,
  parseDate,
  parsePlain,
  parsePrice,
  parsePriced,
  parseSides,
  parseYardLength,
  parseYardSize,
} from "./parse-values.ts";
import { type OfAllFiles, readOwnBoards } from "./read-own-boards.ts";
import { checkPublicWords } from "./unprovable.ts";
import type { Board, BoardLength, Species } from "./yard.ts";
import { boardSchema } from "./yard-schema.ts";

type Fields = Placed<z.output<typeof boardSchema>>;

/** Undefined, with every problem told, where something about the board is wrong. */
export function readBoard(
  entry: TreeEntry,
  species: ReadonlyMap<string, Species>,
  pricedInFile: Written | undefined,
  { vehicle, freshEnd }: OfAllFiles,
  problems: Problems,
): Board | undefined {
  const { placed: f, problems: found } = checkShape(entry.value, boardSchema, `of "${entry.key.text}"`, entry.key.at);
  problems.push(...found, ...checkPublicWords([f?.words]));
  if (!f) return undefined;
  const wood = species.get(f.species.text);
  if (!wood)
    problems.push(
      problem("yard-species", f.species.at, {
        found: f.species.text,
        known: [...species.keys()],
        nearest: nearest(f.species.text, species.keys()),
      }),
    );
  const moisture = parsePlain("moisture", f.moisture, 0, 200, problems);
  if (moisture !== undefined && moisture > dryMoisture && f.sawn?.text !== "green" && !f.measured && !f.size)
    problems.push(problem("yard-not-dry", f.moisture.at, { name: entry.key.text, moisture, most: dryMoisture }));
  const nominal = f.nominal ?? (isNominal(entry.key.text) ? entry.key : undefined);
  const size = readSize(entry.key, f, nominal, problems);
  const lengths = readLengths(entry, f, pricedInFile, problems);
  const own = size && readOwnBoards(entriesUnder(entry.value, "in-stock"), size.width, freshEnd, problems);
  if (!wood || !size || !lengths || moisture === undefined || !own) return undefined;
  const fits = lengths.filter(({ length }) => vehicle === undefined || length.compare(vehicle) <= 0);
  if (vehicle !== undefined && fits.length === 0) {
    const shortest = (lengths[0]?.length ?? zero).toFraction(true);
    problems.push(
      problem("yard-vehicle", entry.key.at, { name: entry.key.text, shortest, vehicle: vehicle.toFraction(true) }),
    );
    return undefined;
  }
  return {
    name: entry.key.text,
    ...(nominal ? { nominal: nominal.text } : {}),
    ...size,
    species: wood,
    treatment: f.treatment?.text === "preservative" ? "preservative" : "none",
    showSides: f.show?.text === "one side" ? 1 : 2,
    moisture,
    density: woodDensity(wood.specificGravity, moisture),
    lengths: fits,
    ...(fits.length < lengths.length ? { tooLong: lengths.filter((one) => !fits.includes(one)) } : {}),
    ...(own.length > 0 ? { own } : {}),
    words: f.words.text,
    at: entry.key.at,
  };
}

const sectionSides = ["thickness", "width"];

/** Measured wins over what the seller states, and that over the table of dressed sizes. */
function readSize(
  name: Written,
  f: Fields,
  nominal: Written | undefined,
  problems: Problems,
): Pick<Board, "thickness" | "width" | "sizeFrom"> | undefined {
  const measured = f.measured && parseSides("measured", f.measured, sectionSides, problems);
  const stated = f.size && parseSides("size", f.size, sectionSides, problems);
  const sawn: Sawn = f.sawn?.text === "green" ? "green" : "dry";
  const dressed = nominal && dressedSize(nominal.text, sawn);
  if (nominal && !dressed && !f.size && !f.measured) {
    problems.push(
      problem("yard-nominal", nominal.at, { found: nominal.text, sawn, nearest: nearestNominal(nominal.text, sawn) }),
    );
    return undefined;
  }
  if (!nominal && !f.size && !f.measured) problems.push(problem("yard-no-size", name.at, { name: name.text }));
  if ((f.measured && !measured) || (f.size && !stated)) return undefined;
  const [thickness, width] = measured ?? stated ?? (dressed ? [dressed.thickness, dressed.width] : []);
  if (!thickness || !width) return undefined;
  return { thickness, width, sizeFrom: measured ? "measured" : stated ? "stated" : "table" };
}

function readLengths(
  entry: TreeEntry,
  f: Fields,
  pricedInFile: Written | undefined,
  problems: Problems,
): BoardLength[] | undefined {
  const written = entriesUnder(entry.value, "lengths");
  const loss = f["end-loss"] ? parseYardLength("end-loss", f["end-loss"], problems) : zero;
  const allDated = written.every((e) => e.value.kind === "text" && / on /.test(e.value.text));
  const priced = allDated ? undefined : parsePriced(entry.key, f.priced, pricedInFile, problems);
  const lengths = written.flatMap((e) => {
    const value: Written = e.value.kind === "text" ? e.value : { text: "", at: e.value.at };
    return readLength(e.key, value, loss, priced, problems) ?? [];
  });
  const twin = lengths.find((l, i) => lengths.findIndex((m) => m.length.equals(l.length)) < i);
  if (twin)
    problems.push(
      problem("yard-length-twice", entry.key.at, { name: entry.key.text, length: twin.length.toFraction(true) }),
    );
  return lengths.length === written.length && !twin ? lengths.sort((a, b) => a.length.compare(b.length)) : undefined;
}

/** `72: 3.98`, with how many there are, `72: 3.98, 4 there`, with a day of its own, `72: 3.98 on 2026-10-03`, or with both. */
function readLength(
  key: Written,
  value: Written,
  loss: Exact | undefined,
  priced: string | undefined,
  problems: Problems,
): BoardLength | undefined {
  const length = parseYardSize("lengths", key, problems);
  const [, worth = value.text, day] = /^(.*?)\s+on\s+(.*)$/.exec(value.text) ?? [];
  const [, dollars = worth, there] = /^(.*?)\s*,\s*(\d+) there$/.exec(worth) ?? [];
  const price = parsePrice({ text: dollars, at: value.at }, problems);
  const seen = day === undefined ? priced : parseDate({ text: day, at: value.at }, problems);
  if (!length || !loss || !price || seen === undefined) return undefined;
  const usable = length.sub(loss);
  const most = there === undefined ? {} : { most: Number(there) };
  if (usable.compare(0) > 0) return { length, usable, price, priced: seen, ...most };
  problems.push(problem("yard-nothing-left", key.at, { length: length.toFraction(true), loss: loss.toFraction(true) }));
  return undefined;
}
