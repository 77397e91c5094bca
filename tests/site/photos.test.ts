// Photographs: stripped of place and camera, upright, in sRGB, in sizes and formats; hostile and broken files told in words.
import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import sharp from "sharp";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { Problem } from "../../src/problems/problem.ts";
import { readRecipe } from "../../src/recipe/read-recipe.ts";
import { isProblem } from "../../src/site/content-files.ts";
import { type MadePhoto, makePhoto } from "../../src/site/photos/make-photo.ts";
import { readPhotos } from "../../src/site/photos/read-photos.ts";
import { sniff } from "../../src/site/photos/sniff.ts";

const folder = mkdtempSync(join(tmpdir(), "shopleaf-test-"));
afterAll(() => rmSync(folder, { recursive: true }));

/** A test picture, red on its left half and green on its right, 1800 x 1200. */
const halves = (width = 1800, height = 1200) =>
  sharp({ create: { width, height, channels: 3, background: "#ff0000" } }).composite([
    {
      input: {
        create: { width: Math.floor(width / 2), height, channels: 3, background: "#00ff00" },
      },
      left: Math.ceil(width / 2),
      top: 0,
    },
  ]);

const gps = {
  IFD0: { Copyright: "Quaxmoor Herbold", Model: "Zwingcam 9", ImageDescription: "the back yard of Quaxmoor" },
  IFD3: { GPSLatitudeRef: "N", GPSLatitude: "48/1 12/1 30/1", GPSLongitudeRef: "E", GPSLongitude: "16/1 22/1 0/1" },
};

/** As a telephone saves it: lying on its side (orientation 6), place and name in its EXIF, colours in Display P3. */
const fromPhone = () =>
  halves().withExif(gps).withIccProfile("p3").withMetadata({ orientation: 6 }).jpeg({ quality: 95 }).toBuffer();

const source = (bytes: Uint8Array, file = "photos/marker/01-by-the-door.jpg") => ({
  ...{ file, slug: "marker", number: 1, words: "by the door", bytes },
});

async function madeOf(bytes: Uint8Array): Promise<MadePhoto> {
  const made = await makePhoto(source(bytes));
  if (isProblem(made)) throw new Error(made.says);
  return made;
}
async function problemOf(bytes: Uint8Array): Promise<Problem> {
  const made = await makePhoto(source(bytes));
  if (!isProblem(made)) throw new Error("it is taken");
  return made;
}

describe("a photograph from a telephone", () => {
  let original: Buffer;
  let made: MadePhoto;
  beforeAll(async () => {
    original = await fromPhone();
    made = await madeOf(original);
  });

  it("the test's own picture does carry place, name, profile and orientation", async () => {
    const { exif, icc, orientation } = await sharp(original).metadata();
    expect([exif !== undefined, icc !== undefined, orientation]).toEqual([true, true, 6]);
    expect(original.toString("latin1")).toContain("Quaxmoor");
  });
  it("no file of it carries any of that", async () => {
    for (const { path, bytes } of made.files) {
      const { exif, icc, iptc, xmp, orientation, comments } = await sharp(bytes).metadata();
      expect([exif, icc, iptc, xmp, orientation, comments], path).toEqual(Array(6).fill(undefined));
      expect(Buffer.from(bytes).toString("latin1"), path).not.toMatch(/Quaxmoor|Zwingcam|GPS|Exif|ICC_PROFILE/);
    }
  });
  it("stands upright: 1800 x 1200 on its side is 1200 x 1800, so 480 x 720, 960 x 1440 and 1200 x 1800", () => {
    expect(made.photo.sizes.map(({ width, height }) => [width, height])).toEqual([
      [480, 720],
      [960, 1440],
      [1200, 1800],
    ]);
  });
  it("what was its left half is on top: orientation 6 is turned a quarter to the right (Exif 2.32)", async () => {
    const { data, info } = await sharp(made.files[0]?.bytes).raw().toBuffer({ resolveWithObject: true });
    const at = (x: number, y: number) => [...data.subarray((y * info.width + x) * 3, (y * info.width + x) * 3 + 3)];
    expect(at(240, 100)[0]).toBeGreaterThan(200);
    expect(at(240, 620)[1]).toBeGreaterThan(200);
  });
  it("comes in WebP and JPEG, each named by what it is of and a hash, the formats as they say", async () => {
    expect(made.files).toHaveLength(6);
    for (const { path, bytes } of made.files) {
      expect(path).toMatch(/^photos\/marker-1-[a-p]{10}-\d+\.(webp|jpg)$/);
      expect((await sharp(bytes).metadata()).format).toBe(path.endsWith("webp") ? "webp" : "jpeg");
    }
  });
  it("is the same bytes twice", async () => {
    const again = await madeOf(original);
    expect(again.files.map(({ bytes }) => Buffer.from(bytes).toString("base64"))).toEqual(
      made.files.map(({ bytes }) => Buffer.from(bytes).toString("base64")),
    );
  });
});

