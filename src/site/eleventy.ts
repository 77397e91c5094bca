// A site's pages -> Eleventy templates. The maker's files never reach Eleventy itself, so nothing in them is run.
import type { UserConfig } from "@11ty/eleventy";
import type { Page } from "./site.ts";

/** The template format of our own pages: an ending no maker's file has. */
const format = "shopleaf-page";

/** Tells Eleventy the pages to write, each under its own path. */
export function addPages(user: UserConfig, pages: readonly Page[]): void {
  const html = new Map(pages.map((page) => [page.path, page.html]));
  user.setUseGitIgnore(false);
  // A name that no content folder holds: data files there would be run as programs.
  user.setDataDirectory(".no-data");
  user.setTemplateFormats([format]);
  user.addExtension(format, {
    read: false,
    getData: false,
    compile:
      () =>
      ({ sitePath }) => {
        const page = html.get(sitePath);
        if (page === undefined) throw new Error(`no page was made for ${sitePath}`);
        return page;
      },
  });
  for (const { path } of pages) {
    user.addTemplate(`${path}.${format}`, "", { permalink: `/${path}`, sitePath: path, layout: false });
  }
}
