import { describe, expect, it } from 'vitest';
import { labelTypeface } from '@/app/_server/labels/label-typeface';
import { labelsPdf } from '@/app/_server/labels/labels-pdf';
import { LABEL_FORMAT_IDS, LABEL_FORMATS, labelsPerPage } from '@/shared/labels/label-formats';
import { labelRun } from '@/shared/labels/label-run';
import { layoutLabel } from '@/shared/labels/layout-label';
import { MOST_AT_ONCE } from '@/shared/labels/most-at-once';
import { RESIN, SLAB } from '@/tests/support/label-samples';
import { filledRectangles, pdfPages } from '@/tests/support/pdf-content';

const POINT_MM = 25.4 / 72;

describe('labelsPdf', () => {
  it.each(LABEL_FORMAT_IDS)('has pages of the paper’s true size: %s', async (id) => {
    const format = LABEL_FORMATS[id];
    const paper = format.kind === 'sheet' ? format.page : format.label;
    const [page] = pdfPages(await labelsPdf([RESIN], format, { symbology: 'qr', start: 1 }));
    expect((page?.width ?? 0) * POINT_MM).toBeCloseTo(paper.width, 3);
    expect((page?.height ?? 0) * POINT_MM).toBeCloseTo(paper.height, 3);
  });

  it.each(LABEL_FORMAT_IDS)('has as many pages as the run and the start need: %s', async (id) => {
    const format = LABEL_FORMATS[id];
    const perPage = labelsPerPage(format);
    const full = Array.from({ length: perPage }, () => RESIN);
    const count = async (labels: typeof full, start: number) =>
      pdfPages(await labelsPdf(labels, format, { symbology: 'data-matrix', start })).length;
    expect(await count(full, 1)).toBe(1);
    expect(await count([...full, RESIN], 1)).toBe(2);
    expect(await count(full, perPage)).toBe(format.kind === 'sheet' ? 2 : 1);
  });

  it('prints the largest arrival in one file', async () => {
    const format = LABEL_FORMATS['a4-3x8'];
    const all = Array.from({ length: MOST_AT_ONCE }, () => RESIN);
    const pages = pdfPages(await labelsPdf(all, format, { symbology: 'data-matrix', start: 1 }));
    expect(pages).toHaveLength(Math.ceil(MOST_AT_ONCE / labelsPerPage(format)));
  });

  it('leaves the used positions of a sheet blank', async () => {
    const format = LABEL_FORMATS['a4-3x8'];
    const [page] = pdfPages(await labelsPdf([RESIN], format, { symbology: 'qr', start: 5 }));
    const { symbol } = layoutLabel(RESIN, format.label, 'qr', labelTypeface);
    const boxes = page ? filledRectangles(page) : [];
    expect(Math.min(...boxes.map((box) => box.x * POINT_MM))).toBeCloseTo(70 + symbol.x, 2);
    expect(Math.min(...boxes.map((box) => box.y * POINT_MM))).toBeCloseTo(37.5 + symbol.y, 2);
  });

  it('asks to be printed in true size and embeds its fonts', async () => {
    const pdf = (await labelsPdf(labelRun([SLAB], 1), LABEL_FORMATS['100x50'], { symbology: 'qr', start: 1 })).toString(
      'latin1',
    );
    expect(pdf).toMatch(/\/ViewerPreferences \d+ 0 R/);
    expect(pdf).toMatch(/\/PrintScaling \/None/);
    expect([...pdf.matchAll(/\/FontFile2 \d+ 0 R/g)]).toHaveLength(3);
    expect(pdf).not.toMatch(/\/BaseFont \/Helvetica/);
  });

  it('names the codes in its title once each', async () => {
    const pdf = (await labelsPdf(labelRun([SLAB], 1), LABEL_FORMATS['100x50'], { symbology: 'qr', start: 1 })).toString(
      'latin1',
    );
    expect(pdf).toContain(`(Labels ${SLAB.code})`);
  });
});
