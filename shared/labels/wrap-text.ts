export type WrappedText = {
  readonly lines: readonly string[];
  /** A word was too wide for a line of its own and was broken, or words that belong together were parted. */
  readonly broken: boolean;
  /** The text did not fit in the lines allowed and ends in an ellipsis. */
  readonly cut: boolean;
};

const ELLIPSIS = '…';
/** A number, a capital or a sign that says little without the word before it: `slab 3`, `part B`, `9 %`. */
const LEANS_BACK = /^(?:\d{1,2}|\p{Lu}{1,2}|[%°×½¼¾])[,.;:]?$/u;

/**
 * Breaks a text into lines no wider than `width`, between words where it can and inside a word where it must. Words in
 * brackets, and a short number or letter with the word before it, stay on one line where they fit. What does not fit in `most` lines is replaced by an ellipsis. `measure` and `width` share any one unit.
 * An empty text has no lines. A line never ends or begins with a blank.
 *
 * @example wrapText('walnut slab', 7, 2, (t) => t.length) // { lines: ['walnut', 'slab'], broken: false, cut: false }
 */
export function wrapText(text: string, width: number, most: number, measure: (text: string) => number): WrappedText {
  const lines: string[] = [];
  const { units, parted } = togetherWords(text, (part) => measure(part) <= width);
  let broken = parted;
  let line = '';
  for (const word of units) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (measure(longer) <= width) {
      line = longer;
      continue;
    }
    if (line !== '') lines.push(line);
    line = word;
    while (lines.length <= most && measure(line) > width) {
      const head = longestHead(line, width, measure);
      broken = true;
      lines.push(head);
      line = line.slice(head.length);
    }
    if (lines.length > most) break;
  }
  if (line !== '') lines.push(line);
  if (lines.length <= most) return { lines, broken, cut: false };
  const kept = lines.slice(0, most);
  const last = kept.pop();
  if (last !== undefined) kept.push(withEllipsis(last, width, measure));
  return { lines: kept, broken, cut: true };
}

/** The words of a text, with those that belong together joined where they fit; `parted` when some did not. */
function togetherWords(text: string, fits: (text: string) => boolean): { units: string[]; parted: boolean } {
  const units: string[] = [];
  let parted = false;
  let bracket = false;
  for (const word of text.split(' ').filter((part) => part !== '')) {
    const previous = units.at(-1);
    const leans = bracket || LEANS_BACK.test(word);
    bracket = word.startsWith('(') ? !word.includes(')') : bracket && !word.includes(')');
    if (previous !== undefined && leans && fits(`${previous} ${word}`)) {
      units[units.length - 1] = `${previous} ${word}`;
    } else {
      parted ||= leans && previous !== undefined;
      units.push(word);
    }
  }
  return { units, parted };
}

/** The longest beginning that fits, and at least one character, so that the caller always moves on. */
function longestHead(word: string, width: number, measure: (text: string) => number): string {
  const characters = Array.from(word);
  let low = 1;
  let high = characters.length;
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if (measure(characters.slice(0, middle).join('')) <= width) low = middle;
    else high = middle - 1;
  }
  return characters.slice(0, low).join('');
}

function withEllipsis(line: string, width: number, measure: (text: string) => number): string {
  const characters = Array.from(line);
  while (characters.length > 0 && measure(`${characters.join('').trimEnd()}${ELLIPSIS}`) > width) characters.pop();
  return `${characters.join('').trimEnd()}${ELLIPSIS}`;
}
