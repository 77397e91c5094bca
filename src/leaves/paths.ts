// Leaf -> where it stands, counted from the root of its shelf.
import { slug } from "../units/slug.ts";
import type { Paper } from "../yard/papers.ts";

/** Folders keep slugs from meeting file names of the shelf itself; both parts of a care card's path are kebab case. */
export const buildSheetPath = (slug: string): string => `items/${slug}.html`;
/** The sheet of a form other than the standard one. */
export const formSheetPath = (slug: string, form: string): string =>
  form === "" ? buildSheetPath(slug) : `items/${slug}/${form}.html`;
export const priceSheetPath = (slug: string): string => `prices/${slug}.html`;
/** The sheets of a form as a PDF. */
export const printedPath = (slug: string, form: string, { size, type }: Paper): string =>
  `print/${[slug, form, size, type === "large" ? type : ""].filter((part) => part !== "").join("-")}.pdf`;
export const productPagePath = (slug: string): string => `goods/${slug}.html`;
export const careCardPath = (slug: string, variant: string): string => `care/${slug}/${variant}.html`;
export const listingPath = (slug: string): string => `listings/${slug}.html`;
export const listingImagePath = (slug: string, name: string): string => `listings/${slug}/${name}`;
export const picturePath = (slug: string): string => `pictures/${slug}.png`;
/** From the line's name; one without a Latin letter still has a page. */
export const linePagePath = (line: string): string => `lines/${slug(line) || "goods"}.html`;
export const sparesPath = (slug: string): string => `spares/${slug}.html`;
export const aboutPath = "about.html";
export const carePath = "care.html";
export const cardsPath = (slug: string): string => `cards/${slug}.html`;
export const seasonPath = "season.html";
export const orderBookPath = "orders.html";
/** Both are called by the order's slug. */
export const orderPath = (order: string): string => `orders/${order}.html`;
export const proofPath = (order: string): string => `proofs/${order}.html`;
/** The batches of a line, from its name. */
export const batchPath = (line: string): string => `batch/${slug(line) || "goods"}.html`;
/** Other boards for a thing. */
export const boardsPath = (slug: string): string => `boards/${slug}.html`;
export const feedPath = "feed.xml";
export const indexPath = "index.html";
export const drawingsPath = "drawings.html";

/** "../" for each folder between a path and its shelf's root. */
export const rootFrom = (path: string): string => "../".repeat(path.split("/").length - 1);
