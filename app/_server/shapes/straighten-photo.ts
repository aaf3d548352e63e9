import { setImmediate } from 'node:timers/promises';
import sharp, { type OutputInfo } from 'sharp';
import { OPENED } from '@/app/_server/stock/judge-upload';
import { type Homography, straightenPixel } from '@/shared/outline/homography';
import { invertHomography } from '@/shared/outline/invert-homography';
import type { Bounds } from '@/shared/outline/outline-bounds';

export type ToStraighten = {
  /** Its size as it is held upright, pixels: what `map` counts in. */
  size: { width: number; height: number };
  /** From its pixels to millimetres of the chalk line. */
  map: Homography;
  /** What of the slab's face to show, micrometres. */
  place: Bounds;
};

const MOST_SIDE = 2048;
/** Where the photo does not reach. */
const BEYOND = 128;
/** After so many rows others get their turn. */
const ROWS_AT_ONCE = 64;

/**
 * A photo with its perspective taken out, seen from straight above, to scale: the box `place` fills it. Nothing that the
 * camera wrote into the file is kept. The photo is unpacked no larger than the picture can show, and every pixel then
 * taken from among its four neighbours. Throws where it cannot be unpacked.
 */
export async function straightenPhoto(
  upload: Buffer,
  { size, map, place }: ToStraighten,
): Promise<{ data: Buffer; info: OutputInfo }> {
  const [length, width] = [(place.right - place.left) / 1000, (place.top - place.bottom) / 1000];
  const back = invertHomography(map);
  const dense = pixelsPerMillimetre(back, place);
  const perMm = Math.min(dense, MOST_SIDE / Math.max(length, width));
  const [across, down] = [Math.max(1, Math.round(length * perMm)), Math.max(1, Math.round(width * perMm))];
  // A little finer than the picture, so that the near end of the slab stays as sharp as its middle.
  const shrink = Math.min(1, (1.15 * perMm) / dense);
  const { data, info } = await sharp(upload, OPENED)
    .rotate()
    .resize(Math.round(size.width * shrink), Math.round(size.height * shrink), { fit: 'fill' })
    .flatten({ background: '#fff' })
    .toColourspace('srgb')
    .raw()
    .toBuffer({ resolveWithObject: true });
  const [scaleX, scaleY] = [info.width / size.width, info.height / size.height];
  const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0, g = 0, h = 0, i = 0] = back;
  const seen = new Uint8Array(data.buffer, data.byteOffset, data.length);
  const out = new Uint8Array(across * down * 3).fill(BEYOND);
  const [stepX, stepY] = [length / across, width / down];
  const left = place.left / 1000 + stepX / 2;
  const sign = Math.sign(g * (left + length / 2) + (h * (place.top + place.bottom)) / 2000 + i);
  const [lastX, lastY] = [info.width - 1, info.height - 1];
  const row = info.width * 3;
  for (let line = 0; line < down; line += 1) {
    if (line % ROWS_AT_ONCE === 0) await setImmediate();
    const y = place.top / 1000 - (line + 0.5) * stepY;
    for (let at = 0; at < across; at += 1) {
      const x = left + at * stepX;
      const w = g * x + h * y + i;
      if (w * sign <= 0) continue;
      const u = ((a * x + b * y + c) / w) * scaleX - 0.5;
      const v = ((d * x + e * y + f) / w) * scaleY - 0.5;
      if (!(u >= -0.5 && v >= -0.5 && u <= lastX + 0.5 && v <= lastY + 0.5)) continue;
      // One name a line: this runs some two million times, and a pair would be made anew each time.
      const p = u < 0 ? 0 : Math.min(u, lastX);
      const q = v < 0 ? 0 : Math.min(v, lastY);
      const p0 = p | 0;
      const q0 = q | 0;
      const right = p0 < lastX ? 3 : 0;
      const low = q0 < lastY ? row : 0;
      const east = p - p0;
      const south = q - q0;
      const ne = east * (1 - south);
      const sw = (1 - east) * south;
      const se = east * south;
      const nw = 1 - east - sw;
      let n = q0 * row + p0 * 3;
      let to = (line * across + at) * 3;
      for (let channel = 0; channel < 3; channel += 1) {
        const upper = (seen[n] ?? 0) * nw + (seen[n + right] ?? 0) * ne;
        out[to] = upper + (seen[n + low] ?? 0) * sw + (seen[n + low + right] ?? 0) * se + 0.5;
        n += 1;
        to += 1;
      }
    }
  }
  return sharp(out, { raw: { width: across, height: down, channels: 3 } })
    .jpeg({ quality: 82, mozjpeg: true })
    .toBuffer({ resolveWithObject: true });
}

/** How many pixels of the photo a millimetre at the middle of the box takes. */
function pixelsPerMillimetre(back: Homography, { left, right, bottom, top }: Bounds): number {
  const [x, y] = [(left + right) / 2000, (bottom + top) / 2000];
  const sign = Math.sign((back[6] ?? 0) * x + (back[7] ?? 0) * y + (back[8] ?? 0)) || 1;
  const facing = back.map((value) => value * sign);
  const [at, along, up] = [
    { x, y },
    { x: x + 1, y },
    { x, y: y + 1 },
  ].map((place) => straightenPixel(facing, place));
  if (!at || !along || !up) return 1;
  return Math.sqrt(Math.abs((along.x - at.x) * (up.y - at.y) - (up.x - at.x) * (along.y - at.y))) || 1;
}
