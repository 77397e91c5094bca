// A page's element -> its whole text, with the policy that lets no script run and nothing come from elsewhere.
import { createHash } from "node:crypto";
import type { VNode } from "preact";
import { renderToString } from "preact-render-to-string";

/**
 * `file:` stands beside 'self' because browsers differ in whether a page opened from disk is "self" to its neighbours.
 * What a meta element can't say (frame-ancestors) is left to whoever publishes the store.
 */
const policyFor = (styles: readonly string[]): string =>
  [
    "default-src 'none'",
    ["style-src 'self' file:", ...styles.map(styleHash)].join(" "),
    "font-src 'self' file:",
    "img-src 'self' file: data:",
    // No script runs that could connect to anything; readers of whole sites ask for robots.txt in the page's name.
    "connect-src 'self'",
    "base-uri 'none'",
    "form-action 'none'",
  ].join("; ");

/** The style in a page's own head is let through by what it says, so that no other is. */
const styleHash = (style: string): string => `'sha256-${createHash("sha256").update(style).digest("base64")}'`;

const policyElement = (styles: readonly string[]): string =>
  `<meta http-equiv="Content-Security-Policy" content="${policyFor(styles)}">`;

export function pageHtml(element: VNode): string {
  const html = renderToString(element);
  if (!html.includes("<head>")) throw new Error("a layout gave no head");
  const [head = ""] = html.split("</head>");
  const styles = [...head.matchAll(/<style>(.*?)<\/style>/gs)].map(([, style]) => style ?? "");
  return `<!doctype html>\n${html.replace("<head>", () => `<head>${policyElement(styles)}`)}\n`;
}

/** The page without its policy: live pages are reloaded by a script. */
export const withoutPolicy = (html: string): string =>
  html.replace(/<meta http-equiv="Content-Security-Policy"[^>]*>/, () => "");
