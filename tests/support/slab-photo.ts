import sharp from 'sharp';
import { type Homography, homographyFrom, straightenPixel } from '@/shared/outline/homography';
import { placeInRing } from '@/shared/outline/place-of-point';
import type { Millimetres, Pixel } from '@/shared/outline/sheet-marks';
import { unwrap } from '@/shared/result/result';

/**
 * A pinhole camera `height` mm above the slab, over (`x`, `y`), tilted and turned by radians; `focal` in pixels. On the
 * face x is right and y up, on the photo y is down.
 */
export type Camera = {
  tilt: number;
  turn: number;
  height: number;
  focal: number;
  x: number;
  y: number;
  width: number;
  down: number;
};

/** A phone of 12 million pixels held over the slab from its long side. */
export const PHONE_CAMERA: Camera = {
  tilt: 0.35,
  turn: 0.06,
  height: 2300,
  focal: 3000,
  x: 900,
  y: -600,
  width: 4000,
  down: 3000,
};

/** Where the camera sees a place of the slab. */
export function seenBy({ tilt, turn, height, focal, x, y, width, down }: Camera, place: Millimetres): Pixel {
  const [dx, dy] = [place.x - x, place.y - y];
  const [u, v] = [dx * Math.cos(turn) + dy * Math.sin(turn), dy * Math.cos(turn) - dx * Math.sin(turn)];
  const depth = height * Math.cos(tilt) + v * Math.sin(tilt);
  return {
    x: width / 2 + (focal * u) / depth,
    y: down / 2 - (focal * (v * Math.cos(tilt) - height * Math.sin(tilt))) / depth,
  };
}

/** A live-edged slab of 1,800 × about 620 mm with a gap through it, and an A3 sheet on it; millimetres, y up. */
export const SLAB = {
  edge: wavy(),
  gap: [
    { x: 1250, y: 60 },
    { x: 1400, y: 40 },
    { x: 1420, y: 100 },
    { x: 1280, y: 120 },
  ],
  /** Round the sheet, its long side first. */
  sheet: [
    { x: 700, y: -150 },
    { x: 1120, y: -150 },
    { x: 1120, y: 147 },
    { x: 700, y: 147 },
  ],
} as const;

function wavy(): readonly Millimetres[] {
  const xs = Array.from({ length: 13 }, (_, nr) => nr * 150);
  const low = xs.map((x) => ({ x, y: Math.round(-300 + 22 * Math.sin(x / 190)) }));
  const high = xs.map((x) => ({ x, y: Math.round(310 + 26 * Math.cos(x / 240)) }));
  return [...low, ...high.reverse()];
}

/** The photo itself: wood on a grey floor, a white sheet, the floor through the gap. Four samples to a pixel. */
export async function photoOfSlab(camera: Camera, shrink = 1): Promise<Buffer> {
  const [width, down] = [Math.round(camera.width * shrink), Math.round(camera.down * shrink)];
  const toFace = faceOf(camera);
  const data = Buffer.alloc(width * down * 3);
  const edge = SLAB.edge.map(um);
  const gap = SLAB.gap.map(um);
  const sheet = SLAB.sheet.map(um);
  const isIn = (ring: typeof edge, place: Millimetres) => placeInRing(ring, um(place)) !== 'outside';
  const colour = (pixel: Pixel): readonly [number, number, number] => {
    const place = straightenPixel(toFace, pixel);
    if (!place || !isIn(edge, place) || isIn(gap, place)) return [96, 98, 100];
    if (isIn(sheet, place)) return [250, 250, 246];
    const grain = 12 * Math.sin(place.y / 7 + 3 * Math.sin(place.x / 160));
    return [172 + grain, 122 + grain, 76 + grain];
  };
  for (let row = 0; row < down; row += 1) {
    for (let column = 0; column < width; column += 1) {
      const at = (row * width + column) * 3;
      const seen = colour({ x: (column + 0.5) / shrink, y: (row + 0.5) / shrink });
      for (let channel = 0; channel < 3; channel += 1) data[at + channel] = seen[channel] ?? 0;
    }
  }
  return sharp(data, { raw: { width, height: down, channels: 3 } })
    .jpeg({ quality: 90 })
    .toBuffer();
}

function faceOf(camera: Camera): Homography {
  const places = [
    { x: 0, y: -400 },
    { x: 1800, y: -400 },
    { x: 1800, y: 400 },
    { x: 0, y: 400 },
  ];
  return unwrap(homographyFrom(places.map((place) => ({ place, pixel: seenBy(camera, place) }))));
}

const um = ({ x, y }: Millimetres) => ({ x: Math.round(x * 1000), y: Math.round(y * 1000) });
