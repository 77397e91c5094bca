import { describe, expect, it } from "vitest";
import type { Drawing } from "../../src/drawing/drawing.ts";
import { guidePageLeaf } from "../../src/leaves/guide-page.ts";

const drawing: Drawing = {
  id: "ex",
  title: "A box",
  description: "A box seen from the front.",
  width: 10,
  height: 10,
  marks: [],
};
const page = (markdown: string) =>
  guidePageLeaf({ path: "lengths.html", markdown }, [{ path: "lengths.html", markdown }], (text) =>
    text.includes("title:") ? drawing : undefined,
  );

describe("guide page", () => {
  it("takes its title from the first heading and its contents from the second ones, each with an address of its own", () => {
    const leaf = page("# Lengths\n\n## Sums\n\na\n\n### More\n\n## Sums\n");
    expect(leaf.title).toBe("Lengths");
    expect(leaf.contents).toEqual([
      { id: "sums", text: "Sums" },
      { id: "sums-2", text: "Sums" },
    ]);
    expect(leaf.body.html).toContain('<h2 id="sums-2">');
    expect(leaf.body.html).not.toContain("<h1");
  });

  it("a whole example is shown with its drawing, a part of one only as written", () => {
    expect(page("# A\n\n```recipe\ntitle: x\n```\n").body.html).toContain("<figcaption>A box</figcaption>");
    expect(page("# A\n\n```recipe\nlegs: 2 strip\n```\n").body.html).not.toContain("figcaption");
    expect(page("# A\n\n```text\ntitle: x\n```\n").body.html).not.toContain("figcaption");
  });

  it("what stands in an example stays text", () => {
    expect(page("# A\n\n```recipe\n<script>alert(1)</script>\n```\n<script>x</script>").body.html).not.toContain(
      "<script",
    );
  });
});
