import { describe, expect, it } from 'vitest';
import { FRAMES_IN_CYCLE, type FramePass, passesForFrame } from '@/app/_ui/scanner/frame-schedule';

const EVERY_PASS: readonly FramePass[] = [
  'fast',
  'harder',
  'harder-inverted',
  'centre',
  'sharpen',
  'blur',
  'turn-30',
  'turn-45',
  'turn-60',
];
const cycle = Array.from({ length: FRAMES_IN_CYCLE }, (_, frame) => passesForFrame(frame));

describe('the schedule of passes', () => {
  it('looks hard at all of the very first frame, so that one frame reads as much as the best single pass', () => {
    expect(passesForFrame(0)).toEqual(['fast', 'harder']);
  });

  it('gives every way of looking its turn within one cycle, and then starts again', () => {
    expect([...new Set(cycle.flat())].sort()).toEqual([...EVERY_PASS].sort());
    expect(passesForFrame(FRAMES_IN_CYCLE)).toEqual(passesForFrame(0));
    expect(passesForFrame(FRAMES_IN_CYCLE * 1000 + 3)).toEqual(passesForFrame(3));
  });

  it('looks at the whole frame every time and at most once more, so that no frame takes long', () => {
    for (const passes of cycle) {
      expect(passes.length).toBeLessThanOrEqual(2);
      expect(['fast', 'harder-inverted']).toContain(passes[0]);
    }
  });

  it('has an answer for any number', () => {
    for (const frame of [-1, 0.5, Number.MAX_SAFE_INTEGER]) expect(passesForFrame(frame).length).toBeGreaterThan(0);
  });
});
