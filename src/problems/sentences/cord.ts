// The sentences of cord and of letters on boards.
import type { Side } from "../../units/side.ts";
import { sayList as list, sayLength as said } from "../say-length.ts";
import type { Sentence } from "../sentences.ts";

const end = (where: "start" | "end") => (where === "start" ? "the start" : "the end");

export const cordSentences = {
  "unknown-rope": (f: { what: string; known: readonly string[]; nearest: string | undefined }) => ({
    says: `the yard has no rope called "${f.what}".`,
    found: f.what,
    expected: f.known.length > 0 ? `one of ${f.known.join(", ")}` : "none is there yet",
    ...(f.nearest === undefined ? {} : { nearest: f.nearest }),
    mend: "Use one of the yard's, or add this one to it.",
  }),
  "cord-goes-nowhere": (f: { name: string }) => ({
    says: `"${f.name}" goes through no hole.`,
    expected: "`up through the left holes of planks`",
    mend: "Say which way it goes and through whose holes.",
  }),
  "cord-end-loose": (f: { name: string; where: "start" | "end"; member: string }) => ({
    says: `${end(f.where)} of "${f.name}" has no knot, so it slips out of its hole in ${f.member}.`,
    expected: `\`knot at ${f.where}\`, \`knots at both ends\`, or a hanger or loop there`,
    mend: "Say where its knots are.",
  }),
  "cord-knot-rope": (f: { name: string; knots: number }) => ({
    says: `nothing says how much rope ${f.knots === 1 ? "the knot" : `each of the ${f.knots} knots`} of "${f.name}" takes.`,
    expected: "`4 for each knot`",
    mend: "Tie one in the rope you have, measure what it takes, and add it.",
  }),
  "cord-no-hole": (f: { name: string; members: readonly string[]; side: Side | undefined }) => ({
    says: `"${f.name}" can't go through ${list(f.members)}: there is no through hole${f.side ? ` on the ${f.side}` : ""}.`,
    expected: "`hole for 1/4 rope, 1 from both ends, centred` under cuts",
    mend: "Drill the holes under cuts, or name the boards that have them.",
  }),
  "cord-hole-narrow": (f: { name: string; member: string; hole: number; rope: number; wants: number }) => ({
    says: `"${f.name}", ${said(f.rope)} thick, doesn't go easily through the ${said(f.hole)} hole of ${f.member}.`,
    found: said(f.hole),
    expected: `${said(f.wants)}, 1/8 more than the rope (common practice, no source)`,
    mend: `Drill ${said(f.wants)}, or take a thinner rope.`,
  }),
  "cord-hole-near-edge": (f: { member: string; hole: number; wood: number; side: Side; least: number }) => ({
    says: `only ${said(f.wood)} of wood is left between the ${said(f.hole)} rope hole of ${f.member} and its ${f.side}.`,
    found: said(f.wood),
    expected: `at least ${said(f.least)}, two hole diameters (common practice, no source)`,
    mend: `Put the middle of the hole ${said(f.least + f.hole / 2)} or more from that side.`,
  }),
  "cord-holes-level": (f: { name: string; a: string; b: string; side: Side }) => ({
    says: `which hole "${f.name}" goes through first can't be told: ${f.a === f.b ? `two of ${f.a}` : `one of ${f.a} and one of ${f.b}`} are equally far to the ${f.side}.`,
    expected: "holes one after the other, or those of one side only",
    mend: "Name the side, as in `up through the left holes of …`, or go another way.",
  }),
  "cord-hole-taken": (f: { name: string; member: string; by: string }) => ({
    says: `"${f.name}" goes through a hole of ${f.member} that ${f.by === f.name ? "it has gone through before" : `"${f.by}" already goes through`}.`,
    expected: "one rope in each hole",
    mend: "Name the side whose holes are free, or drill more of them.",
  }),
  "cord-side-wrong": (f: { name: string; member: string; from: Side; ways: readonly Side[]; said: boolean }) => ({
    says: `"${f.name}" goes in ${f.said ? "" : "(unless another side is named) "}from the ${f.from}, but the hole of ${f.member} runs from ${f.ways.join(" to ")}.`,
    expected: `\`${f.ways.join(" and ")}\``,
    mend: `Write \`${f.ways.join(" and ")}\`, or \`${[...f.ways].reverse().join(" and ")}\` to start at the other side.`,
  }),
  "cord-hanger-low": (f: { name: string; part: string; below: number }) => ({
    says: `"${f.part}" lies ${said(f.below)} below the hole that "${f.name}" comes out of, so nothing hangs from it.`,
    expected: "a place above the holes",
    mend: "Put it higher, or above the topmost board.",
  }),
  "cord-hanger-alone": (f: { name: string; part: string }) => ({
    says: `"${f.name}" alone is tied at "${f.part}", so everything would swing round until that lies over its weight.`,
    expected: "two ropes tied at one place, or one rope that runs on over it",
    mend: "Let the rope run down again on the other side, tie a second one there, or use `loop … above …`.",
  }),
  "cord-loop-inside": (f: { name: string; part: string }) => ({
    says: `"${f.part}" stands in the middle of the way of "${f.name}"; a loop is tied at an end.`,
    mend: "Move it to the start or the end, or write `hanger` where the rope runs on.",
  }),
  "text-says-nothing": (f: { name: string }) => ({
    says: `"${f.name}" doesn't say what is written there.`,
    expected: "`saying Fresh eggs` as the last clause",
    mend: "Add the words that stand there unless the buyer asks for others.",
  }),
  "text-how-high": (f: { name: string }) => ({
    says: `nothing says how high the letters of "${f.name}" are.`,
    expected: "`1 1/2 high`",
    mend: "Add their height.",
  }),
  "text-empty": (f: { count: number }) => ({
    says: f.count > 1 ? "one of these texts is empty." : "this text is empty.",
    mend: "Write what stands there.",
  }),
  "text-no-height": (f: { name: string; height: number }) => ({
    says: `the letters of "${f.name}" come to a height of ${said(f.height)}.`,
    expected: "a length above 0",
    mend: "Give them a height.",
  }),
  "text-too-tall": (f: { member: string; height: number; room: number; side: Side }) => ({
    says: `letters ${said(f.height)} high don't fit on the ${f.side} of ${f.member}, which is ${said(f.room)} high.`,
    found: said(f.height),
    expected: `at most ${said(f.room)}`,
    mend: "Make them smaller, or use a wider board.",
  }),
  "text-letters": (f: { saying: string; unknown: readonly string[] }) => ({
    says: `the letters that signs are set in have no ${f.unknown.map((letter) => `"${letter}"`).join(", ")}.`,
    found: f.saying,
    mend: "Write it in other letters.",
  }),
  "text-too-long": (f: {
    saying: string;
    member: string;
    height: number;
    width: number;
    room: number;
    fits: number;
  }) => ({
    says: `"${f.saying}" is ${said(f.width)} wide in letters ${said(f.height)} high, and its row on ${f.member} is ${said(f.room)} wide.`,
    found: f.saying,
    expected: f.fits > 0 ? `letters at most ${said(f.fits)} high` : "fewer letters",
    mend: "Make the letters smaller, say it shorter, or give the row more room.",
  }),
  "text-no-holes": (f: { member: string; side: Side }) => ({
    says: `the row on ${f.member} is to stand between holes, but it has none on either hand of its middle at the ${f.side}.`,
    mend: "Take `between holes` away, or drill the holes under cuts.",
  }),
  "text-no-room": (f: { member: string; free: number; inside: number }) => ({
    says: `no room is left for letters on ${f.member}: ${said(f.free)} is free, and ${said(f.inside)} stays free at each end.`,
    found: said(f.free - 2 * f.inside),
    expected: "a row wider than 0",
    mend: "Leave less free at the ends, or move the holes outward.",
  }),
  "text-count": (f: { name: string; texts: number; fields: number }) => ({
    says: `"${f.name}" has ${f.texts} texts for ${f.fields} ${f.fields === 1 ? "place" : "places"}.`,
    expected: `one text for all, or ${f.fields}`,
    mend: "Write one for each place, from the top down, with / between them.",
  }),
  "cord-in-no-step": (f: { name: string }) => ({
    says: `no step threads ${f.name}.`,
    expected: `**${f.name}** in bold in the step of the finished thing that threads it`,
    mend: "Name it in that step.",
  }),
} satisfies Record<string, (facts: never) => Sentence>;
