import { describe, expect, it } from "vitest";
import type { Figure } from "../../src/item/item.ts";
import { binderEdition, setFractions, storeEdition } from "../../src/leaves/edition.ts";
import { proseBlock, proseLine, proseText } from "../../src/leaves/prose.ts";
import { exact } from "../../src/units/length.ts";
import { prose } from "./worked-goods.ts";

const print = binderEdition({ unit: "in", per: 16 }).figure;
const line = (markdown: string, figures: readonly Figure[] = []): string =>
  proseLine(prose(markdown, figures), print).html;

describe("prose", () => {
  it("a figure stands in its place, in the units of the edition", () => {
    const clear: Figure = { kind: "length", value: exact(43, 16) };
    expect(line("set it ⟦0⟧ up", [clear])).toBe('set it <span class="figure">2\u00a011\u204416 in</span> up');
    expect(storeEdition({ unit: "in", per: 16 }).figure(clear)).toBe("2\u00a011\u204416 in (68 mm)");
  });

  it("a gap of 7/32 is 1/4 scant where a block is cut to it; the buyer reads the length alone", () => {
    const gap: Figure = { kind: "length", value: exact(7, 32), gap: true };
    expect(proseText(prose("a ⟦0⟧ block", [gap]), print)).toBe("a 1\u20444 scant block");
    expect(storeEdition({ unit: "in", per: 16 }).figure(gap)).toBe("1\u20444 in (6 mm)");
    expect(print({ kind: "length", value: exact(7, 32) })).toBe("1\u20444 in");
  });

  it("every kind of figure is printed", () => {
    const figures: Figure[] = [
      { kind: "angle", degrees: 14 },
      { kind: "weight", pounds: 21.4 },
      { kind: "area", squareInches: 288 },
      { kind: "number", value: 6 },
    ];
    expect(proseText(prose("⟦0⟧, ⟦1⟧, ⟦2⟧, ⟦3⟧", figures), print)).toBe("14°, 21 lb, 2 sq ft, 6");
  });

  it("a figure that was never worked out is our own bug", () => {
    expect(() => line("⟦1⟧", [{ kind: "angle", degrees: 1 }])).toThrow("has no figure 1");
  });

  it("stress and lists are kept, HTML is text", () => {
    expect(line("**legs** <b>x</b> *slowly*")).toBe("<strong>legs</strong> &lt;b&gt;x&lt;/b&gt; <em>slowly</em>");
    expect(proseBlock(prose("- a\n- b"), print).html).toContain("<li>a</li>");
  });

  it.each([
    "[x](javascript:alert(1))",
    "[x](https://example.com)",
    "![x](http://example.com/a.png)",
    "<https://example.com>",
    "[x]: http://example.com\n\n[x]",
  ])("no link and no picture comes out of %s", (markdown) => {
    expect(proseBlock(prose(markdown), print).html).not.toMatch(/<a|<img|href=|src=/);
  });

  it("fractions are set with a fraction slash and hold on to their whole number", () => {
    expect(setFractions("17 9/16 in and 3/8")).toBe("17\u00a09\u204416 in and 3\u20448");
  });
});
