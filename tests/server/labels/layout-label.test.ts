import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fontFiles, labelTypeface } from '@/app/_server/labels/label-typeface';
import { LABEL_FORMAT_IDS, LABEL_FORMATS } from '@/shared/labels/label-formats';
import { LABEL_SYMBOLS, MODULE_STEP_MM, SMALLEST_MODULE_MM, type Symbology } from '@/shared/labels/label-symbols';
import { type LabelLayout, layoutLabel } from '@/shared/labels/layout-label';
import { ASCENT, CAP_HEIGHT, DESCENT, X_HEIGHT } from '@/shared/labels/typeface';
import { anyLabel, RESIN, SHELF, SLAB } from '@/tests/support/label-samples';

const SYMBOLOGIES: readonly Symbology[] = ['data-matrix', 'qr'];
const CASES = LABEL_FORMAT_IDS.flatMap((id) => SYMBOLOGIES.map((symbology) => ({ id, symbology })));

type Ink = {
  readonly what: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
};

function inkOf(layout: LabelLayout): Ink[] {
  const { x, y, side, quiet } = layout.symbol;
  return [
    { what: 'symbol', x: x - quiet, y: y - quiet, width: side + 2 * quiet, height: side + 2 * quiet },
    ...layout.texts.map((text) => ({ what: text.text, ...text.box })),
  ];
}

const apart = (a: Ink, b: Ink) =>
  a.x + a.width <= b.x + 1e-6 ||
  b.x + b.width <= a.x + 1e-6 ||
  a.y + a.height <= b.y + 1e-6 ||
  b.y + b.height <= a.y + 1e-6;

describe('layoutLabel', () => {
  it.each(CASES)(
    'keeps any words on the label and off the symbol and each other: $id, $symbology',
    ({ id, symbology }) => {
      const size = LABEL_FORMATS[id].label;
      fc.assert(
        fc.property(anyLabel, (content) => {
          const layout = layoutLabel(content, size, symbology, labelTypeface);
          const inks = inkOf(layout);
          for (const [index, ink] of inks.entries()) {
            const margin = ink.what === 'symbol' ? { x: 0, y: 0 } : { x: size.marginX, y: size.marginY };
            expect(ink.x, ink.what).toBeGreaterThanOrEqual(margin.x - 1e-6);
            expect(ink.y, ink.what).toBeGreaterThanOrEqual(margin.y - 1e-6);
            expect(ink.x + ink.width, ink.what).toBeLessThanOrEqual(size.width - margin.x + 1e-6);
            expect(ink.y + ink.height, ink.what).toBeLessThanOrEqual(size.height - margin.y + 1e-6);
            for (const other of inks.slice(index + 1))
              expect(apart(ink, other), `${ink.what} over ${other.what}`).toBe(true);
          }
          for (const rule of layout.rules) {
            expect(rule.width).toBeGreaterThan(10);
            expect(rule.x + rule.width).toBeLessThanOrEqual(size.width - size.marginX + 1e-6);
          }
          expect(layout.texts.at(-1)?.text).toBe(content.code);
        }),
        { numRuns: 25 },
      );
    },
  );

  it.each(CASES)('prints ordinary words whole on every label: $id, $symbology', ({ id, symbology }) => {
    for (const content of [RESIN, { ...SLAB, end: { of: 2, nr: 1 } } as const, SHELF]) {
      const layout = layoutLabel(content, LABEL_FORMATS[id].label, symbology, labelTypeface);
      expect(layout.shortened).toBe(false);
      const words = layout.texts.map((text) => text.text).join(' ');
      expect(words).toContain(content.title);
      if ('end' in content) expect(words).toContain('end 1 of 2');
    }
  });

  it.each(CASES)(
    'sets the code in the monospaced cut with capitals of at least 3 mm: $id, $symbology',
    ({ id, symbology }) => {
      const code = layoutLabel(RESIN, LABEL_FORMATS[id].label, symbology, labelTypeface).texts.at(-1);
      expect(code?.face).toBe('mono');
      expect((code?.size ?? 0) * CAP_HEIGHT).toBeGreaterThanOrEqual(3);
    },
  );

  it.each(CASES)(
    'prints modules of at least half a millimetre in whole printer dots: $id, $symbology',
    ({ id, symbology }) => {
      const { module, side } = layoutLabel(RESIN, LABEL_FORMATS[id].label, symbology, labelTypeface).symbol;
      expect(module).toBeGreaterThanOrEqual(SMALLEST_MODULE_MM);
      expect(Number.isInteger(module / MODULE_STEP_MM)).toBe(true);
      expect(side).toBeCloseTo(module * LABEL_SYMBOLS[symbology].modules, 9);
    },
  );

  it('prints a larger symbol on a shelf label than on a tin label', () => {
    for (const symbology of SYMBOLOGIES) {
      const tin = layoutLabel(RESIN, LABEL_FORMATS['62x29'].label, symbology, labelTypeface).symbol.module;
      const shelf = layoutLabel(SHELF, LABEL_FORMATS['102x152'].label, symbology, labelTypeface).symbol.module;
      expect(shelf).toBeGreaterThan(2 * tin);
    }
  });

  it('turns trailing underscores into a rule to write on, on the line of its words', () => {
    const layout = layoutLabel(RESIN, LABEL_FORMATS['62x29'].label, 'data-matrix', labelTypeface);
    const opened = layout.texts.find((text) => text.text === 'opened');
    expect(layout.rules).toHaveLength(1);
    expect(layout.rules[0]?.y).toBe(opened?.baseline);
    expect(layout.texts.some((text) => text.text.includes('_'))).toBe(false);
  });

  it('says when words were shortened', () => {
    const long = { ...RESIN, title: 'exterior oil '.repeat(16) };
    const layout = layoutLabel(long, LABEL_FORMATS['62x29'].label, 'qr', labelTypeface);
    expect(layout.shortened).toBe(true);
    expect(layout.texts.some((text) => text.text.endsWith('…'))).toBe(true);
    expect(layout.texts.map((text) => text.text).join(' ')).toContain('good to 12 Dec 2026 (best before)');
  });
});

describe('the printed typeface', () => {
  it('has no ink beyond the ascent and descent the layout reckons with', () => {
    for (const file of (['text', 'strong', 'mono'] as const).flatMap(fontFiles)) {
      for (const code of file.font.characterSet) {
        const { maxY, minY } = file.font.glyphForCodePoint(code).bbox;
        if (Number.isFinite(maxY)) expect(maxY / file.font.unitsPerEm, file.name).toBeLessThanOrEqual(ASCENT);
        if (Number.isFinite(minY)) expect(-minY / file.font.unitsPerEm, file.name).toBeLessThanOrEqual(DESCENT);
      }
    }
  });

  it('has the capital and x-height the layout reckons with', () => {
    for (const [file] of (['text', 'strong', 'mono'] as const).map(fontFiles)) {
      expect(file && file.font.capHeight / file.font.unitsPerEm).toBe(CAP_HEIGHT);
      expect(file && file.font.xHeight / file.font.unitsPerEm).toBe(X_HEIGHT);
    }
  });

  it('draws letters of neighbouring languages from its second file', () => {
    for (const letter of 'ÄøßłŻőğČ½×°—') expect(labelTypeface.draws(letter), letter).toBe(true);
    expect(labelTypeface.width('Łódź', 'text')).toBeGreaterThan(labelTypeface.width('Łó', 'text'));
  });
});
