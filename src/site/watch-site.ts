// A content folder -> live pages in the browser, made again at each change, with the problems on them.
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, relative } from "node:path";
import Eleventy from "@11ty/eleventy";
import { isFolder, startOf } from "./content-files.ts";
import { addPages } from "./eleventy.ts";
import { LivePages } from "./live-pages.ts";
import { WrongCall } from "./wrong-call.ts";

/** The server's own greeting is left out. One object for good: the server starts anew where its options change. */
const serverOptions = { messageOnStart: () => "" };

/** Runs until it is stopped; answers with the exit code. */
export async function watchSite(folder: string, port: number): Promise<number> {
  if (!isFolder(folder)) throw new WrongCall(`there is no content folder ${startOf(folder).file}`);
  const out = mkdtempSync(join(tmpdir(), "shopleaf-"));
  const live = new LivePages(folder, out);
  await live.lookAtPhotos();
  const eleventy = new Eleventy(relative(process.cwd(), folder) || ".", out, {
    configPath: "",
    quietMode: true,
    runMode: "serve",
    loader: "esm",
    config: (user) => {
      addPages(user, live.make());
      user.watchTargetsConfigReset.add(folder);
      user.setServerOptions(serverOptions);
    },
  });
  eleventy.disableLogger();
  const stopped = new Promise<number>((resolve) => {
    for (const signal of ["SIGINT", "SIGTERM"] as const) process.once(signal, () => resolve(0));
  });
  await eleventy.init();
  const buildAgain = await eleventy.watch();
  await eleventy.serve(port);
  await eleventy.eleventyServe.server.ready();
  process.stdout.write(`Live at ${eleventy.eleventyServe.server.getServerUrl("localhost")} (Ctrl+C ends it)\n`);
  let ended = false;
  const build = async () => {
    await live.lookAtPhotos();
    await buildAgain(join(folder, "recipes"));
  };
  const following = follow(live, build, () => ended);
  const code = await stopped;
  ended = true;
  await following;
  await eleventy.stopWatch();
  rmSync(out, { recursive: true, force: true });
  return code;
}

/**
 * Looks at the files again and again, and builds when they have changed and then held still for one look. Eleventy's own
 * watching hears of no deleted file and can build twice at once; here each build waits for the one before.
 */
async function follow(live: LivePages, build: () => Promise<void>, isEnded: () => boolean): Promise<void> {
  let last = live.made;
  while (!isEnded()) {
    const started = performance.now();
    const now = live.onDisk();
    const pause = Math.max(100, 20 * (performance.now() - started));
    if (now !== live.made && now === last) await build();
    last = now;
    await new Promise((resolve) => setTimeout(resolve, pause));
  }
}
