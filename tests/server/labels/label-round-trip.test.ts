import fc from 'fast-check';
import sharp, { type Sharp } from 'sharp';
import { describe, expect, it } from 'vitest';
import { labelSvg } from '@/app/_server/labels/label-svg';
import { labelTypeface } from '@/app/_server/labels/label-typeface';
import { labelsPdf } from '@/app/_server/labels/labels-pdf';
import type { LabelContent } from '@/shared/labels/label-content';
import { LABEL_FORMAT_IDS, LABEL_FORMATS, type LabelFormatId } from '@/shared/labels/label-formats';
import { LABEL_SYMBOLS, type Symbology } from '@/shared/labels/label-symbols';
import { layoutLabel } from '@/shared/labels/layout-label';
import { anyLabel, RESIN, SHELF, SLAB } from '@/tests/support/label-samples';
import { pdfPages, picturePage } from '@/tests/support/pdf-content';
import { type Grey, readAll, readIndependently } from '@/tests/support/read-symbol';

/** A label printer's 8 dots a millimetre, about 203 dpi. */
const DOTS = 8;
const CASES = LABEL_FORMAT_IDS.flatMap((id) =>
  (['data-matrix', 'qr'] as const).map((symbology) => ({ id, symbology })),
);

/** The drawing at the printer's resolution: its size in dots instead of millimetres. */
function picture(label: LabelContent, id: LabelFormatId, symbology: Symbology): Sharp {
  const { width, height } = LABEL_FORMATS[id].label;
  const inDots = `width="${Math.round(width * DOTS)}" height="${Math.round(height * DOTS)}"`;
  const svg = labelSvg(label, LABEL_FORMATS[id].label, symbology);
  return sharp(Buffer.from(svg.replace(/width="[\d.]+mm" height="[\d.]+mm"/, inDots))).flatten({ background: '#fff' });
}

async function grey(image: Sharp): Promise<Grey> {
  const { data, info } = await image.greyscale().toColourspace('b-w').raw().toBuffer({ resolveWithObject: true });
  return { data: new Uint8Array(data), width: info.width, height: info.height };
}

/** The symbol and its quiet zone, in dots. */
function symbolBox(label: LabelContent, id: LabelFormatId, symbology: Symbology) {
  const { x, y, side, quiet } = layoutLabel(label, LABEL_FORMATS[id].label, symbology, labelTypeface).symbol;
  const whole = Math.floor((side + 2 * quiet) * DOTS);
  return { left: Math.floor((x - quiet) * DOTS), top: Math.floor((y - quiet) * DOTS), width: whole, height: whole };
}

/**
 * What the second decoder reads of the symbol alone from several distances: it misses some, and must never misread.
 * Its search for the finder patterns misses a rare symbol that stands upright, and finds it when turned, as a hand would.
 */
async function readFromAfar(
  image: Sharp,
  label: LabelContent,
  id: LabelFormatId,
  symbology: Symbology,
): Promise<string[]> {
  const { modules, quiet } = LABEL_SYMBOLS[symbology];
  const alone = await image
    .clone()
    .extract(symbolBox(label, id, symbology))
    .png()
    .toBuffer();
  const read = new Set<string>();
  for (const turn of [0, 90, 180, 270]) {
    for (const pixels of [3, 4, 5, 6, 8]) {
      const side = pixels * (modules + 2 * quiet);
      const seen = sharp(alone).resize(side, side, { fit: 'fill' }).rotate(turn);
      const text = readIndependently(await grey(seen), symbology);
      if (text !== undefined) read.add(text);
    }
    if (read.size > 0) break;
  }
  return [...read];
}

const inSymbol = (label: LabelContent) => label.code.replace('-', '');

describe('a label read back from its drawing', () => {
  it('is read by the second decoder when only a turn of it can be', async () => {
    const label: LabelContent = { code: 'D-1LTE2N', kind: 'container', title: '', lines: [] };
    expect(await readFromAfar(picture(label, '100x50', 'qr'), label, '100x50', 'qr')).toEqual([inSymbol(label)]);
  });

  it.each(CASES)(
    'is read by two independent decoders whatever stands on it: $id, $symbology',
    async ({ id, symbology }) => {
      await fc.assert(
        fc.asyncProperty(anyLabel, async (label) => {
          const image = picture(label, id, symbology);
          expect(await readAll(await grey(image.clone()), symbology)).toEqual([inSymbol(label)]);
          expect(await readFromAfar(image, label, id, symbology)).toEqual([inSymbol(label)]);
        }),
        { numRuns: 6 },
      );
    },
  );

  it.each(CASES)('is read turned, blurred and faded: $id, $symbology', async ({ id, symbology }) => {
    for (const label of [RESIN, SLAB, SHELF]) {
      const image = picture(label, id, symbology);
      const { module } = layoutLabel(label, LABEL_FORMATS[id].label, symbology, labelTypeface).symbol;
      for (const angle of [90, 180, 270]) {
        expect(await readAll(await grey(image.clone().rotate(angle)), symbology), `${angle}°`).toEqual([
          inSymbol(label),
        ]);
      }
      const blurred = image.clone().blur(0.3 * module * DOTS);
      expect(await readAll(await grey(blurred), symbology), 'blurred').toEqual([inSymbol(label)]);
      const faded = image.clone().linear(0.35, 110);
      expect(await readAll(await grey(faded), symbology), 'faded').toEqual([inSymbol(label)]);
    }
  });

  it.each(LABEL_FORMAT_IDS)('Data Matrix is read with a corner away from the finder covered: %s', async (id) => {
    for (const label of [RESIN, SLAB, SHELF]) {
      const { x, y, side, module } = layoutLabel(label, LABEL_FORMATS[id].label, 'data-matrix', labelTypeface).symbol;
      const patch = Math.round(2.5 * module * DOTS);
      const cover = await sharp({ create: { width: patch, height: patch, channels: 3, background: '#b08d5b' } })
        .png()
        .toBuffer();
      const image = picture(label, id, 'data-matrix').composite([
        { input: cover, left: Math.round((x + side) * DOTS) - patch, top: Math.round(y * DOTS) },
      ]);
      expect(await readAll(await grey(image), 'data-matrix')).toEqual([inSymbol(label)]);
    }
  });
});

describe('a label read back from its PDF', () => {
  it.each(CASES)('holds every label of the run, each at its place: $id, $symbology', async ({ id, symbology }) => {
    const run = [RESIN, SLAB, SHELF, { ...RESIN, code: 'C-0OI1L5' }, { ...SLAB, code: 'S-ZZZZZZ' }];
    const pages = pdfPages(await labelsPdf(run, LABEL_FORMATS[id], { symbology, start: 2 }));
    const read: string[] = [];
    for (const page of pages) read.push(...(await readAll(picturePage(page, DOTS), symbology)));
    expect(read.sort()).toEqual(run.map(inSymbol).sort());
  });
});
