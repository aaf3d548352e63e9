import fc from 'fast-check';
import type { LabelContent } from '@/shared/labels/label-content';

export const RESIN: LabelContent = {
  code: 'C-4K7QM2',
  kind: 'container',
  title: 'Deep-pour resin, part B',
  lines: ['lot 25F118', 'good to 12 Dec 2026 (best before)', 'opened ________'],
};

export const SLAB: LabelContent = {
  code: 'S-WQ0GJ8',
  kind: 'slab',
  title: 'Walnut slab 3 of flitch K',
  lines: ['2410 × 610 × 54 mm', 'kiln-dried, 9 % on 3 Nov'],
};

export const SHELF: LabelContent = { code: 'P-7RD2XK', kind: 'place', title: 'Cabinet 2, shelf B', lines: [] };

/** Any code of the right shape; the label does not look at the check character. */
const anyCode: fc.Arbitrary<string> = fc
  .tuple(
    fc.constantFrom(...'ABCDEFGHIJKLMNOPQRSTUVWXYZ'),
    fc.array(fc.constantFrom(...'0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ'), { minLength: 6, maxLength: 6 }),
  )
  .map(([kind, body]) => `${kind}-${body.join('')}`);

/** Words as people type, paste and mistype them: long, without blanks, in other alphabets, with pictographs and stray marks. */
const anyWords: fc.Arbitrary<string> = fc.oneof(
  fc.string({ unit: 'grapheme', maxLength: 200 }),
  fc.string({ unit: 'binary', maxLength: 200 }),
  fc.stringMatching(/^[A-Za-zÀ-ž0-9 ,.()_-]{0,200}$/),
  fc.constantFrom(
    'W'.repeat(200),
    '🛢️🪵👩🏽‍🔧'.repeat(40),
    '漆'.repeat(200),
    `${'Ẇ'.repeat(60)} (`,
    'g\u0301\u0323\u0331'.repeat(60),
  ),
);

export const anyLabel: fc.Arbitrary<LabelContent> = fc
  .record({
    code: anyCode,
    kind: fc.constantFrom('container', 'slab', 'board', 'sheet', 'offcut', 'place'),
    title: anyWords,
    lines: fc.array(
      fc.tuple(anyWords, fc.boolean()).map(([words, rule]) => (rule ? `${words} ________` : words)),
      { maxLength: 6 },
    ),
    end: fc.option(fc.constantFrom<1 | 2>(1, 2)),
  })
  .map(({ end, ...label }): LabelContent => (end === null ? label : { ...label, end: { of: 2, nr: end } }));
