import { describe, expect, it } from 'vitest';
import { conditionsAfter } from '@/shared/shelf-life/conditions-after';

describe('what is wrong with a container after a treatment', () => {
  it('is crystals until it was both warmed and stirred since they were seen, in either order', () => {
    expect(conditionsAfter(['crystals'], 'warmed', [])).toEqual(['crystals']);
    expect(conditionsAfter(['crystals'], 'stirred', [])).toEqual(['crystals']);
    expect(conditionsAfter(['crystals'], 'stirred', ['warmed'])).toEqual([]);
    expect(conditionsAfter(['crystals'], 'warmed', ['stirred'])).toEqual([]);
  });

  it('is not made good by straining', () => {
    expect(conditionsAfter(['crystals', 'settled'], 'strained', ['warmed', 'stirred'])).toEqual([
      'crystals',
      'settled',
    ]);
  });

  it('is no longer settled once it was stirred, and stays what else it was', () => {
    expect(conditionsAfter(['darkened', 'settled'], 'stirred', [])).toEqual(['darkened']);
    expect(conditionsAfter(['gelled'], 'stirred', ['warmed'])).toEqual(['gelled']);
  });

  it.each([
    ['froze', 'frozen'],
    ['overheated', 'stored-out-of-range'],
    ['crystals-seen', 'crystals'],
  ] as const)('gains what %s brings, once', (kind, brings) => {
    expect(conditionsAfter(['haze'], kind, [])).toEqual(['haze', brings]);
    expect(conditionsAfter([brings], kind, [])).toEqual([brings]);
  });
});
