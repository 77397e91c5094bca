// `shopleaf watch`: a content folder -> live pages while the recipe is written.

import { watchSite } from "../watch-site.ts";
import { WrongCall } from "../wrong-call.ts";
import { expectNone, parseOptions } from "./options.ts";

/** Ends when it is told to (Ctrl+C). */
export async function watch(words: readonly string[]): Promise<number> {
  const { given, alone } = parseOptions(words, ["content", "port"]);
  expectNone(alone);
  const port = given.port === undefined ? 8080 : Number(given.port);
  if (!Number.isInteger(port) || port < 1 || port > 65535)
    throw new WrongCall(`--port ${given.port} is no port number`);
  return watchSite(given.content ?? "content", port);
}
