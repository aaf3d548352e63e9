import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { create, type Font } from 'fontkit';
import type { Face, Typeface } from '@/shared/labels/typeface';

const FAMILY: Readonly<Record<Face, { readonly family: string; readonly weight: number }>> = {
  text: { family: 'atkinson-hyperlegible-next', weight: 400 },
  strong: { family: 'atkinson-hyperlegible-next', weight: 700 },
  mono: { family: 'atkinson-hyperlegible-mono', weight: 700 },
};

/** One file of a cut: the alphabet comes in two files, and a text may need both. */
export type FontFile = { readonly name: string; readonly data: Buffer; readonly font: Font };

/** A stretch of text that one font file draws; `x` is where it starts, at size 1. */
export type TextRun = { readonly text: string; readonly file: FontFile; readonly x: number };

const opened = new Map<Face, readonly FontFile[]>();

/** The font files of a cut, read from the installed font packages on first use and kept. */
export function fontFiles(face: Face): readonly FontFile[] {
  const known = opened.get(face);
  if (known) return known;
  const { family, weight } = FAMILY[face];
  const files = ['latin', 'latin-ext'].map((part) => {
    const name = `${family}-${part}-${weight}-normal`;
    const data = readFileSync(join(process.cwd(), 'node_modules', '@fontsource', family, 'files', `${name}.woff`));
    const font = create(data);
    if ('fonts' in font) throw new Error(`${name} is a collection, not a font`);
    return { name, data, font };
  });
  opened.set(face, files);
  return files;
}

/** Splits a text into stretches by the file that draws them. A character no file has is drawn by the first, as its blank box. */
export function textRuns(text: string, face: Face): readonly TextRun[] {
  const files = fontFiles(face);
  const stretches: { text: string; file: FontFile }[] = [];
  for (const character of text) {
    const code = character.codePointAt(0) ?? 0;
    const file = files.find((candidate) => candidate.font.hasGlyphForCodePoint(code)) ?? files[0];
    if (!file) throw new Error(`No font files for ${face}`);
    const last = stretches.at(-1);
    if (last?.file === file) last.text += character;
    else stretches.push({ text: character, file });
  }
  let x = 0;
  return stretches.map((stretch) => {
    const run = { ...stretch, x };
    x += stretch.file.font.layout(stretch.text).advanceWidth / stretch.file.font.unitsPerEm;
    return run;
  });
}

const MOST_WIDTHS = 5000;
const widths = new Map<string, number>();

/** The measures of the printed typeface, from the same files that draw it. */
export const labelTypeface: Typeface = {
  width(text, face) {
    const key = `${face} ${text}`;
    const known = widths.get(key);
    if (known !== undefined) return known;
    const last = textRuns(text, face).at(-1);
    const width = last ? last.x + last.file.font.layout(last.text).advanceWidth / last.file.font.unitsPerEm : 0;
    if (widths.size >= MOST_WIDTHS) widths.clear();
    widths.set(key, width);
    return width;
  },
  draws(character) {
    const code = character.codePointAt(0) ?? 0;
    return (['text', 'strong'] as const).every((face) =>
      fontFiles(face).some((file) => file.font.hasGlyphForCodePoint(code)),
    );
  },
};
