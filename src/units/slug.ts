// A title -> the name of its files and addresses: small letters, digits and single hyphens only.

const joined: Readonly<Record<string, string>> = { ß: "ss", æ: "ae", œ: "oe", ø: "o", đ: "d", ł: "l", þ: "th" };

/** "Baker's rack, Größe 2" -> "bakers-rack-grosse-2". Empty where the title has no Latin letter or digit. */
export const slug = (title: string): string =>
  title
    .toLowerCase()
    .replace(/[ßæœøđłþ]/g, (letter) => joined[letter] ?? "")
    .normalize("NFKD")
    .replace(/[\u0300-\u036f'’]/g, "")
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-+|-+$/g, "");
