// The words after a command -> its options and its files, or a wrong call.
import { parseArgs } from "node:util";
import { WrongCall } from "../wrong-call.ts";

/** Options by name (each takes a word, each at most once) and the words that stand alone. */
export function parseOptions<Name extends string>(
  words: readonly string[],
  names: readonly Name[],
): { readonly given: Readonly<Partial<Record<Name, string>>>; readonly alone: readonly string[] } {
  const options = Object.fromEntries(names.map((name) => [name, { type: "string" as const, multiple: true }]));
  try {
    const { values, positionals } = parseArgs({ args: [...words], options, allowPositionals: true, strict: true });
    const given: Partial<Record<Name, string>> = {};
    for (const name of names) {
      const said = (values as Record<string, string[] | undefined>)[name];
      if (said && said.length > 1) throw new WrongCall(`--${name} is given ${said.length} times`);
      if (said?.[0] === "") throw new WrongCall(`--${name} is empty`);
      if (said?.[0] !== undefined) given[name] = said[0];
    }
    return { given, alone: positionals };
  } catch (error) {
    if (error instanceof WrongCall) throw error;
    // Node's own sentence names the option; its advice after the first full stop does not help here.
    throw new WrongCall(error instanceof Error ? (error.message.split(". ")[0] ?? error.message) : String(error));
  }
}

/** The words that stand alone where there must be none. */
export function expectNone(alone: readonly string[]): void {
  if (alone.length > 0) throw new WrongCall(`nothing is expected here: ${alone.join(" ")}`);
}
