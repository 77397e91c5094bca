// Markup of the leaves -> runs of words, as a page setter wants them.
import { describe, expect, it } from "vitest";
import { markupParts, markupRuns, type Run } from "../../src/paper/markup-runs.ts";

const told = (runs: readonly Run[]): string =>
  runs
    .map((run) => (run === "break" ? "/" : run.looks.length === 0 ? run.text : `${run.looks.join("+")}[${run.text}]`))
    .join("");
const runs = (html: string): string => told(markupRuns({ html }));

describe("markup on paper", () => {
  it("a line keeps its words, what is stressed in it and its figures", () => {
    expect(runs(`Screw <strong>rails 1</strong>, <span class="figure">3\u00a0in</span> up &amp; <em>flush</em>.`)).toBe(
      "Screw strong[rails 1], figure[3\u00a0in] up & em[flush].",
    );
  });

  it("what is stressed twice wears both, and a break stays a break", () => {
    expect(runs("<strong>a <em>b</em></strong><br>c")).toBe("strong[a ]strong+em[b]/c");
  });

  it("paragraphs and lists stay apart, blanks of the source are one blank", () => {
    const html = "<p>One\n  line.</p>\n<ul>\n<li>a</li>\n<li><p>b</p></li>\n</ul>\n<ol><li>c</li></ol>";
    const parts = markupParts({ html }).map((part) =>
      part.kind === "paragraph"
        ? told(part.runs)
        : [part.ordered, ...part.items.map((item) => item.map((one) => one.kind === "paragraph" && told(one.runs)))],
    );
    expect(parts).toEqual(["One line.", [false, ["a"], ["b"]], [true, ["c"]]]);
  });

  it("a heading in prose is a line of strong words, a table in it is told row by row", () => {
    const html =
      "<h3>Mind</h3><table><thead><tr><th>a</th><th>b</th></tr></thead><tbody><tr><td>1</td><td>2</td></tr></tbody></table>";
    const parts = markupParts({ html }).map((part) => part.kind === "paragraph" && told(part.runs));
    expect(parts).toEqual(["strong[Mind]", "a · b", "1 · 2"]);
  });

  it("an element that paper doesn't know is a fault of ours, not a hole in the page", () => {
    expect(() => markupRuns({ html: "<video></video>" })).toThrow("paper doesn't know");
    expect(() => markupRuns({ html: "<p>open" })).toThrow("can't be read");
  });
});
