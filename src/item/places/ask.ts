// Answers asked for in any order, each worked out once; a question that comes back to itself is a problem.
import type { Place } from "../../problems/place.ts";
import { problem } from "../../problems/problem.ts";
import { Fault } from "./fault.ts";

/** What is asked, in the maker's words ("where rails stands from left to right"), and the line that has to answer. */
export type Question = { readonly key: string; readonly words: string; readonly at: Place };

/** Remembers answers and faults by key, and knows which questions are open. */
export class Answers {
  readonly #known = new Map<string, { readonly value: unknown } | { readonly fault: Fault }>();
  readonly #open: Question[] = [];

  /** The answer to the question. Throws a Fault when it can't be had, or when it depends on itself. */
  ask<T>(question: Question, compute: () => T): T {
    const known = this.#known.get(question.key);
    if (known) {
      if ("fault" in known) throw known.fault;
      return known.value as T;
    }
    const from = this.#open.findIndex((open) => open.key === question.key);
    if (from >= 0) throw this.#circle(from);
    this.#open.push(question);
    try {
      const value = compute();
      this.#known.set(question.key, { value });
      return value;
    } catch (error) {
      if (error instanceof Fault) this.#known.set(question.key, { fault: error });
      throw error;
    } finally {
      this.#open.pop();
    }
  }

  /** The circle told from its first line in the file, so that it is told the same way whoever asked first. */
  #circle(from: number): Fault {
    const circle = this.#open.slice(from);
    const first = circle.reduce((best, q, i) => {
      const b = circle[best] as Question;
      return q.at.line < b.at.line || (q.at.line === b.at.line && q.key < b.key) ? i : best;
    }, 0);
    const turned = [...circle.slice(first), ...circle.slice(0, first)];
    const start = turned[0] as Question;
    const other = turned.find((q) => q.at.line !== start.at.line);
    return new Fault(problem("circle", start.at, { circle: turned.map((q) => q.words) }, other?.at));
  }
}
