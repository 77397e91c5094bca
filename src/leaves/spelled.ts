// A text -> its letters one by one, so that a wrong one is seen: "H · o · n · e · y".

/** Marks that sit on a letter stay with it; blanks are told. */
export const lettersOf = (text: string): readonly string[] =>
  [...new Intl.Segmenter("en", { granularity: "grapheme" }).segment(text)].map(({ segment }) => segment);

export const spelled = (text: string): string =>
  lettersOf(text)
    .map((letter) => (letter.trim() === "" ? "(blank)" : letter))
    .join(" · ");
