import { describe, expect, it } from 'vitest';
import { badLabelQuestion } from '@/app/_server/labels/label-answers';
import { labelSvgQuery, labelsPdfQuery } from '@/app/_server/labels/label-query';
import { MOST_AT_ONCE } from '@/shared/labels/most-at-once';

const codesOf = (count: number) => Array.from({ length: count }, (_, nr) => `C-${100000 + nr}`).join(',');

describe('the question for labels', () => {
  it('takes codes in order, each once, and fills in what was left out', () => {
    expect(labelsPdfQuery.parse({ codes: 'c-4k7qm2,S-WQ0GJ8,C4K7QM2,', format: '62x29' })).toEqual({
      codes: ['C-4K7QM2', 'S-WQ0GJ8'],
      format: '62x29',
      symbology: 'data-matrix',
      copies: '1',
      start: 1,
    });
  });

  it.each([
    [{ codes: '', format: '62x29' }, 'at least one label code'],
    [{ format: '62x29' }, 'needs label codes'],
    [{ codes: 'C-4K7QM2' }, 'label format is one of'],
    [{ codes: '<svg>', format: '62x29' }, 'A label code is'],
    [{ codes: 'C-4K7QM2', format: '62x29', copies: '500' }, 'One or two copies'],
    [{ codes: 'C-4K7QM2', format: 'a4-3x8', start: '25' }, 'past the end of the sheet'],
    [{ codes: 'C-4K7QM2', format: 'a4-3x8', start: '0' }, 'first position on a sheet is 1'],
    [{ codes: 'C-4K7QM2', format: 'a4-3x8', start: 'x' }, 'whole number'],
    [{ codes: codesOf(MOST_AT_ONCE + 1), format: 'a4-3x8' }, `At most ${MOST_AT_ONCE} labels`],
  ])('refuses %j in plain words', async (question, words) => {
    const parsed = labelsPdfQuery.safeParse(question);
    expect(parsed.success).toBe(false);
    if (parsed.success) return;
    const answer = badLabelQuestion(parsed.error);
    expect(answer.status).toBe(400);
    expect(answer.headers.get('content-type')).toMatch(/^text\/plain/);
    expect(await answer.text()).toContain(words);
  });

  it('takes as many codes as come into the book in one act', () => {
    const { codes } = labelsPdfQuery.parse({ codes: codesOf(MOST_AT_ONCE), format: 'a4-3x8' });
    expect(codes).toHaveLength(MOST_AT_ONCE);
  });

  it('takes one code and an end for the preview', () => {
    expect(labelSvgQuery.parse({ code: 'S-WQ0GJ8', format: '100x50', symbology: 'qr', end: '2' })).toEqual({
      code: 'S-WQ0GJ8',
      format: '100x50',
      symbology: 'qr',
      end: '2',
    });
    expect(labelSvgQuery.safeParse({ code: 'S-WQ0GJ8', format: '100x50', end: '3' }).success).toBe(false);
  });
});
