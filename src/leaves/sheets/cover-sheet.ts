// A form of an item -> the cover of its sheets: what it is, what it takes, whom it is made for.
import { drawExploded } from "../../drawing/exploded-view.ts";
import { binderSheet, type Sheet } from "../../drawing/sheet.ts";
import { toolsOf } from "../../findings/tools.ts";
import { useOf } from "../../findings/use.ts";
import { setFractions, threeSizes } from "../edition.ts";
import type { Fact } from "../leaf.ts";
import { pictureOn } from "../picture.ts";
import { proseBlock } from "../prose.ts";
import { barredText } from "../sale-sheet.ts";
import type { PaperSheet, SheetBlock } from "../sheet-set.ts";
import { unfinishedNotice } from "../unfinished.ts";
import { carriedBy, useFacts } from "../use-facts.ts";
import { classNames, madeFor, noClimbing, notMadeFor } from "../uses.ts";
import { factsOf, figure, heading, listOf, markups, sheetOf, tableOf, together } from "./blocks.ts";
import { clampWords } from "./clamps.ts";
import { floorWords } from "./floor-space.ts";
import { handsWords } from "./hands.ts";
import { hardestOf, skillWords } from "./hardest.ts";
import { hoursFacts } from "./hours-facts.ts";
import type { SheetSource } from "./sheet-source.ts";

/** The exploded view shares its page with the title and the facts: as wide as any, but lower. */
const coverPaper: Sheet = { ...binderSheet, height: 100 };

export function coverSheet(source: SheetSource): readonly PaperSheet[] {
  const { item, edition } = source;
  return sheetOf("cover", source.title, "Build", [
    ...markups(item.intro.map((prose) => proseBlock(prose, edition.figure))),
    ...noticesOf(source),
    ...factsOf(sizeFacts(source)),
    figure(
      pictureOn(coverPaper, (sheet) => drawExploded(item, sheet)),
      "exploded",
    ),
    ...together([heading("Who it is for"), ...factsOf(useWords(source))]),
    ...together([heading("Hardest here"), ...listOf(hardestOf(item).map(({ says }) => says))]),
    ...together([heading("What it takes"), ...factsOf(takesFacts(source))]),
    ...toolBlocks(source),
    ...revisionBlocks(source),
  ]);
}

function noticesOf({ item, variants, readers }: SheetSource): SheetBlock[] {
  const barred = readers === "shop" ? barredText(item) : undefined;
  const bare = variants.filter((one) => one.variant.unfinished).map((one) => one.variant.name);
  const title = `${unfinishedNotice.title}: ${bare.join(", ")}`;
  return [
    ...(barred === undefined ? [] : [{ kind: "notice", title: "Note of the shop", says: barred } as const]),
    ...(bare.length === 0 ? [] : [{ kind: "notice", title, says: unfinishedNotice.says } as const]),
  ];
}

function sizeFacts({ item, variants, shop, edition }: SheetSource): Fact[] {
  const { width, depth, height } = item.overall;
  return [
    { name: "Width × depth × height", value: threeSizes([width, depth, height], shop.division) },
    { name: "Weight", value: `${edition.weight(item.weight)}, of it wood ${edition.weight(item.woodWeight)}` },
    { name: "Pieces", value: `${item.members.length}, of ${item.pieces.length} kinds` },
    { name: "Variants", value: variants.map((one) => one.variant.name).join(", ") },
    ...useFacts({ ...item, loads: carriedBy(item) }, edition.weight),
    ...(item.soldAs ? [{ name: "To build", value: `${item.soldAs.count} of what this sheet shows` }] : []),
    { name: "Use", value: classNames(useOf(item)) || "not stated" },
  ];
}

/** Whom the sheets are written for, what the thing is for, and what it must not be used for although somebody will. */
function useWords({ item, edition }: SheetSource): Fact[] {
  const use = useOf(item);
  const made = madeFor(use, edition.weight);
  const said = notMadeFor(use);
  const not = said.length === 0 && !use.carriesPeople ? [noClimbing] : said;
  return [
    { name: "To build it", value: skillWords(item) },
    ...(made.length === 0 ? [] : [{ name: "Made", value: `${made.join(", ")}.` }]),
    ...(not.length === 0 ? [] : [{ name: "Not made", value: `${not.join("; not ")}.` }]),
  ];
}

const takesFacts = (source: SheetSource): Fact[] => [
  ...hoursFacts(source),
  { name: "Two pairs of hands", value: handsWords(source.item, source.edition) },
  { name: "Floor", value: floorWords(source) },
  ...clampWords(source.item, source.edition).map((value) => ({ name: "Clamps", value })),
];

/** The latest first; a plan tells them on a sheet of its own. */
function revisionBlocks({ item: { revisions }, readers }: SheetSource): SheetBlock[] {
  if (readers === "stranger") return [];
  const rows = revisions.map(({ day, says }, i) => [String(i + 1), day, says]).reverse();
  return tableOf({ caption: "Revisions of these sheets", heads: ["Revision", "Day", "What it changed"], rows });
}

function toolBlocks({ variants, edition }: SheetSource): SheetBlock[] {
  const tools = toolsOf(variants);
  return [
    heading("Tools"),
    ...listOf(
      [
        ...tools.names,
        ...tools.drivers.map((driver) => `driver, ${driver}`),
        ...tools.bores.map((across) => setFractions(`bit ${edition.length(across)}`)),
      ],
      "tick",
    ),
  ];
}
