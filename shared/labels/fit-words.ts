import type { LabelContent } from './label-content';
import { printableText } from './printable-text';
import { type Limits, type Setting, setRows } from './set-rows';
import { ASCENT, DESCENT, type Face, type Typeface, X_HEIGHT } from './typeface';

export type Box = { readonly x: number; readonly y: number; readonly width: number; readonly height: number };

/** One line of text; `x` and `baseline` are where its first letter stands, `box` is all the room its ink may take. */
export type PlacedText = {
  readonly text: string;
  readonly face: Face;
  readonly size: number;
  readonly x: number;
  readonly baseline: number;
  readonly box: Box;
};

/** A line to write on with a pen. */
export type PlacedRule = { readonly x: number; readonly y: number; readonly width: number };

export type FittedWords = {
  readonly texts: readonly PlacedText[];
  readonly rules: readonly PlacedRule[];
  readonly fit: WordsFit;
};

/** `large`: whole, and legible at a glance. `small`: whole, but small print. `shortened`: ends in ellipses or lost lines. */
type WordsFit = 'large' | 'small' | 'shortened';

/**
 * Smallest x-heights, in millimetres: what EU food law asks of print people must be able to read, 1.2 mm, and 0.9 mm where
 * there is little room (Regulation (EU) 1169/2011, article 13(2) and (3)).
 */
const LARGE_MM = 1.2 / X_HEIGHT;
const SMALL_MM = 0.9 / X_HEIGHT;
const LARGEST_MM = 8;
const STEP = 0.95;
const TITLE_RATIOS = [2.4, 2.1, 1.8, 1.55, 1.35, 1.2] as const;
const SMALLEST_RATIO = 1.2;
const WHOLE: Limits = { titleLines: 6, lineLines: 3 };
/** Tried in turn when the whole does not fit: the lines carry the dates, so the title gives way first. */
const SHORTENED: readonly Limits[] = [
  { titleLines: 2, lineLines: 2 },
  { titleLines: 1, lineLines: 2 },
  { titleLines: 2, lineLines: 1 },
  { titleLines: 1, lineLines: 1 },
];
const WRITE_ON = /\s*_{3,}\s*$/;

/** Tried in turn: at a size read at a glance without parting words, then parting them, then in small print. */
const TRIES = [
  { smallest: LARGE_MM, mayBreak: false, fit: 'large' },
  { smallest: LARGE_MM, mayBreak: true, fit: 'large' },
  { smallest: SMALL_MM, mayBreak: true, fit: 'small' },
] as const;

/**
 * Title and lines set as large as they fit in the box, from its top. Sizes are tried from large to small, and only at the
 * smallest are the title and then the lines cut, and the last lines left off; `fit` says how it went. Once the lines have
 * their size, the title takes the room that is left.
 */
export function fitWords(content: LabelContent, box: Box, typeface: Typeface): FittedWords {
  const title = printableText(content.title, typeface);
  const end = content.end ? [`end ${content.end.nr} of ${content.end.of}`] : [];
  const lines = content.lines.map((line) => ({
    text: printableText(line.replace(WRITE_ON, ''), typeface),
    rule: WRITE_ON.test(line),
  }));
  const set = (size: number, ratio: number, limits: Limits, count = lines.length) =>
    setRows(title, end, lines.slice(0, count), size, ratio, box.width, limits, typeface);

  for (const { smallest, mayBreak, fit } of TRIES) {
    for (const size of sizesDownTo(smallest)) {
      const fits = (ratio: number) => {
        const setting = set(size, ratio, WHOLE);
        return !setting.cut && (mayBreak || !setting.broken) && setting.height <= box.height ? setting : undefined;
      };
      if (fits(SMALLEST_RATIO) === undefined) continue;
      const best = TITLE_RATIOS.map(fits).find((setting) => setting !== undefined);
      if (best) return { ...place(best, box, typeface), fit };
    }
  }
  for (let count = lines.length; count >= 0; count -= 1) {
    for (const limits of SHORTENED) {
      const setting = set(SMALL_MM, SMALLEST_RATIO, limits, count);
      if (setting.height <= box.height) return { ...place(setting, box, typeface), fit: 'shortened' };
    }
  }
  throw new Error(`A label's words do not fit in ${box.width} by ${box.height} mm: the format is too small`);
}

/** From the largest size in steps of a twentieth; the last is exactly the smallest. */
function sizesDownTo(smallest: number): number[] {
  const sizes: number[] = [];
  for (let size = LARGEST_MM; size > smallest; size *= STEP) sizes.push(size);
  return [...sizes, smallest];
}

function place(setting: Setting, box: Box, typeface: Typeface): Omit<FittedWords, 'fit'> {
  const texts: PlacedText[] = [];
  const rules: PlacedRule[] = [];
  let y = box.y;
  for (const row of setting.rows) {
    y += row.height;
    const baseline = y - DESCENT * row.size;
    const width = typeface.width(row.text, row.face) * row.size;
    if (row.text !== '') {
      const ink = { x: box.x, y: baseline - ASCENT * row.size, width, height: (ASCENT + DESCENT) * row.size };
      texts.push({ text: row.text, face: row.face, size: row.size, x: box.x, baseline, box: ink });
    }
    if (row.rule) {
      const from = row.text === '' ? 0 : width + 1;
      rules.push({ x: box.x + from, y: baseline, width: box.width - from });
    }
  }
  return { texts, rules };
}
