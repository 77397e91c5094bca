// A thing's size and the room on paper -> the drawing scale, from a short row of round ratios.
import { mmPerInch } from "./sheet.ts";

/** Thing to paper, fullest first. */
const ratios = [1, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10, 12, 15, 16, 18, 20, 24, 30, 40, 50, 75, 100, 150, 200];

/** Sizes in inches and room in mm -> the largest round scale that fits, as its ratio (8 means 1:8). */
export function findRatio(
  width: number,
  height: number,
  room: { readonly width: number; readonly height: number },
): number {
  const least = Math.max((width * mmPerInch) / room.width, (height * mmPerInch) / room.height);
  return ratios.find((ratio) => ratio >= least - 1e-9) ?? Math.ceil(least);
}

/** Paper mm for one inch of a picture that is not measured from: as large as its room, no larger than true size. */
export const fitScale = (
  width: number,
  height: number,
  room: { readonly width: number; readonly height: number },
): number => Math.floor(Math.min(mmPerInch, room.width / width, room.height / height) * 1000) / 1000;

/** Paper mm for one inch of the thing. */
export const scaleOf = (ratio: number): number => mmPerInch / ratio;

export const formatRatio = (ratio: number): string => `1:${ratio}`;
