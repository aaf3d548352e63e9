import { describe, expect, it } from 'vitest';
import { needsReason } from '@/shared/wood/needs-reason';
import type { PieceFlag } from '@/shared/wood/piece';

const piece = (flags: PieceFlag[], ...measures: number[]) => ({ flags, measures });

describe('putting a piece right', () => {
  it('needs a reason where a mark is taken away or any measure is another', () => {
    expect(needsReason(piece(['strapped'], 3, 2), piece([], 3, 2))).toBe(true);
    expect(needsReason(piece(['strapped'], 3, 2), piece(['checked'], 3, 2))).toBe(true);
    expect(needsReason(piece([], 3, 2), piece([], 3, 1))).toBe(true);
  });
  it('needs none where marks are added or nothing of it is other', () => {
    expect(needsReason(piece([], 3, 2), piece(['strapped', 'broken'], 3, 2))).toBe(false);
    expect(needsReason(piece(['checked', 'broken'], 3, 2), piece(['broken', 'checked'], 3, 2))).toBe(false);
  });
});
