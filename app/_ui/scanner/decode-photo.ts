import { acceptCodes, NOTHING_DOUBTFUL } from './acceptance';
import type { DecodedCode } from './decoded-code';
import { lookForCodes, type ReadPixels } from './look-for-codes';
import { blurGray } from './pixels/blur-gray';
import type { ColourFrame, GrayFrame } from './pixels/gray-frame';
import { sharpenGray } from './pixels/sharpen-gray';
import { toColour } from './pixels/to-colour';
import { toGray } from './pixels/to-gray';
import { turnGray } from './pixels/turn-gray';

export interface Window {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** An opened photo that can hand out any window of itself, brought down so that its longest side is at most `longest`. */
export interface Photo {
  readonly width: number;
  readonly height: number;
  readonly draw: (window: Window, longest: number) => ColourFrame;
}

const SCALES = [1600, 1000, 2400, 600];
const TILE = 1400;
const TILE_STEP = 1000;

/**
 * Looks for codes in a still photo: all of it at several scales, then calmed, sharpened and turned, then piece by piece at
 * its own resolution, so that a small label in a large picture is found. Each look is one witness for a linear code.
 * Stops at the first code that may be believed; nothing found gives an empty list.
 */
export async function decodePhoto(read: ReadPixels, photo: Photo): Promise<readonly DecodedCode[]> {
  let doubtful = NOTHING_DOUBTFUL;
  let look = 0;
  for (const picture of pictures(photo)) {
    const judged = acceptCodes(await lookForCodes(read, picture(), 'harder-inverted'), look, doubtful);
    doubtful = judged.doubtful;
    look += 1;
    if (judged.accepted.length > 0) return judged.accepted;
  }
  return [];
}

function* pictures(photo: Photo): Generator<() => ColourFrame> {
  const all = { left: 0, top: 0, width: photo.width, height: photo.height };
  const longest = Math.max(photo.width, photo.height);
  const [first = 1600, ...others] = SCALES;
  yield () => photo.draw(all, first);
  for (const scale of others) if (scale < longest) yield () => photo.draw(all, scale);
  const changed = (change: (gray: GrayFrame) => GrayFrame) => () => toColour(change(toGray(photo.draw(all, first))));
  yield changed(blurGray);
  yield changed(sharpenGray);
  for (const degrees of [30, 45, 60]) yield changed((gray) => turnGray(gray, degrees));
  if (longest <= first) return;
  for (const window of tiles(photo)) yield () => photo.draw(window, TILE);
}

/** Overlapping square windows that cover the photo; a code up to 400 pixels across lies whole in at least one. */
function* tiles(photo: { width: number; height: number }): Generator<Window> {
  for (let top = 0; top === 0 || top + TILE - TILE_STEP < photo.height; top += TILE_STEP) {
    for (let left = 0; left === 0 || left + TILE - TILE_STEP < photo.width; left += TILE_STEP) {
      yield { left, top, width: Math.min(TILE, photo.width - left), height: Math.min(TILE, photo.height - top) };
    }
  }
}
