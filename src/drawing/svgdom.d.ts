// The one call of svgdom that svg.ts uses.
declare module "svgdom" {
  export function createSVGWindow(): Window & typeof globalThis;
}
