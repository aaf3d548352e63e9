import { describe, expect, it } from 'vitest';
import type { PieceLine } from '@/app/_server/stock/load-piece';
import { pieceAsTyped, reliedOnAsTyped } from '@/app/(shop)/pieces/piece-as-typed';
import { changePieceSchema } from '@/app/(shop)/pieces/schema';
import { unwrap } from '@/shared/result/result';
import { mintOwnLabel } from '@/shared/scan-codes/mint-own-label';
import { nanometres } from '@/shared/units/nanometres';
import { needsReason } from '@/shared/wood/needs-reason';
import { pieceLineOfATest } from '../../../support/piece-line-of-a-test';
import { TYPING } from '../arrive/card-of-a-test';
import { day, mm } from './piece-of-a-test';

const LINE: PieceLine = pieceLineOfATest({
  stockId: 7,
  label: unwrap(mintOwnLabel('slab', 41)).code,
  form: 'slab',
  species: 'Walnut',
  lengthNm: mm(3140),
  widthStartNm: nanometres(396_875 * 1921),
  widthMiddleNm: mm(715.3),
  widthEndNm: nanometres(790_000_001),
  thicknessNm: mm(50.8),
  flitch: 'Fen W',
  flitchNumber: 3,
  cost: null,
  receivedOn: day('2026-08-01'),
  note: 'Crotch at the wide end; dry by spring.',
  origin: 'Sussex, felled 2024',
  sapwoodNm: nanometres(396_875 * 83),
  quarters: 8,
  surfacing: 'rough',
  grain: 'width',
  faceA: 'BB',
  faceB: 'Melamine white',
  place: null,
  placeLabel: null,
  readings: [],
  facts: {
    inStock: true,
    hold: 'free',
    flags: ['strapped', 'live-edge-left'],
    readings: [],
    form: 'slab',
  },
});
const STRAIGHT = { ...LINE, widthStartNm: mm(1220), widthMiddleNm: mm(1220), widthEndNm: mm(1220), flitchNumber: null };

const read = (line: PieceLine, prefer: 'metric' | 'imperial', more: Record<string, unknown> = {}) =>
  changePieceSchema({ ...TYPING, prefer }).safeParse({
    label: line.label,
    why: 'Bands cut',
    piece: { ...pieceAsTyped(line, prefer), ...more },
  });

describe('a piece in its form', () => {
  it('is the same piece to the nanometre when it is read back unchanged, in either system of units', () => {
    for (const prefer of ['metric', 'imperial'] as const) {
      for (const line of [LINE, STRAIGHT]) {
        const { label, species, lengthNm, widthStartNm, widthMiddleNm, widthEndNm, thicknessNm, flitch, note } = line;
        const sizes = { lengthNm, widthStartNm, widthMiddleNm, widthEndNm, thicknessNm };
        expect(read(line, prefer).data).toEqual({
          label,
          why: 'Bands cut',
          species,
          ...sizes,
          flags: ['strapped', 'live-edge-left'],
          flitch,
          flitchNumber: line.flitchNumber ?? undefined,
          note,
          origin: 'Sussex, felled 2024',
          sapwoodNm: 396_875 * 83,
          quarters: 8,
          surfacing: 'rough',
          grain: 'width',
          faceA: 'BB',
          faceB: 'Melamine white',
        });
      }
    }
  });

  it('has one width where it is the same all along, and reads all three from it', () => {
    expect(pieceAsTyped(LINE, 'metric').widths).toBe('three');
    expect(pieceAsTyped(STRAIGHT, 'metric').widths).toBe('one');
    expect(read(STRAIGHT, 'metric', { width: '1200' }).data).toMatchObject({
      widthStartNm: mm(1200),
      widthMiddleNm: mm(1200),
      widthEndNm: mm(1200),
    });
  });

  it('says what does not read beside its field, by the rules wood arrives by', () => {
    const issues = read(LINE, 'metric', { length: '', widthEnd: 'wide', species: ' ', flitchNumber: '0' }).error
      ?.issues;
    expect(issues?.map(({ path }) => path.join('.')).sort()).toEqual(['flitchNumber', 'length', 'species', 'widthEnd']);
    expect(read(LINE, 'metric', { thickness: '8/4' }).data?.thicknessNm).toBe(mm(50.8));
    expect(read(LINE, 'metric', { flags: ['painted'] }).success).toBe(false);
  });

  it('keeps the form of the piece, whatever is sent', () => {
    expect(read(LINE, 'metric', { form: 'sheet', count: '9' }).data).not.toHaveProperty('form');
  });

  it('asks for a reason as soon as a measure is typed anew or a mark is taken away', () => {
    const typed = pieceAsTyped(LINE, 'metric');
    const asks = (more: Partial<typeof typed>) =>
      needsReason(reliedOnAsTyped(typed), reliedOnAsTyped({ ...typed, ...more }));
    expect(asks({ flags: ['live-edge-left'] })).toBe(true);
    expect(asks({ widthMiddle: '710 mm' })).toBe(true);
    expect(asks({ widths: 'one' })).toBe(true);
    expect(asks({ flags: ['strapped', 'live-edge-left', 'checked'], note: 'Lifts', width: '9' })).toBe(false);
  });
});
