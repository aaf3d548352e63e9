import { describe, expect, it } from 'vitest';
import { type BellMemory, newLines, sayNewLines } from '@/app/_ui/bell/new-lines';

const lines = (...ids: string[]) => ids.map((id) => ({ id, words: `${id}: due` }));
const fresh = (ids: string[], memory: BellMemory, today = '2026-11-25') => {
  const read = newLines(lines(...ids), memory, today);
  return { ids: read.fresh.map(({ id }) => id), memory: read.memory };
};

describe('the bell', () => {
  it('rings for a line once, and is silent for it on every later look and day', () => {
    const first = fresh(['a', 'b'], {});
    expect(first.ids).toEqual(['a', 'b']);
    const second = fresh(['a', 'b', 'c'], first.memory);
    expect(second.ids).toEqual(['c']);
    expect(fresh(['a', 'b', 'c'], second.memory, '2026-11-26').ids).toEqual([]);
  });

  it('does not ring again for a line that goes and comes back within a week', () => {
    const { memory } = fresh(['a'], {});
    const gone = fresh([], memory, '2026-11-26');
    expect(gone.ids).toEqual([]);
    expect(fresh(['a'], gone.memory, '2026-12-02').ids).toEqual([]);
  });

  it('rings for a line that was away for longer', () => {
    const { memory } = fresh(['a'], {});
    expect(fresh(['a'], memory, '2026-12-03').ids).toEqual(['a']);
  });

  it('forgets what has long gone, so that its memory does not grow', () => {
    const { memory } = fresh(['a', 'b'], {});
    expect(Object.keys(fresh(['b'], memory, '2026-12-10').memory)).toEqual(['b']);
  });

  it('says the first three, and how many more there are', () => {
    expect(sayNewLines(lines('a'))).toEqual({ title: 'One thing needs you', body: 'a: due' });
    expect(sayNewLines(lines('a', 'b', 'c', 'd', 'e'))).toEqual({
      title: '5 things need you',
      body: 'a: due\nb: due\nc: due\nand 2 more in Watch',
    });
  });
});
