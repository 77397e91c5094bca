// What is in a file -> ten letters for its name, so that a changed file has another address. No digit in them: no figure is there by chance.
import { createHash } from "node:crypto";

export const contentHash = (content: string | Uint8Array): string =>
  [...createHash("sha256").update(content).digest("hex").slice(0, 10)]
    .map((digit) => String.fromCharCode("a".charCodeAt(0) + Number.parseInt(digit, 16)))
    .join("");
