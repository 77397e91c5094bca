// A recipe of an older format -> the same recipe in the format that is read now, one step from format to format.

/** One step: a rewrite of the whole text, and what it does in words. */
export type Migration = {
  readonly from: number;
  readonly to: number;
  readonly says: string;
  readonly rewrite: (text: string) => string;
};

/** The format this reader knows. A recipe that names none is of this one. */
export const knownFormat = 1;

/** All steps there are. The first format is still the one that is read, so there is none yet. */
export const formatMigrations: readonly Migration[] = [];

/** The steps from one format to another, or undefined where they don't lead there. */
export function migrationPath(
  from: number,
  to: number,
  migrations: readonly Migration[] = formatMigrations,
): readonly Migration[] | undefined {
  if (from === to) return [];
  // The longest step first; a step leads on only, so this ends.
  const next = migrations
    .filter((step) => step.from === from && step.to > from && step.to <= to)
    .sort((a, b) => b.to - a.to);
  for (const step of next) {
    const rest = migrationPath(step.to, to, migrations);
    if (rest) return [step, ...rest];
  }
  return undefined;
}

/** The text after these steps, its `format` line saying so. */
export const migrated = (text: string, steps: readonly Migration[]): string =>
  steps.reduce((before, { to, rewrite }) => saysFormat(rewrite(before), to), text);

const formatLine = /^(---[ \t]*\r?\n(?:(?!---)[^\n]*\n)*?)format:[^\n#]*?([ \t]*(?:#[^\n]*)?\r?\n)/;

function saysFormat(text: string, format: number): string {
  return formatLine.test(text)
    ? text.replace(formatLine, `$1format: ${format}$2`)
    : text.replace(/^---[ \t]*\r?\n/, (first) => `${first}format: ${format}\n`);
}
