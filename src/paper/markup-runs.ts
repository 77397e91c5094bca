// Checked markup of a leaf -> paragraphs and lists of plain runs, which a setter of type can set without reading HTML.
import { SaxesParser } from "saxes";
import type { Markup } from "../leaves/leaf.ts";

export type Look = "strong" | "em" | "figure";

/** A stretch of words that look alike, or a break of the line. */
export type Run = { readonly text: string; readonly looks: readonly Look[] } | "break";

export type MarkupPart =
  | { readonly kind: "paragraph"; readonly runs: readonly Run[] }
  | { readonly kind: "list"; readonly ordered: boolean; readonly items: readonly (readonly MarkupPart[])[] };

type Node = string | { readonly name: string; readonly isFigure: boolean; readonly inside: Node[] };

/** HTML's names for the characters that XML doesn't know. */
const named = { nbsp: "\u00a0", times: "×", deg: "°", hellip: "…", ndash: "–", mdash: "—" };

function treeOf({ html }: Markup): readonly Node[] {
  const root: Exclude<Node, string> = { name: "root", isFigure: false, inside: [] };
  const open = [root];
  const parser = new SaxesParser();
  Object.assign(parser.ENTITIES, named);
  parser.on("opentag", ({ name, attributes }) => {
    const node = { name, isFigure: attributes.class === "figure", inside: [] };
    open.at(-1)?.inside.push(node);
    open.push(node);
  });
  parser.on("closetag", () => open.pop());
  parser.on("text", (text) => open.at(-1)?.inside.push(text));
  parser.on("error", (error) => {
    throw new Error(`markup of a leaf that can't be read: ${error.message}`);
  });
  parser.write(`<markup>${html.replace(/<(br|hr)\s*>/g, "<$1/>")}</markup>`).close();
  const [whole] = root.inside;
  return whole === undefined || typeof whole === "string" ? [] : whole.inside;
}

const looks: Readonly<Record<string, Look>> = { strong: "strong", b: "strong", em: "em", i: "em" };
const inline = ["span", "small", "s", "code", "br", ...Object.keys(looks)];
const headings = ["h1", "h2", "h3", "h4", "h5", "h6"];
const isInline = (node: Node): boolean => typeof node === "string" || inline.includes(node.name);

function runsOf(nodes: readonly Node[], worn: readonly Look[] = []): Run[] {
  return nodes.flatMap((node): Run[] => {
    if (typeof node === "string") {
      const text = node.replace(/[ \n\t]+/g, " ");
      return text === "" ? [] : [{ text, looks: worn }];
    }
    if (node.name === "br") return ["break"];
    if (!isInline(node)) throw new Error(`markup of a leaf has <${node.name}> inside a line`);
    const look = node.isFigure ? "figure" : looks[node.name];
    return runsOf(node.inside, look === undefined || worn.includes(look) ? worn : [...worn, look]);
  });
}

/** Loose words become a paragraph; a heading inside prose is a paragraph of strong words. */
export const markupParts = (markup: Markup): MarkupPart[] => partsOf(treeOf(markup));

/** The same as one line, for a cell or an item of a list. */
export const markupRuns = (markup: Markup): Run[] =>
  markupParts(markup).flatMap((part, i): Run[] => {
    const runs = part.kind === "paragraph" ? part.runs : part.items.flatMap((item) => item.flatMap(lineOf));
    return i === 0 ? [...runs] : ["break", ...runs];
  });

const lineOf = (part: MarkupPart): readonly Run[] =>
  part.kind === "paragraph" ? part.runs : part.items.flatMap((item) => item.flatMap(lineOf));

function partsOf(nodes: readonly Node[]): MarkupPart[] {
  const parts: MarkupPart[] = [];
  let line: Node[] = [];
  const endLine = (): void => {
    const runs = trimmed(runsOf(line));
    if (runs.length > 0) parts.push({ kind: "paragraph", runs });
    line = [];
  };
  for (const node of nodes) {
    if (typeof node === "string" || isInline(node)) {
      line.push(node);
      continue;
    }
    endLine();
    parts.push(...blockOf(node));
  }
  endLine();
  return parts;
}

function blockOf({ name, inside }: Exclude<Node, string>): readonly MarkupPart[] {
  if (name === "hr") return [];
  if (name === "ul" || name === "ol") {
    const items = inside.flatMap((item) => (typeof item === "string" ? [] : [partsOf(item.inside)]));
    return [{ kind: "list", ordered: name === "ol", items }];
  }
  if (headings.includes(name)) return [{ kind: "paragraph", runs: trimmed(runsOf(inside, ["strong"])) }];
  if (name === "tr") return [{ kind: "paragraph", runs: rowOf(inside) }];
  if (["p", "div", "blockquote", "li", "pre", "table", "thead", "tbody"].includes(name)) return partsOf(inside);
  throw new Error(`markup of a leaf has <${name}>, which paper doesn't know`);
}

/** A table inside prose is told row by row. */
const rowOf = (cells: readonly Node[]): Run[] =>
  cells
    .flatMap((cell) => (typeof cell === "string" ? [] : [trimmed(runsOf(cell.inside))]))
    .flatMap((runs, i): Run[] => (i === 0 ? runs : [{ text: " · ", looks: [] }, ...runs]));

/** Without blanks at its two ends. */
function trimmed(runs: readonly Run[]): Run[] {
  const kept = runs.map((run, i): Run => {
    if (run === "break") return run;
    const start = i === 0 ? run.text.replace(/^ +/, "") : run.text;
    return { ...run, text: i === runs.length - 1 ? start.replace(/ +$/, "") : start };
  });
  return kept.filter((run) => run === "break" || run.text !== "");
}