it("colour is kept: a red of Display P3 that sRGB has too is the same red in sRGB", async () => {
  // #c86432 in sRGB, written as the P3 numbers for it: the profile alone says what they mean.
  const srgb = await sharp({ create: { width: 600, height: 600, channels: 3, background: "#c86432" } })
    .png()
    .toBuffer();
  const p3 = await sharp(srgb).withIccProfile("p3").png().toBuffer();
  const numbers = [...(await sharp(p3, {}).keepIccProfile().raw().toBuffer()).subarray(0, 3)];
  // 187, 105, 62: taken for sRGB it would be another colour.
  expect(Math.abs((numbers[0] ?? 0) - 0xc8)).toBeGreaterThan(8);
  const { files } = await madeOf(p3);
  const [r = 0, g = 0, b = 0] = await sharp(files.find(({ path }) => path.endsWith("jpg"))?.bytes)
    .raw()
    .toBuffer();
  for (const [found, meant] of [
    [r, 0xc8],
    [g, 0x64],
    [b, 0x32],
  ] as const)
    expect(Math.abs(found - meant)).toBeLessThan(6);
});

it("a small one isn't made larger: 700 wide has 480 and 700", async () => {
  const made = await madeOf(await halves(700, 600).jpeg().toBuffer());
  expect(made.photo.sizes.map(({ width }) => width)).toEqual([480, 700]);
});

const svg = `<?xml version="1.0"?><svg xmlns="http://www.w3.org/2000/svg"><script>alert(1)</script><image href="file:///etc/passwd"/></svg>`;

describe("what is no photograph is told in plain words", () => {
  it.each<[string, Uint8Array, string]>([
    ["a drawing that calls itself .jpg", Buffer.from(svg), "a drawing in SVG"],
    ["the same without its first line", Buffer.from("\ufeff  <svg onload='x'>"), "a drawing in SVG"],
    ["a page", Buffer.from("<!doctype html><script>alert(1)</script>"), "a page of text with markup"],
    ["nothing", Buffer.alloc(0), "empty"],
    ["a PDF", Buffer.from("%PDF-1.7 …"), "a PDF file"],
    ["a GIF", Buffer.from("GIF89a…"), "a GIF file"],
    ["HEIC", Buffer.from("\0\0\0\x18ftypheic"), "a HEIC file, as some telephones save them"],
    ["anything", Buffer.from("hello"), "something else"],
  ])("%s", async (_, bytes, found) => {
    expect(sniff(bytes)).toEqual({ other: found });
    expect(await problemOf(bytes)).toMatchObject({ code: "photo-not-one", found });
  });

  it("cut off in the middle, or a JPEG's head with rubbish behind it, it is broken", async () => {
    const whole = await halves(900, 900).jpeg().toBuffer();
    expect((await problemOf(whole.subarray(0, whole.length / 2))).code).toBe("photo-broken");
    const rubbish = Buffer.concat([
      Buffer.from([0xff, 0xd8, 0xff, 0xe0]),
      Buffer.from("<script>alert(1)</script>".repeat(50)),
    ]);
    expect((await problemOf(rubbish)).code).toBe("photo-broken");
  });
  it("479 across is too small, and 120 million pixels are too many", async () => {
    expect((await problemOf(await halves(479, 600).jpeg().toBuffer())).code).toBe("photo-too-small");
    const flat = await sharp({
      create: { width: 12_000, height: 10_000, channels: 3, background: "#888888" },
      limitInputPixels: false,
    })
      .png({ compressionLevel: 1 })
      .toBuffer();
    expect(await problemOf(flat)).toMatchObject({ code: "photo-too-big", found: "120 million pixels" });
  }, 60_000);
});

