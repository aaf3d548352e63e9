import { acceptCodes, type Doubtful, NOTHING_DOUBTFUL } from './acceptance';
import type { CameraFrame } from './decode-frame';
import type { Photo } from './decode-photo';
import type { DecodedCode } from './decoded-code';
import type { PlainReader } from './plain-reader';

const PHOTO_SIDES = [1600, 1000, 600];

/**
 * One camera frame with the slower reader: in turn all of it, its middle, and its middle on its side. The middle alone reads
 * bar codes that wood grain beside them would hide. Linear codes need two frames that agree.
 */
export function decodeFramePlainly(
  read: PlainReader,
  frame: CameraFrame,
  number: number,
  doubtful: Doubtful,
): { readonly accepted: readonly DecodedCode[]; readonly doubtful: Doubtful } {
  const turn = number % 3;
  const seen = turn === 0 ? read(frame.whole()) : read(frame.centre(), turn === 2);
  return acceptCodes(seen, number, doubtful);
}

/** A photo with the slower reader, at several scales, upright and on its side. */
export function decodePhotoPlainly(read: PlainReader, photo: Photo): readonly DecodedCode[] {
  const all = { left: 0, top: 0, width: photo.width, height: photo.height };
  const looks = PHOTO_SIDES.flatMap((side) => [false, true].map((turned) => ({ side, turned })));
  let doubtful = NOTHING_DOUBTFUL;
  for (const [at, { side, turned }] of looks.entries()) {
    const judged = acceptCodes(read(photo.draw(all, side), turned), at, doubtful);
    if (judged.accepted.length > 0) return judged.accepted;
    doubtful = judged.doubtful;
  }
  return [];
}
