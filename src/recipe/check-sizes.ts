// Sizes that follow from each other in a circle have no value; the circle is told at its first size.
import type { Place } from "../problems/place.ts";
import { type Problem, problem } from "../problems/problem.ts";
import type { Recipe, Sum } from "./recipe.ts";

type Node = { readonly name: string; readonly at: Place; readonly uses: readonly string[] };

/** Names of sizes in a sum. */
function sizesIn(sum: Sum): readonly string[] {
  if (sum.kind === "size") return [sum.name];
  if (sum.kind === "plus" || sum.kind === "minus") return [...sizesIn(sum.left), ...sizesIn(sum.right)];
  return sum.kind === "times" || sum.kind === "over" ? sizesIn(sum.sum) : [];
}

/** Each circle once, among the sizes and the three overall sizes. */
export function checkSizeCircles(recipe: Pick<Recipe, "sizes" | "overall">): Problem[] {
  const nodes = new Map<string, Node>();
  for (const name of ["width", "depth", "height"] as const) {
    const extent = recipe.overall[name];
    nodes.set(name, { name, at: extent.at, uses: extent.kind === "fit" ? [] : sizesIn(extent) });
  }
  for (const { name, sum } of recipe.sizes) nodes.set(name.text, { name: name.text, at: name.at, uses: sizesIn(sum) });
  // Whatever follows only from settled sizes is settled; what is left lies in a circle or follows from one.
  const waiting = new Map([...nodes.values()].map((node) => [node.name, node.uses.filter((u) => nodes.has(u)).length]));
  const users = new Map<string, string[]>();
  for (const node of nodes.values())
    for (const used of node.uses) users.set(used, [...(users.get(used) ?? []), node.name]);
  const settled = [...waiting].filter(([, uses]) => uses === 0).map(([name]) => name);
  for (const name of settled) {
    nodes.delete(name);
    for (const user of users.get(name) ?? []) {
      const left = (waiting.get(user) ?? 0) - 1;
      waiting.set(user, left);
      if (left === 0) settled.push(user);
    }
  }
  return circlesIn(nodes);
}

function circlesIn(nodes: ReadonlyMap<string, Node>): Problem[] {
  const told = new Set<string>();
  const problems: Problem[] = [];
  for (const start of nodes.values()) {
    const path: Node[] = [];
    const walked = new Set<string>();
    let node: Node | undefined = start;
    while (node && !told.has(node.name)) {
      if (walked.has(node.name)) {
        const circle: Node[] = path.slice(path.indexOf(node));
        const names = [...circle, node].map((each) => each.name);
        problems.push(problem("sizes-in-a-circle", node.at, { circle: names }, circle.at(-1)?.at));
        break;
      }
      walked.add(node.name);
      path.push(node);
      node = node.uses.map((name) => nodes.get(name)).find((used) => used !== undefined);
    }
    for (const name of walked) told.add(name);
  }
  return problems;
}
