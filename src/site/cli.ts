// The words of the command line -> one handle's run and its exit code: 0 good, 1 problems, 2 a wrong call, 3 our own fault.
import { WrongCall } from "./wrong-call.ts";

type Handle = (words: readonly string[]) => Promise<number>;

/** Each is loaded when it is called: `work` needs no pages, `problems` no server. */
const handles: ReadonlyMap<string, () => Promise<Handle>> = new Map<string, () => Promise<Handle>>([
  ["build", async () => (await import("./handles/build.ts")).build],
  ["watch", async () => (await import("./handles/watch.ts")).watch],
  ["problems", async () => (await import("./handles/problems.ts")).problems],
  ["work", async () => (await import("./handles/work.ts")).work],
  ["nudges", async () => (await import("./handles/nudges.ts")).nudges],
  ["printed", async () => (await import("./handles/printed.ts")).printed],
  ["differ", async () => (await import("./handles/differ.ts")).differ],
  ["new", async () => (await import("./handles/new.ts")).newRecipe],
  ["migrate", async () => (await import("./handles/migrate.ts")).migrate],
  ["cut", async () => (await import("./handles/cut.ts")).cut],
  ["lines", async () => (await import("./handles/lines.ts")).lines],
]);

const usage = `shopleaf build    [--content DIR] [--out DIR] [--only binder,store,packs]
                                       the whole site; --only: just these shelves
shopleaf watch    [--content DIR] [--port N]
                                       live pages while the recipe is written
shopleaf problems FILE|DIR… [--content DIR]
                                       problems only, each at its line
shopleaf work     RECIPE [--variant SLUG] [--content DIR]
                                       the worked-out item as JSON
shopleaf cut      PROBLEM.json           a cutting plan with its proof
shopleaf nudges   RECIPE [--content DIR]
                                       sizes that, changed a little, save boards or money
shopleaf lines    MODEL.json --view front|top|right|iso|general
                                       the visible lines of a model, in its own units
shopleaf printed  RECIPE [--content DIR] keeps what its sheets say; later ones tell what moved since
shopleaf differ   A B [--content DIR]    what moved between two recipes or printed files, as JSON
shopleaf new      NAME [--kind KIND] [--content DIR]
                                       a recipe to start from, that builds; a wrong KIND lists them
shopleaf migrate  RECIPE…
                                       recipes of an older format, rewritten to the present one

--content is the folder that holds recipes, yard, shop and guide (here: content).
JSON goes to standard output, problems to standard error.
Exit code: 0 all is well, 1 a recipe has a problem, 2 a call that is not understood.`;

/** Runs one call. Never throws: our own faults are told in one line, with the stack only where SHOPLEAF_TRACE is set. */
export async function cli(words: readonly string[]): Promise<number> {
  // A reader that stops early (`| head`) is no fault.
  process.stdout.on("error", (error: NodeJS.ErrnoException) => {
    if (error.code !== "EPIPE") throw error;
    process.exit(0);
  });
  const [name, ...rest] = words;
  if (name === undefined || name === "help" || words.includes("--help") || words.includes("-h")) {
    (name === undefined ? process.stderr : process.stdout).write(`${usage}\n`);
    return name === undefined ? 2 : 0;
  }
  try {
    const load = handles.get(name);
    if (!load) throw new WrongCall(`there is no command "${name}"`);
    const handle = await load();
    return await handle(rest);
  } catch (error) {
    if (error instanceof WrongCall) {
      process.stderr.write(`shopleaf: ${error.message}\n\n${usage}\n`);
      return 2;
    }
    process.stderr.write(`${tellFault(error)}\n`);
    return 3;
  }
}

function tellFault(error: unknown): string {
  if (process.env.SHOPLEAF_TRACE) return error instanceof Error ? (error.stack ?? error.message) : String(error);
  const says = (error instanceof Error ? error.message : String(error)).split("\n")[0];
  return `Shopleaf itself failed, your files are as they were: ${says}\nSet SHOPLEAF_TRACE=1, run it again and send what it prints, with the recipe, to whoever looks after Shopleaf.`;
}