const marker = (more = "") => `---
title: Marker
${more}overall: 12 x fit x 18
pieces:
  strip: fence board, ripped to 2 1/2
stand:
  sign: 1 strip, on edge, from left to right, at front, top at top
  stake: 1 strip, upright, facing front, from bottom to 17, against back of sign, centred
joins:
  stake to sign: 2 screw No. 6 x 1, back
finish:
  plain: none
---
A marker.

## Put it together

1. Lay the **sign** down.
2. Screw the **stake** across it.
`;

describe("a folder of photographs", () => {
  const place = join(folder, "photos/marker");
  const recipe = readRecipe("marker.md", marker("photos:\n  1: In the bean row\n  7: Nowhere\n")).recipe;
  const fresh = () => {
    rmSync(join(folder, "photos"), { recursive: true, force: true });
    mkdirSync(place, { recursive: true });
  };
  const codes = async () => (await readPhotos(folder, [recipe])).problems.map(({ code }) => code);

  it("names tell number and words; two of one number, no number, signs that hide or lead elsewhere are told", async () => {
    fresh();
    const good = await halves(600, 600).jpeg().toBuffer();
    writeFileSync(join(place, "01-by-the-door.jpg"), good);
    writeFileSync(join(place, "1-again.JPG"), good);
    for (const name of [
      "DSC_0001.jpg",
      "02-..-..-up.jpg",
      "03-left\u202egpj.exe.jpg",
      "04-<img src=x>.jpg",
      "05-plan.svg",
    ])
      writeFileSync(join(place, name), good);
    symlinkSync("/etc/passwd", join(place, "06-secret.jpg"));
    writeFileSync(join(folder, "photos/loose.jpg"), good);
    mkdirSync(join(folder, "photos/markr"));
    symlinkSync("/etc", join(folder, "photos/etc"));
    const { problems, photos } = await readPhotos(folder, [recipe]);
    expect(photos.map(({ photo }) => [photo.number, photo.words])).toEqual([[1, "by the door"]]);
    expect(problems.map(({ code }) => code).sort()).toEqual(
      [
        ...Array(5).fill("photo-name"),
        ...["photo-twice", "photo-link", "photo-link", "photo-loose", "photo-folder", "photo-missing"],
      ].sort(),
    );
    for (const { at, says } of problems) expect(`${at.file} ${says}`).not.toMatch(/[\u202e<>]/);
  });
  it("claims that nobody can prove are told in a name too; a folder of nothing wrong tells nothing but words without a photograph", async () => {
    fresh();
    writeFileSync(join(place, "01-never-rots.jpg"), await halves(600, 600).jpeg().toBuffer());
    expect(await codes()).toEqual(["unprovable", "photo-missing"]);
  });
  it("while a recipe can't be read its folder is nobody's fault", async () => {
    fresh();
    mkdirSync(join(folder, "photos/other"));
    expect((await readPhotos(folder, [undefined])).problems).toEqual([]);
    expect(await codes()).toContain("photo-folder");
  });
});
