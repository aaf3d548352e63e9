import { describe, expect, it } from 'vitest';
import { labelRun, labelRunLength } from '@/shared/labels/label-run';
import { RESIN, SHELF, SLAB } from '@/tests/support/label-samples';

describe('labelRun', () => {
  it('gives a slab its twin, one for each end, whatever the copies', () => {
    for (const copies of [1, 2] as const) {
      const run = labelRun([SLAB], copies);
      expect(run.map((label) => label.end)).toEqual([
        { of: 2, nr: 1 },
        { of: 2, nr: 2 },
      ]);
      expect(new Set(run.map((label) => label.code))).toEqual(new Set([SLAB.code]));
    }
  });

  it('copies everything else as often as asked, side by side', () => {
    expect(labelRun([RESIN, SHELF], 2)).toEqual([RESIN, RESIN, SHELF, SHELF]);
    expect(labelRun([RESIN, SHELF], 1)).toEqual([RESIN, SHELF]);
  });

  it('counts what it would print', () => {
    for (const copies of [1, 2] as const) {
      expect(labelRunLength([RESIN, SLAB, SHELF], copies)).toBe(labelRun([RESIN, SLAB, SHELF], copies).length);
    }
  });
});
