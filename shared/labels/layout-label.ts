import { type Box, type FittedWords, fitWords, type PlacedRule, type PlacedText } from './fit-words';
import type { LabelContent } from './label-content';
import type { LabelSize } from './label-formats';
import type { Symbology } from './label-symbols';
import { type PlacedSymbol, placeSymbol } from './place-symbol';
import { CAP_HEIGHT, type Typeface } from './typeface';

export type LabelLayout = {
  readonly width: number;
  readonly height: number;
  readonly symbol: PlacedSymbol;
  readonly texts: readonly PlacedText[];
  readonly rules: readonly PlacedRule[];
  /** Some words did not fit even at the smallest size and end in an ellipsis or are left off. */
  readonly shortened: boolean;
};

/** Blank between the words and the symbol, and between the words and the code, in millimetres. */
const GAP_MM = 1.5;
/**
 * Shares of the words' height that the code may take, tried in turn until the words stand whole and large: the code must be
 * legible at arm's length, but `part B` and a date matter more than the last millimetre of it.
 */
const CODE_SHARES = [0.3, 0.24, 0.18] as const;
const FITS = ['large', 'small', 'shortened'] as const;

/**
 * What stands where on one label, in millimetres from its top left corner; the preview and the print both draw exactly this.
 *
 * The symbol comes first and keeps its quiet zone. The code in the monospaced cut is set across the rest of the label at its
 * foot, as large as it fits. Title and lines fill what remains above it, as large as they fit, and are shortened only when
 * they do not fit at the smallest legible size. Nothing overlaps, nothing passes the label's margin.
 *
 * @example layoutLabel(content, LABEL_FORMATS['62x29'].label, 'data-matrix', typeface).symbol.module // 1.125
 */
export function layoutLabel(
  content: LabelContent,
  size: LabelSize,
  symbology: Symbology,
  typeface: Typeface,
): LabelLayout {
  const symbol = placeSymbol(size, symbology);
  const wide = size.width >= size.height;
  const beyond = symbol.side + Math.max(symbol.quiet, GAP_MM);
  const left = wide ? symbol.x + beyond : size.marginX;
  const top = wide ? size.marginY : symbol.y + beyond;
  const width = size.width - size.marginX - left;
  const foot = size.height - size.marginY;

  const { code, words } = bestOf(
    CODE_SHARES.map((share) => {
      const code = placeCode(content.code, { x: left, y: top, width, height: foot - top }, share, typeface);
      const room = { x: left, y: top, width, height: code.box.y - GAP_MM - top };
      return { code, words: fitWords(content, room, typeface) };
    }),
  );
  return {
    width: size.width,
    height: size.height,
    symbol,
    texts: [...words.texts, code],
    rules: words.rules,
    shortened: words.fit === 'shortened',
  };
}

function placeCode(text: string, box: Box, share: number, typeface: Typeface): PlacedText {
  const across = typeface.width(text, 'mono');
  const size = Math.min(box.width / across, (box.height * share) / CAP_HEIGHT);
  const foot = box.y + box.height;
  const height = size * CAP_HEIGHT;
  const ink = { x: box.x, y: foot - height, width: size * across, height };
  return { text, face: 'mono', size, x: box.x, baseline: foot, box: ink };
}

function bestOf<T extends { readonly words: FittedWords }>(tries: readonly T[]): T {
  const best = FITS.flatMap((fit) => tries.filter((attempt) => attempt.words.fit === fit))[0];
  if (!best) throw new Error('No share for the code was tried');
  return best;
}
