// The sentences of cutting, joining, finishing and of the steps: what a maker is told when placed boards don't make an item.
import type { Length } from "../../units/length.ts";
import type { Axis, Side } from "../../units/side.ts";
import { sayList as list, sayLength as said } from "../say-length.ts";
import type { Sentence } from "../sentences.ts";
import { makesWords, withArticle } from "./words.ts";

type Unknown = { what: string; known: readonly string[]; nearest: string | undefined };

const unknown = (f: Unknown, says: string, mend: string) => ({
  says,
  found: f.what,
  expected: f.known.length > 0 ? `one of ${f.known.join(", ")}` : "none is there yet",
  ...(f.nearest === undefined ? {} : { nearest: f.nearest }),
  mend,
});

const acrossWords = { length: "along the board", width: "across the board", thickness: "through the board" } as const;
type Own = keyof typeof acrossWords;

type Fastening = { fastener: string; a: string; b: string };
/** To a sixty-fourth: where a row follows from diameters, finer figures say nothing. */
const nearly = (length: number): number => Math.round(length * 64) / 64;
const are = (names: readonly string[]) => (names.length === 1 ? "is" : "are");

export const joiningSentences = {
  "cut-no-size": (f: { cut: string; size: number }) => ({
    says: `"${f.cut}" comes to a size of ${said(f.size)}.`,
    expected: "a length above 0",
    mend: "Give the cut a size.",
  }),
  "cut-spot-missing": (f: { cut: string; member: string; axis: Own }) => ({
    says: `nothing says where "${f.cut}" sits ${acrossWords[f.axis]} on ${f.member}.`,
    expected: "`… from left`, `… from both ends`, `at top` or `centred`",
    mend: "Add the missing spot.",
  }),
  "cut-spot-twice": (f: { cut: string; member: string; axis: Own; spot: string }) => ({
    says: `"${f.spot}" says a second time where "${f.cut}" sits ${acrossWords[f.axis]} on ${f.member}.`,
    mend: "Take one of the two spots away.",
  }),
  "cut-spot-idle": (f: { cut: string; member: string; axis: Own; spot: string }) => ({
    says: `"${f.spot}" settles nothing: "${f.cut}" runs right ${acrossWords[f.axis]} on ${f.member}.`,
    mend: "Take that spot away, or measure from a side the cut doesn't run toward.",
  }),
  "cut-side-missing": (f: { cut: string; member: string }) => ({
    says: `"${f.cut}" stops in the wood of ${f.member}, but nothing says from which side it is drilled.`,
    expected: "`in front`, `in back`, `in top` or another side",
    mend: "Name the side the bit goes in at, or leave the depth out for a through hole.",
  }),
  "cut-too-deep": (f: { cut: string; member: string; deep: number; full: number; into: Side }) => ({
    says: `"${f.cut}" goes ${said(f.deep)} into the ${f.into} of ${f.member}, which is ${said(f.full)} there.`,
    found: said(f.deep),
    expected: `less than ${said(f.full)}`,
    mend: "Cut less deep.",
  }),
  "lap-into-end": (f: { cut: string; member: string; into: Side }) => ({
    says: `the ${f.into} of ${f.member} is its end; "${f.cut}" has to be cut into a face or an edge.`,
    mend: "Name the face or edge that is lowered.",
  }),
  "cut-outside": (f: { cut: string; member: string; side: Side; by: number; axis: Own; room: number }) => ({
    says: `"${f.cut}" runs ${said(f.by)} past the ${f.side} of ${f.member}, which is ${said(f.room)} ${acrossWords[f.axis]}.`,
    found: `${said(f.by)} outside`,
    expected: "a cut that stays inside its board",
    mend: "Make it smaller, or move it further in.",
  }),
  "cuts-meet": (f: { member: string; a: string; b: string }) => {
    return {
      says: `this ${f.a} runs into another ${f.b} of ${f.member}.`,
      mend: "Move one of the two, or make them one cut.",
    };
  },
  "half-lap-closed": (f: { a: string; b: string; names: readonly [string, string] }) => ({
    says: `the half-lap of ${f.a} and ${f.b} can't be sawn: ${f.a} keeps the front or upper half, but stands on the other side of ${f.b}.`,
    mend: `Change the two names over: \`${f.names[0]} to ${f.names[1]}: half-lap\`, or bring their faces level.`,
  }),
  "slant-carved": (f: { a: string; b: string; way: string }) => ({
    says: `${f.a} and ${f.b} cross with no face of the one level with a face of the other, so no saw cuts a ${f.way === "let in" ? "housing" : "half-lap"} of the two.`,
    expected: "two boards that lean in one plane, with square long edges there",
    mend: "Let them lean in one plane only, or hold them with fasteners or glue where they touch.",
  }),
  "let-in-through": (f: { a: string; b: string; width: number; thickness: number }) => ({
    says: `${f.a} stands right across ${f.b}: letting it in would cut the ${said(f.width)} x ${said(f.thickness)} board in two.`,
    mend: "Let the other one in, use a half-lap, or let it in less far.",
  }),
  "unknown-fastener": (f: Unknown) =>
    unknown(f, `the yard has no fastener called "${f.what}".`, "Use one of the yard's, or add this one to it."),
  "unknown-glue": (f: Unknown) =>
    unknown(f, `the yard has no glue called "${f.what}".`, "Use one of the yard's, or add this one to it."),
  "no-glue": () => ({
    says: "this is to be glued, but the yard has no glue.",
    mend: "Add the glue you use to the yard.",
  }),
  "join-no-meeting": (f: { a: string; b: string; near?: { a: string; b: string; gap: number } }) => ({
    says: `no "${f.a}" touches ${withArticle(`"${f.b}"`)}${f.near ? `: the nearest, ${f.near.a} and ${f.near.b}, ${f.near.gap > 1e-9 ? `stand ${said(f.near.gap)} apart` : "meet in an edge only"}` : ""}.`,
    expected: "two that lie flat on each other",
    mend: "Bring them together, or join the ones that touch.",
  }),
  "join-no-crossing": (f: {
    a: string;
    b: string;
    way: "half-lap" | "let in";
    near?: { a: string; b: string; gap: number };
  }) => ({
    says: `no "${f.a}" and "${f.b}" share any room, so there is nothing to ${f.way === "let in" ? "let in" : "halve"}${f.near ? `: ${f.near.a} and ${f.near.b} ${f.near.gap > 1e-9 ? `stand ${said(f.near.gap)} apart` : "only touch"}` : ""}.`,
    expected: `two that ${f.way === "let in" ? "run into each other" : "cross each other"}`,
    mend: "Place one into the other, or hold them with fasteners.",
  }),
  "fastener-too-short": (
    f: Fastening & { length: Length; through: number; into: number; least: number; depth: number },
  ) => ({
    says: `${f.fastener} goes ${said(f.through)} through ${f.a} and ${f.into > 0 ? `only ${said(f.into)} into` : "doesn't reach"} ${f.b}.`,
    found: f.into > 0 ? said(f.into) : "no bite",
    expected: `at least ${said(f.least)} of bite (common practice, no source)`,
    mend: `Use one of ${said(Math.ceil((f.through + f.least) * 8 - 1e-9) / 8)} or longer, or drive it the other way.`,
  }),
  "fastener-breaks-through": (f: Fastening & { length: Length; through: number; into: number; depth: number }) => ({
    says: `${f.fastener} goes ${said(f.through)} through ${f.a} and ${said(f.into)} into ${f.b}, which has only ${said(f.depth)} there: its point comes out.`,
    found: said(f.length),
    expected: `shorter than ${said(f.through + f.depth)}; usual is a point that stops 1/8 short (common practice, no source)`,
    mend: "Use a shorter one, or drive it the other way.",
  }),
  "fasteners-crowded": (f: Fastening & { count: number; most: number; room: number }) => ({
    says: `${f.count} of ${f.fastener} stand too close where ${f.a} meets ${f.b}: the room is ${said(f.room)}.`,
    found: String(f.count),
    expected: `at most ${f.most} there, 3 shank diameters apart (NDS Commentary)`,
    mend:
      f.most > 0 ? `Use ${f.most} or fewer, or thinner ones.` : "Use thinner ones, or let the boards meet more widely.",
  }),
  "fastener-near-edge": (f: Fastening & { margin: number; least: number }) => ({
    says: `${f.fastener} would stand ${said(f.margin)} from the edge where ${f.a} meets ${f.b}.`,
    found: said(f.margin),
    expected: `at least ${said(f.least)}, 1 1/2 shank diameters (common practice, no source)`,
    mend: "Use a thinner one, or let the boards meet more widely.",
  }),
  "fasteners-cross": (f: Fastening & { other: Fastening; apart: number; least: number }) => ({
    says: `${f.fastener} from ${f.a} into ${f.b} meets ${f.other.fastener} from ${f.other.a} into ${f.other.b} inside the wood: ${f.apart < 1 / 64 ? "their middles cross" : `their middles come within ${said(nearly(f.apart))} of each other`}, and there is no room to move either row.`,
    found: said(nearly(f.apart)),
    expected: `at least ${said(nearly(f.least))} from middle to middle, half of each shank and 1/16 of wood between (common practice, no source)`,
    mend: "Use fewer, shorter or thinner ones in one of the two joins, drive it from another side, or let the boards meet more widely.",
  }),
  "joined-twice": (f: { a: string; b: string; first: string; line: number }) => ({
    says: `${f.a} and ${f.b} are already held at the same place by "${f.first}" on line ${f.line}.`,
    mend: "Keep one of the two lines; where both fasteners are meant, write them on one line with `;` between.",
  }),
  "fastener-in-cut": (f: Fastening & { member: string; cut: string; lost: number; stands: number }) => ({
    says: `${f.fastener} from ${f.a} into ${f.b} stands ${said(nearly(f.stands))} deep in ${f.member}, but a ${f.cut} takes away ${said(nearly(f.lost))} of that wood.`,
    found: `${said(nearly(f.stands - f.lost))} of wood round it`,
    expected: said(nearly(f.stands)),
    mend: "Move the cut, or change the number or the side of the fasteners so that they stand clear of it.",
  }),
  "fastener-off-wood": (f: Fastening & { member: string; out: number }) => ({
    says: `${f.fastener} from ${f.a} into ${f.b} stands ${said(nearly(f.out))} beside the wood of ${f.member}, in a cut-out or past its edge.`,
    mend: "Use fewer of them, put them elsewhere, or leave wood there in the outline.",
  }),
  "heads-side-wrong": (f: Fastening & { side: Side | undefined; could: readonly Side[] }) => ({
    says: f.side
      ? `${f.fastener} can't go from the ${f.side} of ${f.a} into ${f.b}.`
      : `${f.a} and ${f.b} meet in no flat patch square to the item that ${f.fastener} could go through.`,
    ...(f.could.length > 0 ? { expected: `heads at the ${f.could.join(" or ")} of ${f.a}` } : {}),
    mend: f.could.length > 0 ? "Name that side, or leave it out." : "Let them meet flat on flat.",
  }),
  "pocket-side-missing": (f: Fastening) => ({
    says: `nothing says in which face of ${f.a} the pockets of ${f.fastener} are bored.`,
    expected: "`, back`, `, front` or another side after the screw",
    mend: "Name the side that isn't seen.",
  }),
  "pocket-side-wrong": (f: Fastening & { side: Side }) => ({
    says: `a pocket in the ${f.side} of ${f.a} can't lead into ${f.b}: they meet on that side or not at all.`,
    mend: "Bore the pockets in a face that runs toward the other board.",
  }),
  "pocket-board-short": (f: Fastening & { side: Side; wood: number; needs: number; thickness: number }) => ({
    says: `a pocket at 15 degrees in the ${f.side} of ${f.a} needs ${said(f.needs)} of ${said(f.thickness)} wood toward ${f.b}; there is ${said(f.wood)}.`,
    found: said(f.wood),
    expected: `at least ${said(f.needs)}`,
    mend: "Use a straight screw, or bore the pockets in the other board.",
  }),
  "touches-nothing": (f: { members: readonly string[] }) => ({
    says: `${list(f.members)} ${f.members.length === 1 ? "touches" : "touch"} nothing and ${are(f.members)} held by no join.`,
    mend: "Place it against what holds it and join it there.",
  }),
  "held-by-nothing": (f: { members: readonly string[]; first: string; touches: readonly string[] }) => ({
    says: `${list(f.members)} ${are(f.members)} held by no join; ${f.first} touches ${list(f.touches)}.`,
    mend: "Add a join to what it touches, or write `loose` on its line.",
  }),
  "cluster-apart": (f: { members: readonly string[]; touches: readonly string[]; others: number }) => ({
    says: `${list(f.members)} are joined to each other but not to the other ${f.others}; they touch ${f.touches.length > 0 ? list(f.touches) : "nothing else"}.`,
    mend:
      f.touches.length > 0
        ? "Join them to what they touch, or write `loose` on their line."
        : "Bring them to the rest and join them.",
  }),
  "loose-in-air": (f: { members: readonly string[] }) => ({
    says: `${list(f.members)} ${are(f.members)} loose, but ${f.members.length === 1 ? "lies" : "lie"} on nothing and not on the floor.`,
    mend: "Lay it on something.",
  }),
  "two-in-one-place": (f: {
    a: string;
    b: string;
    room: readonly number[];
    /** The least way out that runs into nothing else, if there is one. */
    part: { axis: Axis; far: boolean; by: number } | undefined;
    volume: number;
    more: number;
  }) => {
    const ways = { x: ["left", "right"], y: ["front", "back"], z: ["bottom", "top"] } as const;
    const move = f.part
      ? `Move ${f.b} ${said(f.part.by)} toward the ${ways[f.part.axis][f.part.far ? 1 : 0]}, shorten`
      : "Shorten";
    const also =
      f.more === 0
        ? ""
        : f.more === 1
          ? ", and so does 1 more pair of these lines"
          : `, and so do ${f.more} more pairs of these lines`;
    return {
      says: `${f.a} and ${f.b} are in one place: they share ${f.room.map(said).join(" x ")} (left to right, front to back, up)${also}.`,
      found: `${Number(f.volume.toFixed(3))} cubic inches in both`,
      expected: "room for each",
      mend: `${move} one of them, or join them with a half-lap or \`let in\`.`,
    };
  },
  "fitting-in-wood": (f: { fitting: string; member: string; volume: number; depth: number }) => ({
    says: `${f.fitting} sits ${said(f.depth)} deep in the wood of ${f.member}.`,
    found: `${Number(f.volume.toFixed(3))} cubic inches in both`,
    mend: "Move it out of the board, or cut room for it with a notch or a lap.",
  }),
  "fitting-in-air": (f: { fitting: string }) => ({
    says: `${f.fitting} lies on no board.`,
    mend: "Place it against the board that carries it, or write `loose` if it only goes along.",
  }),
  "unknown-finish": (f: Unknown) =>
    unknown(f, `the yard has no finish called "${f.what}".`, "Use one of the yard's, or add this one to it."),
  "coated-twice": (f: { scheme: string; members: readonly string[] }) => ({
    says: `"${f.scheme}" coats ${list(f.members)} in two places.`,
    mend: "Name each member in one of them; `the rest` takes what no other names.",
  }),
  "no-rest": (f: { scheme: string }) => ({
    says: `"${f.scheme}" coats the rest, but nothing is left: the others name every member.`,
    mend: "Take `the rest` away, or name fewer before it.",
  }),
  "unknown-variant": (f: Unknown) =>
    unknown(f, `there is no variant "${f.what}" of this.`, "Ask for one of the finishes that are offered."),
  "made-count": (f: { panel: string; made: number; stand: readonly string[] }) => ({
    says: `"${f.panel}" is made ${f.made === 1 ? "once" : `${f.made} times`}, but ${f.stand.length === 1 ? "1 stands" : `${f.stand.length} stand`}: ${list(f.stand)}.`,
    found: String(f.made),
    expected: String(f.stand.length),
    mend: `Write \`${makesWords(f.panel, f.stand.length)}\`, or change what stands.`,
  }),
  "not-of-panel": (f: { what: string; panel: string; members: readonly string[] }) => ({
    says: `"${f.what}" is no part of "${f.panel}"${f.members.length > 0 ? `: it means ${list(f.members)}` : ""}.`,
    mend: `Name it in a step of the item, or take it out of the section that makes ${f.panel}.`,
  }),
  "named-twice": (f: {
    what: string;
    members: readonly string[];
    bench?: { panel: string; times: number } | undefined;
  }) => ({
    says: `"${f.what}" puts ${list(f.members)} in place a second time.`,
    mend: `Name each member in bold in one step only; use *italics* to speak of it again.${f.bench ? ` A section that builds a panel on the bench says \`${makesWords(f.bench.panel, f.bench.times)}\` right under its heading; its boards are named there, and the panel alone where it is stood.` : ""}`,
  }),
  "in-no-step": (f: { members: readonly string[]; makes: string | undefined }) => ({
    says: `${list(f.members)} ${are(f.members)} put in place by no step${f.makes === undefined ? "" : ` of the section that makes ${f.makes}`}.`,
    mend: "Name it in bold in the step that puts it in place.",
  }),
  "panel-not-stood": (f: { panel: string; kind: string }) => ({
    says: `${f.panel} is made as ${withArticle(f.kind)}, but no step stands it in place.`,
    mend: `Name **${f.panel}** in bold in a step of a section without \`makes\`.`,
  }),
  "no-steps": (f: { count: number }) => ({
    says: `there is no step, so ${f.count === 1 ? "its 1 member is" : `its ${f.count} members are`} never put in place.`,
    mend: "Write the steps under a heading, such as `1. Lay the **legs** good side down.`, each with what it puts in place in bold.",
  }),
  "claim-false": (f: { claim: string; said: string; come: string; from: string }) => ({
    says: `"${f.claim}" isn't true: it comes to ${f.come}, from ${f.from}.`,
    found: f.said,
    expected: f.come,
    mend: "Correct the claim, or change the sizes that it follows from.",
  }),
  "claim-mixes": (f: { claim: string; said: string; come: string; saidKind: string; comeKind: string }) => ({
    says: `"${f.claim}" states ${f.saidKind}, but what it speaks of is ${f.comeKind}: ${f.come}.`,
    found: f.said,
    expected: f.come,
    mend: "State the figure in its own unit.",
  }),
} satisfies Record<string, (facts: never) => Sentence>;
