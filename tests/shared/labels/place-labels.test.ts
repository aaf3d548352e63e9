import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { LABEL_FORMAT_IDS, LABEL_FORMATS, labelsPerPage } from '@/shared/labels/label-formats';
import { placeLabels } from '@/shared/labels/place-labels';

describe('placeLabels', () => {
  it('begins a part-used sheet at the position asked for and goes on along the rows', () => {
    expect(placeLabels(3, LABEL_FORMATS['a4-3x8'], 6)).toEqual([
      [
        { index: 0, x: 140, y: 37.5 },
        { index: 1, x: 0, y: 74.5 },
        { index: 2, x: 70, y: 74.5 },
      ],
    ]);
  });

  it('goes on at the first position of a new sheet', () => {
    const pages = placeLabels(3, LABEL_FORMATS['a4-3x8'], 24);
    expect(pages.map((page) => page.length)).toEqual([1, 2]);
    expect(pages[1]?.[0]).toEqual({ index: 1, x: 0, y: 0.5 });
  });

  it('gives a single-label printer one label a page whatever the start', () => {
    expect(placeLabels(3, LABEL_FORMATS['62x29'], 9)).toEqual([0, 1, 2].map((index) => [{ index, x: 0, y: 0 }]));
  });

  it('has no page for no labels', () => {
    expect(placeLabels(0, LABEL_FORMATS['a4-2x7'], 1)).toEqual([]);
  });

  it('prints every label once, on the paper, and none over another', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...LABEL_FORMAT_IDS),
        fc.integer({ min: 0, max: 90 }),
        fc.integer({ min: 1, max: 40 }),
        (id, count, start) => {
          const format = LABEL_FORMATS[id];
          const paper = format.kind === 'sheet' ? format.page : format.label;
          const pages = placeLabels(count, format, start);
          const skipped = format.kind === 'sheet' ? Math.min(start, labelsPerPage(format)) - 1 : 0;
          expect(pages.length).toBe(Math.ceil(count === 0 ? 0 : (skipped + count) / labelsPerPage(format)));
          expect(pages.flat().map((position) => position.index)).toEqual(
            Array.from({ length: count }, (_, index) => index),
          );
          for (const page of pages) {
            for (const a of page) {
              expect(a.x >= 0 && a.x + format.label.width <= paper.width + 1e-6).toBe(true);
              expect(a.y >= 0 && a.y + format.label.height <= paper.height + 1e-6).toBe(true);
              for (const b of page) {
                const apart =
                  Math.abs(a.x - b.x) >= format.label.width - 1e-6 || Math.abs(a.y - b.y) >= format.label.height - 1e-6;
                expect(a.index === b.index || apart).toBe(true);
              }
            }
          }
        },
      ),
      { numRuns: 60 },
    );
  });
});
