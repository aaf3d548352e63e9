import { describe, expect, it } from 'vitest';
import {
  AGREE_WITHIN_FRAMES,
  acceptCodes,
  NOTHING_DOUBTFUL,
  type SeenCode,
  SURE_LINES,
} from '@/app/_ui/scanner/acceptance';

const ean = (text: string, lineCount: number): SeenCode => ({ text, symbology: ']E0', linear: true, lineCount });
const square = (text: string): SeenCode => ({ text, symbology: ']d2', linear: false, lineCount: 0 });

/** The texts accepted in each frame of a row of frames. */
function run(frames: readonly (readonly SeenCode[])[]): string[][] {
  let doubtful = NOTHING_DOUBTFUL;
  return frames.map((seen, frame) => {
    const judged = acceptCodes(seen, frame, doubtful);
    doubtful = judged.doubtful;
    return judged.accepted.map((code) => code.text);
  });
}

describe('which codes are believed', () => {
  it('a square code at once', () => {
    expect(run([[square('0109501101530003')]])).toEqual([['0109501101530003']]);
  });

  it('a linear code with five agreeing lines at once, with four not', () => {
    expect(run([[ean('9501101530003', SURE_LINES)]])).toEqual([['9501101530003']]);
    expect(run([[ean('9501101530003', SURE_LINES - 1)]])).toEqual([[]]);
  });

  it('a weak linear code when a second frame agrees', () => {
    expect(run([[ean('9501101530003', 2)], [], [ean('9501101530003', 2)]])).toEqual([[], [], ['9501101530003']]);
  });

  it('not when the two frames differ in text or in kind', () => {
    expect(run([[ean('9501101530003', 2)], [ean('9501111530017', 2)]])).toEqual([[], []]);
    expect(run([[ean('95011015', 2)], [{ ...ean('95011015', 2), symbology: ']C0' }]])).toEqual([[], []]);
  });

  it('not when one frame shows it in two passes: that is one witness', () => {
    const first = acceptCodes([ean('9501101530003', 2)], 0, NOTHING_DOUBTFUL);
    expect(acceptCodes([ean('9501101530003', 2)], 0, first.doubtful).accepted).toEqual([]);
  });

  it('not when the frames lie further apart than a turn of the schedule, so no special pass agrees with itself', () => {
    const gap = (frames: number) => [
      [ean('9501101530003', 2)],
      ...Array.from({ length: frames - 1 }, () => []),
      [ean('9501101530003', 2)],
    ];
    expect(run(gap(AGREE_WITHIN_FRAMES)).at(-1)).toEqual(['9501101530003']);
    expect(run(gap(AGREE_WITHIN_FRAMES + 1)).at(-1)).toEqual([]);
  });

  it('never an empty text, and of a sure and a doubtful reading only the sure one', () => {
    expect(run([[square('')]])).toEqual([[]]);
    expect(run([[ean('9501101530003', 99), ean('9501111530017', 2)]])).toEqual([['9501101530003']]);
  });
});
