import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { blurGray } from '@/app/_ui/scanner/pixels/blur-gray';
import type { GrayFrame } from '@/app/_ui/scanner/pixels/gray-frame';
import { quarterTurn } from '@/app/_ui/scanner/pixels/quarter-turn';
import { sharpenGray } from '@/app/_ui/scanner/pixels/sharpen-gray';
import { toColour } from '@/app/_ui/scanner/pixels/to-colour';
import { toGray } from '@/app/_ui/scanner/pixels/to-gray';
import { turnGray } from '@/app/_ui/scanner/pixels/turn-gray';

const gray = (width: number, values: number[]): GrayFrame => ({
  width,
  height: values.length / width,
  data: Uint8Array.from(values),
});
const anyFrame = fc
  .tuple(fc.integer({ min: 1, max: 12 }), fc.integer({ min: 1, max: 12 }))
  .chain(([width, height]) =>
    fc.uint8Array({ minLength: width * height, maxLength: width * height }).map((data) => ({ width, height, data })),
  );

describe('brightness', () => {
  it('weighs red, green and blue as ITU-R BT.601 says (0.299, 0.587, 0.114)', () => {
    const data = Uint8ClampedArray.of(255, 0, 0, 255, 0, 255, 0, 255, 0, 0, 255, 255);
    const expected = [0.299, 0.587, 0.114].map((weight) => weight * 255);
    [...toGray({ width: 3, height: 1, data }).data].forEach((value, at) => {
      expect(Math.abs(value - (expected[at] ?? 0))).toBeLessThanOrEqual(1);
    });
  });

  it('survives the way to colour and back', () => {
    fc.assert(
      fc.property(anyFrame, (frame) => {
        expect(toGray(toColour(frame))).toEqual(frame);
      }),
    );
  });

  it('of a window is that part of the frame, cut to what lies inside', () => {
    const frame = toColour(gray(3, [1, 2, 3, 4, 5, 6, 7, 8, 9]));
    expect([...toGray(frame, { left: 1, top: 1, width: 2, height: 2 }).data]).toEqual([5, 6, 8, 9]);
    expect([...toGray(frame, { left: 2, top: 2, width: 9, height: 9 }).data]).toEqual([9]);
  });
});

describe('blur and sharpening', () => {
  it('leave a flat frame as it is and keep the size of any', () => {
    const flat = gray(4, Array(16).fill(77));
    expect(blurGray(flat)).toEqual(flat);
    expect(sharpenGray(flat)).toEqual(flat);
    fc.assert(
      fc.property(anyFrame, (frame) => {
        expect(sharpenGray(frame).data.length).toBe(frame.data.length);
      }),
    );
  });

  it('blur spreads a single bright point as 1-2-1 across and down', () => {
    expect([...blurGray(gray(3, [0, 0, 0, 0, 160, 0, 0, 0, 0])).data]).toEqual([10, 20, 10, 20, 40, 20, 10, 20, 10]);
  });

  it('sharpening widens the step between dark and light', () => {
    const step = sharpenGray(gray(6, [80, 80, 80, 160, 160, 160])).data;
    expect(step[2]).toBeLessThan(80);
    expect(step[3]).toBeGreaterThan(160);
  });
});

describe('turning', () => {
  it('by a quarter loses nothing, and four of them change nothing', () => {
    expect(quarterTurn(gray(3, [1, 2, 3, 4, 5, 6]))).toEqual(gray(2, [4, 1, 5, 2, 6, 3]));
    fc.assert(
      fc.property(anyFrame, (frame) => {
        expect(quarterTurn(quarterTurn(quarterTurn(quarterTurn(frame))))).toEqual(frame);
      }),
    );
  });

  it('by 0 keeps all but the last row and column, which have no neighbour to mix with', () => {
    const frame = gray(3, [1, 2, 3, 4, 5, 6, 7, 8, 9]);
    expect([...turnGray(frame, 0).data]).toEqual([1, 2, 128, 4, 5, 128, 128, 128, 128]);
  });

  it('by a positive angle turns what is seen clockwise', () => {
    const size = 41;
    const frame = gray(size, Array(size * size).fill(0));
    // A bright patch to the right of the middle comes to stand below it.
    for (let y = 18; y <= 22; y++) for (let x = 33; x <= 37; x++) frame.data[y * size + x] = 255;
    const turned = turnGray(frame, 90);
    expect(turned.data[35 * size + 20]).toBeGreaterThan(200);
    expect(turned.data[5 * size + 20]).toBeLessThan(50);
  });
});
