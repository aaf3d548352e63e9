import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { onHand } from '@/app/_server/find/on-hand';
import type { WoodFilter } from '@/app/_server/find/wood-filter';
import { changeHold } from '@/app/_server/stock/change-hold';
import { receivePieces } from '@/app/_server/stock/receive-pieces';
import { slabsOnWall, woodsOnWall } from '@/app/_server/stock/slabs-on-wall';
import { aSlab } from '@/tests/support/stock-of-a-test';
import { by, freshBook, must, type TestBook } from '@/tests/support/test-book';

const MM = 1_000_000;

describe('wood narrowed down', () => {
  let made: TestBook;
  beforeAll(async () => {
    made = await freshBook();
    const take = (more: Parameters<typeof aSlab>[0]) => receivePieces(made.book, by(), aSlab(more));
    must(await take({ species: 'Walnut', thicknessNm: 58 * MM }));
    const held = must(await take({ species: 'Walnut', thicknessNm: 40 * MM, lengthNm: 2000 * MM }));
    must(await take({ species: 'Ash', form: 'board', thicknessNm: 27 * MM, lengthNm: 2400 * MM }));
    const stockId = held.pieces[0]?.stockId ?? 0;
    must(await changeHold(made.book, by(), { stockId, hold: 'quarantine', why: 'Beetle' }));
  });
  afterAll(() => made.remove());

  const found = async (wood: WoodFilter, query = '') => {
    const { pieces, total } = await onHand(made.book, { show: 'wood', query, wood });
    expect(total).toBe(pieces.length);
    return pieces.map((piece) => `${piece.species} ${piece.form} ${piece.thicknessNm / MM}`);
  };

  it('by form, species, least thickness and least length, each to the nanometre', async () => {
    expect(await found({ form: 'board' })).toEqual(['Ash board 27']);
    expect(await found({ species: 'Walnut' })).toHaveLength(2);
    expect(await found({ leastThicknessNm: 40 * MM })).toHaveLength(2);
    expect(await found({ leastThicknessNm: 40 * MM + 1 })).toEqual(['Walnut slab 58']);
    expect(await found({ leastLengthNm: 2400 * MM })).toEqual(['Ash board 27', 'Walnut slab 58']);
  });

  it('to what is neither promised nor held, and together with a search', async () => {
    expect(await found({ freeOnly: true, species: 'Walnut' })).toEqual(['Walnut slab 58']);
    expect(await found({ freeOnly: true }, 'walnut')).toEqual(['Walnut slab 58']);
    expect(await found({ form: 'sheet' }, 'walnut')).toEqual([]);
  });

  it('hangs on the wall as slabs alone, in the order that is asked', async () => {
    const wall = await slabsOnWall(made.book, { freeOnly: false, order: 'thickest' });
    expect(wall.total).toBe(2);
    expect(wall.slabs.map((slab) => slab.thicknessNm / MM)).toEqual([58, 40]);
    expect((await slabsOnWall(made.book, { freeOnly: true, order: 'newest' })).slabs).toHaveLength(1);
    expect((await slabsOnWall(made.book, { freeOnly: false, order: 'largest', species: 'Ash' })).total).toBe(0);
    expect(await woodsOnWall(made.book)).toEqual(['Walnut']);
  });
});
