// Problems -> the panel that stands on top of every live page until they are mended.
import { renderToString } from "preact-render-to-string";
import { printPlace } from "../problems/print.ts";
import type { Problem } from "../problems/problem.ts";
import { countProblems } from "./print-json.ts";

const look = "margin:0;padding:1rem 1.25rem;background:#5c1a12;color:#fff;font:16px/1.45 sans-serif";
const place = "font-family:monospace;overflow-wrap:anywhere";

export const problemPanel = (problems: readonly Problem[]): string =>
  renderToString(
    <section role="alert" style={look}>
      <strong>{countProblems(problems.length)}; what you see is the last that was good.</strong>
      <ol>
        {problems.map((p) => (
          <li key={printPlace(p.at) + p.code}>
            <span style={place}>{printPlace(p.at)}</span> {p.says} {p.expected ? `Expected ${p.expected}. ` : ""}
            {p.mend}
          </li>
        ))}
      </ol>
    </section>,
  );

/** The same for a fault of our own. */
export const faultPanel = (says: string): string =>
  renderToString(
    <section role="alert" style={look}>
      <strong>Shopleaf itself failed: {says}</strong>
    </section>,
  );

/** A page that holds the panel alone, for when nothing was good yet. */
export const panelPage = (panel: string): string =>
  `<!doctype html>\n<html lang="en"><head><meta charset="utf-8"><title>Problems</title></head><body>${panel}</body></html>`;

/** The panel as the first thing in a page's body. */
export const withPanel = (html: string, panel: string): string =>
  html.replace(/<body[^>]*>/, (body) => `${body}${panel}`);
