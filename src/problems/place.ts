// Where something stands in a file the maker wrote.

/** A place in a maker's file: lines and columns count from 1; `file` is as it was asked for, with `/` between folders. */
export type Place = { readonly file: string; readonly line: number; readonly column: number };

/** A text as the maker wrote it, with the place of its first character. */
export type Written = { readonly text: string; readonly at: Place };

/** The place `columns` characters further on in the same line. */
export const further = (at: Place, columns: number): Place => ({ ...at, column: at.column + columns });

/** Reading order: by file, line, column. */
export const comparePlaces = (a: Place, b: Place): number =>
  a.file < b.file ? -1 : a.file > b.file ? 1 : a.line - b.line || a.column - b.column;
