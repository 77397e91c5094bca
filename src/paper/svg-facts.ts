// The SVG text of a drawing -> how large it is on paper and what it says to those who can't see it.

export type SvgFacts = { readonly width: number; readonly height: number; readonly alt: string };

const entities: Readonly<Record<string, string>> = { lt: "<", gt: ">", quot: '"', apos: "'", "#39": "'", amp: "&" };
const plainText = (text: string): string =>
  text.replace(/&(lt|gt|quot|apos|#39|amp);/g, (_, name: string) => entities[name] ?? "");

/** Millimetres, from the drawing's own width and height. Errors: a drawing without size, title or description. */
export function svgFacts(svg: string): SvgFacts {
  const size = /^\s*<svg\b[^>]*?\swidth="([\d.]+)mm"[^>]*?\sheight="([\d.]+)mm"/.exec(svg);
  const title = /<title\b[^>]*>([^<]*)<\/title>/.exec(svg)?.[1];
  const says = /<desc\b[^>]*>([^<]*)<\/desc>/.exec(svg)?.[1];
  if (!size || title === undefined || says === undefined)
    throw new Error(`a picture is no drawing with size, title and description: ${svg.slice(0, 60)}`);
  const [head, body] = [title, says].map((text) => plainText(text).trim().replace(/\s+/g, " "));
  return { width: Number(size[1]), height: Number(size[2]), alt: `${head?.replace(/\.$/, "")}. ${body}`.trim() };
}
