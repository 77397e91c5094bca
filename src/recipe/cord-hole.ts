// How thick a rope is -> how wide its hole is drilled.
import { type Exact, exact } from "../units/length.ts";

/** A hole is drilled this much wider than its rope (inches); common practice, no source. */
export const ropeHolePlay: Exact = exact(1, 8);
