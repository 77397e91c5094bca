// What pages need beside themselves. Every shelf carries its own copy under `assets/`, so that it stands alone.

/** `from` is counted from the project's root. Three cuts of Source Sans 3 (SIL Open Font License 1.1) and its licence. */
export const assets: readonly { readonly path: string; readonly from: string }[] = [
  { path: "assets/paper.css", from: "layouts/css/paper.css" },
  { path: "assets/binder.css", from: "layouts/css/binder.css" },
  { path: "assets/store.css", from: "layouts/css/store.css" },
  { path: "assets/guide.css", from: "layouts/css/guide.css" },
  { path: "assets/fonts/regular.woff2", from: "node_modules/source-sans/WOFF2/TTF/SourceSans3-Regular.ttf.woff2" },
  { path: "assets/fonts/italic.woff2", from: "node_modules/source-sans/WOFF2/TTF/SourceSans3-It.ttf.woff2" },
  { path: "assets/fonts/semibold.woff2", from: "node_modules/source-sans/WOFF2/TTF/SourceSans3-Semibold.ttf.woff2" },
  { path: "assets/fonts/LICENSE.md", from: "node_modules/source-sans/LICENSE.md" },
];
