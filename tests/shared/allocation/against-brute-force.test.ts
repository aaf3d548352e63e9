import { describe, expect, it } from 'vitest';
import { solveProgram } from '@/app/_server/allocation/solve-program';
import { allocate } from '@/shared/allocation/allocate';
import { checkAllocation } from '@/shared/allocation/check-allocation';
import { firstExpiredByHand } from '@/shared/allocation/first-expired-by-hand';
import { unwrap } from '@/shared/result/result';
import { smallAsk } from './any-ask';
import { bruteForce, compareVectors, vectorOf } from './brute-force';

const CASES = 400;

describe('an allocation against every allocation there is', () => {
  it(`is the best of all, measure by measure, in ${CASES} small cases, and proved to be`, async () => {
    let [shortage, split, wasteful, better, onSurface, later] = [0, 0, 0, 0, 0, 0];
    for (let seed = 1; seed <= CASES; seed += 1) {
      const ask = smallAsk(seed);
      const found = unwrap(await allocate(ask, solveProgram, { timeLimitSeconds: 10 }));
      const step = ask.needs.reduce(
        (least, { amount }) => Math.min(least, amount % 250 ? (amount % 7 ? 1 : 7) : 250),
        250,
      );
      const vector = vectorOf(ask, found.takes);
      expect({ seed, vector }).toEqual({ seed, vector: bruteForce(ask, step) });
      expect({ seed, status: found.status }).toEqual({ seed, status: 'proved' });

      const byHand = firstExpiredByHand(ask);
      expect({ seed, faults: checkAllocation(ask, byHand) }).toEqual({ seed, faults: [] });
      if (compareVectors(vector, vectorOf(ask, byHand)) < 0) better += 1;
      if (found.short.length) shortage += 1;
      if (found.measures.splitSurfaces) split += 1;
      if (found.measures.waste) wasteful += 1;
      if (ask.used?.length) {
        const blind = unwrap(await allocate({ ...ask, used: [] }, solveProgram, { timeLimitSeconds: 10 }));
        if (compareVectors(vector, vectorOf(ask, blind.takes)) < 0) onSurface += 1;
      }
      const ownDays = ask.needs.map((need) => ({ ...need, goodTo: undefined }));
      const early = unwrap(await allocate({ ...ask, needs: ownDays }, solveProgram, { timeLimitSeconds: 10 }));
      if (checkAllocation(ask, early.takes).length) later += 1;
    }
    // The cases are worth something only while they have some of each, and while some would come out worse without what
    // is on a surface already, or wrong without the later day.
    expect(Math.min(shortage, split, wasteful, better, onSurface, later)).toBeGreaterThan(CASES / 40);
  });
});
