import { describe, expect, it } from 'vitest';
import type { TreatmentKind } from '@/shared/shelf-life/conditions-after';
import { conditionsByDay, type Moment, type TreatmentThen } from '@/shared/shelf-life/conditions-by-day';
import type { Condition } from '@/shared/shelf-life/types/container-facts';
import { day } from '@/tests/shared/shelf-life/fixtures';

// That crystals are dissolved by warming and stirring after they came is common practice.

const at = (on: string, entry: number): Moment => ({ on: day(`2026-11-${on}`), entry });
const done = (kind: TreatmentKind, on: string, entry: number): TreatmentThen => ({ kind, ...at(on, entry) });
const crystals = (on: string, entry: number) => new Map<Condition, Moment>([['crystals', at(on, entry)]]);

describe('what is wrong with a container, by the days', () => {
  it('is still crystals where it was warmed and stirred before they were seen, though written after', () => {
    const seen = crystals('25', 1);
    const past = [done('warmed', '02', 2)];
    expect(conditionsByDay(['crystals'], done('stirred', '02', 3), { past, seen })).toEqual(['crystals']);
    expect(conditionsByDay(['crystals'], done('stirred', '26', 3), { past, seen })).toEqual(['crystals']);
    const since = [done('warmed', '25', 2)];
    expect(conditionsByDay(['crystals'], done('stirred', '26', 3), { past: since, seen })).toEqual([]);
  });

  it('goes by the order of the entries on one day', () => {
    const past = [done('warmed', '25', 1)];
    expect(conditionsByDay(['crystals'], done('stirred', '25', 3), { past, seen: crystals('25', 2) })).toEqual([
      'crystals',
    ]);
    expect(conditionsByDay(['crystals'], done('stirred', '25', 3), { past, seen: crystals('25', 0) })).toEqual([]);
  });

  it('is no crystals where a warming and a stirring came after the day they were seen on', () => {
    const past = [done('warmed', '05', 1), done('stirred', '06', 2)];
    expect(conditionsByDay([], done('crystals-seen', '02', 3), { past, seen: new Map() })).toEqual([]);
    expect(conditionsByDay([], done('crystals-seen', '06', 3), { past, seen: new Map() })).toEqual(['crystals']);
    expect(conditionsByDay([], done('crystals-seen', '02', 3), { past: past.slice(1), seen: new Map() })).toEqual([
      'crystals',
    ]);
  });

  it('leaves what was seen later, and clears what was there all along', () => {
    const seen = new Map<Condition, Moment>([['settled', at('20', 1)]]);
    expect(conditionsByDay(['settled'], done('stirred', '19', 2), { past: [], seen })).toEqual(['settled']);
    expect(conditionsByDay(['settled'], done('stirred', '20', 2), { past: [], seen })).toEqual([]);
    expect(conditionsByDay(['settled'], done('stirred', '19', 2), { past: [], seen: new Map() })).toEqual([]);
    expect(conditionsByDay(['settled'], done('froze', '19', 2), { past: [], seen })).toEqual(['settled', 'frozen']);
  });
});
