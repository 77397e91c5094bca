// A model file's JSON -> shapes by name, or every fault of the file in plain words.
import type { Frame, Loop, Prism, Shape, Trim, Vec2, Vec3 } from "./shape.ts";
import { inInches, inMillimetres, type Tolerances } from "./tolerance.ts";

type OutlineItem = (Loop & { kind: "path" })["items"][number];

export type ModelPart = { readonly id: string; readonly shape: Shape };
export type Model = { readonly units: "mm" | "in"; readonly parts: readonly ModelPart[] };

/** The tolerances that belong to a model's unit. */
export const tolerancesOf = (model: Model): Tolerances => (model.units === "mm" ? inMillimetres : inInches);

/**
 * A model: `{"units": "mm", "model": {"parts": […]}}`, or the inner object by itself; without `units` it is in mm.
 * Where there are faults, the model holds the parts that have none.
 */
export function readModel(json: unknown): { readonly model: Model; readonly faults: readonly string[] } {
  const faults: string[] = [];
  const file = new Reader(json, "the file", faults);
  const inner = file.has("model") ? file.under("model") : file;
  const units = file.has("units") ? file.under("units").oneOf(["mm", "in"]) : "mm";
  const parts: ModelPart[] = [];
  const ids = new Set<string>();
  for (const entry of inner.under("parts").items()) {
    const before = faults.length;
    const id = entry.under("id").text();
    const part = entry.called(id === undefined ? entry.name : `part "${id}"`);
    if (id !== undefined && ids.has(id)) part.fault("there are two parts of this name");
    if (id !== undefined) ids.add(id);
    const shape = readShape(part);
    if (id !== undefined && shape !== undefined && faults.length === before) parts.push({ id, shape });
  }
  return { model: { units: units ?? "mm", parts }, faults };
}

function readShape(part: Reader): Shape | undefined {
  const prism = readPrism(part);
  const trims = whole(part.optionalItems("trims").map(readTrim));
  const removals = whole(part.optionalItems("removals").map(readPrism));
  if (prism === undefined || trims === undefined || removals === undefined) return undefined;
  return { ...prism, trims, removals };
}

function readPrism(from: Reader): Prism | undefined {
  const frame = readFrame(from.under("frame"));
  const outline = readLoop(from);
  const holes = whole(from.optionalItems("holes").map(readLoop));
  const depth = from.under("depth").above0();
  if (frame === undefined || outline === undefined || depth === undefined || holes === undefined) return undefined;
  return { frame, outline, holes, depth };
}

function readFrame(from: Reader): Frame | undefined {
  const [origin, x, y] = [from.under("origin").vec3(), from.under("x").vec3(), from.under("y").vec3()];
  if (origin === undefined || x === undefined || y === undefined) return undefined;
  const size = (v: Vec3) => Math.hypot(...v);
  const lean = x[0] * y[0] + x[1] * y[1] + x[2] * y[2];
  if (Math.abs(size(x) - 1) > 1e-6 || Math.abs(size(y) - 1) > 1e-6 || Math.abs(lean) > 1e-6) {
    return from.fault("x and y should be one long and at right angles");
  }
  return { origin, x, y };
}

function readLoop(from: Reader): Loop | undefined {
  if (from.has("circle")) {
    const circle = from.under("circle");
    const [x, y, radius] = circle.numbers(3, "[centre x, centre y, radius]") ?? [];
    if (x === undefined || y === undefined || radius === undefined) return undefined;
    if (radius <= 0) return circle.fault(`the radius should be above 0, found ${radius}`);
    return { kind: "circle", centre: [x, y], radius };
  }
  const outline = from.under("outline");
  const items = whole(outline.items().map(readOutlineItem));
  if (items === undefined) return undefined;
  const arcs = items.filter((item) => "mid" in item).length;
  if (items.length + arcs < 3) return outline.fault(`an outline needs three sides, found ${items.length}`);
  return { kind: "path", items };
}

function readOutlineItem(item: Reader): OutlineItem | undefined {
  if (!item.has("mid")) return item.vec2();
  const [mid, to] = [item.under("mid").vec2(), item.under("to").vec2()];
  return mid === undefined || to === undefined ? undefined : { mid, to };
}

function readTrim(from: Reader): Trim | undefined {
  const [point, normal] = [from.under("point").vec3(), from.under("normal").vec3()];
  if (point === undefined || normal === undefined) return undefined;
  if (Math.hypot(...normal) === 0) return from.fault("the normal has no direction");
  return { point, normal };
}

/** The list, if every entry could be read. */
function whole<T>(list: readonly (T | undefined)[]): readonly T[] | undefined {
  const there = list.filter((entry) => entry !== undefined);
  return there.length === list.length ? there : undefined;
}

/** A value of the file with words for where it stands; what it can't be read as it tells as a fault. */
class Reader {
  readonly name: string;
  readonly #value: unknown;
  readonly #faults: string[];

  constructor(value: unknown, name: string, faults: string[]) {
    this.#value = value;
    this.name = name;
    this.#faults = faults;
  }

  called(name: string): Reader {
    return new Reader(this.#value, name, this.#faults);
  }

  fault(says: string): undefined {
    this.#faults.push(`${this.name}: ${says}`);
    return undefined;
  }

  has(key: string): boolean {
    return this.#value !== null && typeof this.#value === "object" && Object.hasOwn(this.#value, key);
  }

  under(key: string): Reader {
    const inside = this.has(key) ? (this.#value as Record<string, unknown>)[key] : undefined;
    return new Reader(inside, this.name === "the file" ? `"${key}"` : `"${key}" of ${this.name}`, this.#faults);
  }

  items(): Reader[] {
    if (!Array.isArray(this.#value)) {
      this.#expected("a list");
      return [];
    }
    return this.#value.map((item, i) => new Reader(item, `entry ${i + 1} in ${this.name}`, this.#faults));
  }

  optionalItems(key: string): Reader[] {
    return this.has(key) ? this.under(key).items() : [];
  }

  text(): string | undefined {
    return typeof this.#value === "string" ? this.#value : this.#expected("a name in quotes");
  }

  oneOf<T extends string>(allowed: readonly T[]): T | undefined {
    return allowed.find((word) => word === this.#value) ?? this.#expected(allowed.map((w) => `"${w}"`).join(" or "));
  }

  above0(): number | undefined {
    const value = this.#value;
    return typeof value === "number" && value > 0 && Number.isFinite(value)
      ? value
      : this.#expected("a number above 0");
  }

  numbers(count: number, words: string): number[] | undefined {
    const value = this.#value;
    const good = Array.isArray(value) && value.length === count && value.every((n) => Number.isFinite(n));
    return good ? (value as number[]) : this.#expected(words);
  }

  vec2(): Vec2 | undefined {
    const [x, y] = this.numbers(2, "a point [x, y]") ?? [];
    return x === undefined || y === undefined ? undefined : [x, y];
  }

  vec3(): Vec3 | undefined {
    const [x, y, z] = this.numbers(3, "three numbers [x, y, z]") ?? [];
    return x === undefined || y === undefined || z === undefined ? undefined : [x, y, z];
  }

  #expected(words: string): undefined {
    const value = this.#value;
    const found = value === undefined ? "nothing" : JSON.stringify(value).slice(0, 40);
    return this.fault(`expected ${words}, found ${found}`);
  }
}
