// `width x height`, `72 x fit x 36` -> the sizes of a box, each a sum or left to fit.
import type { Written } from "../problems/place.ts";
import type { Extent } from "./recipe.ts";
import { attempt, type Form, type Gathered, Scan } from "./scan.ts";
import { readSum } from "./sum.ts";

export const overallForm: Form = {
  form: "W x D x H",
  means: "The box the finished thing fills: width, depth and height; fit leaves a size to the pieces.",
  example: "30 x 18 x 26",
};
export const assemblySizeForm: Form = {
  form: "W x D x H",
  means: "The box an assembly stands in, before it is turned; fit leaves a size to its pieces or to the room.",
  example: "20 x fit x height",
};
export const panelSizeForm: Form = {
  form: "W x H",
  means: "The panel's width and height seen from its good side; fit leaves a size to the pieces or to the room.",
  example: "fit x height",
};

function readExtent(scan: Scan): Extent {
  const at = scan.here;
  return scan.skip("fit") ? { kind: "fit", at } : readSum(scan);
}

function readExtents(whole: Written, form: Form, into: Gathered): readonly Extent[] | undefined {
  return attempt(into.problems, () => {
    const scan = new Scan(whole, form, into);
    const extents = [readExtent(scan)];
    for (let more = form.form.split(" x ").length - 1; more > 0; more--) {
      scan.must("x");
      extents.push(readExtent(scan));
    }
    scan.end();
    return extents;
  });
}

/** The three overall sizes; all left to fit where they can't be read. */
export function readOverall(whole: Written, into: Gathered): { width: Extent; depth: Extent; height: Extent } {
  const fit: Extent = { kind: "fit", at: whole.at };
  const [width = fit, depth = fit, height = fit] = readExtents(whole, overallForm, into) ?? [];
  return { width, depth, height };
}

/** A panel's two sizes; both left to fit where they can't be read. */
export function readPanelSize(whole: Written, into: Gathered): { width: Extent; height: Extent } {
  const fit: Extent = { kind: "fit", at: whole.at };
  const [width = fit, height = fit] = readExtents(whole, panelSizeForm, into) ?? [];
  return { width, height };
}
