// Live pages: started as a maker starts them, on a free port, while recipes are changed, broken, mended, added and deleted.
import { type ChildProcess, spawn } from "node:child_process";
import { copyFileSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { get } from "node:http";
import { createServer } from "node:net";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { copyContent, root } from "./demo.ts";

const content = copyContent();
const corral = join(content, "recipes/hose-and-pot-corral.md");
const good = readFileSync(corral, "utf8");

let server: ChildProcess;
let address = "";
let said = "";

const freePort = (): Promise<number> =>
  new Promise((resolve) => {
    const probe = createServer().listen(0, () => {
      const { port } = probe.address() as { port: number };
      probe.close(() => resolve(port));
    });
  });

beforeAll(async () => {
  const port = await freePort();
  server = spawn(process.execPath, [join(root, "src/shopleaf.js"), "watch", "--content", content, "--port", `${port}`]);
  server.stdout?.on("data", (text: Buffer) => {
    said += text;
  });
  server.stderr?.on("data", (text: Buffer) => {
    said += text;
  });
  address = await until(() => /Live at (\S+)/.exec(said)?.[1]);
});

afterAll(async () => {
  const ended = new Promise((resolve) => server.once("exit", resolve));
  server.kill("SIGINT");
  await ended;
});

/** Asks again until there is an answer; the test's own time limit ends it. */
async function until<T>(ask: () => T | undefined | Promise<T | undefined>): Promise<T> {
  for (;;) {
    const answer = await ask();
    if (answer !== undefined) return answer;
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
}

const fetchPage = async (path: string): Promise<{ status: number; html: string }> => {
  const answer = await fetch(new URL(path, address));
  return { status: answer.status, html: await answer.text() };
};
const sheet = "binder/items/hose-and-pot-corral.html";
const pageWith = (path: string, words: string | RegExp): Promise<string> =>
  until(async () => {
    const { html } = await fetchPage(path);
    return html.search(words) >= 0 ? html : undefined;
  });

const isMarked = (html: string): boolean => html.includes('role="alert"');
const panelOf = (html: string): string => /<section role="alert"[\s\S]*?<\/section>/.exec(html)?.[0] ?? "";

describe("live pages", () => {
  it("serve every shelf, and load a script of their own that reloads them", async () => {
    for (const path of ["", "binder/index.html", "store/index.html", "guide/index.html", sheet]) {
      expect((await fetchPage(path)).status).toBe(200);
    }
    // Only a page that is gone to, not one that is fetched, gets the script; so it is asked for as a reader does.
    const html = await new Promise<string>((resolve) => {
      get(new URL(sheet, address), async (answer) => {
        let text = "";
        for await (const part of answer) text += part;
        resolve(text);
      });
    });
    expect(html.includes("reload-client")).toBe(true);
  });

  it("follow a saved recipe: 30 wide becomes 29 1/2", async () => {
    writeFileSync(corral, good.replace(/^overall: 30 x/m, "overall: 29 1/2 x"));
    expect(isMarked(await pageWith(sheet, /29\u00a01⁄2/))).toBe(false);
  });

  it("show a problem on the page, over the last that was good, and in the terminal with its line", async () => {
    said = "";
    writeFileSync(corral, good.replace(/^overall: 30 x/m, "overall: 30 by"));
    const html = await pageWith(sheet, 'role="alert"');
    expect(/29\u00a01⁄2/.test(html)).toBe(true);
    expect(panelOf(html)).toMatch(/hose-and-pot-corral\.md:\d+:\d+/);
    expect(said).toMatch(/hose-and-pot-corral\.md:\d+:\d+ {2}/);
    expect(said).not.toMatch(/\n\s+at /);
  });

  it("live through front-matter that is no front-matter at all, and through an empty file", async () => {
    writeFileSync(corral, "---\n\t: [}\n&*!\n");
    await pageWith("index.html", 'role="alert"');
    writeFileSync(corral, "");
    await pageWith("index.html", /no front|starts|---/);
    expect((await fetchPage(sheet)).status).toBe(200);
  });

  it("clear the problem when it is mended", async () => {
    writeFileSync(corral, good);
    await until(async () => {
      const { html } = await fetchPage(sheet);
      return isMarked(html) ? undefined : true;
    });
  });

  it("take in a new recipe, and let a deleted one go", async () => {
    const added = join(content, "recipes/second-corral.md");
    copyFileSync(corral, added);
    await pageWith("index.html", "the same address");
    writeFileSync(added, good.replace(/^title: .*$/m, "title: Second corral"));
    await pageWith("binder/items/second-corral.html", "<h1");
    rmSync(added);
    await until(async () => ((await fetchPage("binder/items/second-corral.html")).status === 404 ? true : undefined));
    await until(async () => ((await fetchPage("store/index.html")).html.includes("Second corral") ? undefined : true));
  });

  it("follow the yard: a problem in it leaves all pages as they were", async () => {
    const boards = join(content, "yard/boards.yaml");
    const yard = readFileSync(boards, "utf8");
    writeFileSync(boards, yard.replace("size: 5/8 x 5 1/2", "size: 5/8 x"));
    expect(panelOf(await pageWith(sheet, 'role="alert"'))).toContain("boards.yaml");
    writeFileSync(boards, yard);
    await until(async () => (isMarked((await fetchPage(sheet)).html) ? undefined : true));
  });

  it("follow two saves in one breath: the last one shows", async () => {
    writeFileSync(corral, good.replace(/^overall: 30 x/m, "overall: 29 x"));
    await new Promise((resolve) => setTimeout(resolve, 260));
    writeFileSync(corral, good.replace(/^overall: 30 x/m, "overall: 28 1/2 x"));
    await pageWith(sheet, /28\u00a01⁄2/);
  });
});
