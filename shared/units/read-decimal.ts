/** A number as written with digits and separators: its digits before and after the decimal mark. */
export type WrittenDecimal = {
  readonly whole: string;
  readonly fraction: string;
  readonly mark: '' | '.' | ',';
  /** The one mark could also group thousands: `2,500` but not `0,500`, `2,50` or `2500,000`. */
  readonly couldGroup: boolean;
};

const GROUPED: Readonly<Record<'.' | ',', RegExp>> = {
  '.': /^\d{1,3}(?:\.\d{3})+$/,
  // The second form is the Indian one: 1,50,000.
  ',': /^\d{1,3}(?:(?:,\d{3})+|(?:,\d{2})+,\d{3})$/,
};
const SPACED = /^\d{1,3}(?:\u00a0\d{3})+(?=[.,]|$)/;

/**
 * Reads digits with decimal and grouping marks, point or comma either way, and no-break spaces between thousands. When
 * both marks occur the last kind is the decimal one and must occur once. Returns undefined when the marks stand wrong.
 * `1,234.5` and `1.234,5` are both whole `1234`, fraction `5`; `2,500` is whole `2`, fraction `500` and `couldGroup`.
 */
export function readDecimal(literal: string): WrittenDecimal | undefined {
  let text = literal;
  if (text.includes('\u00a0')) {
    if (!SPACED.test(text)) return undefined;
    text = text.replaceAll('\u00a0', '');
  }
  const points = text.split('.').length - 1;
  const commas = text.split(',').length - 1;
  if (points + commas === 0) return /^\d+$/.test(text) ? plain(text, '', '') : undefined;
  if (points + commas === 1) {
    const mark = points ? '.' : ',';
    const [whole = '', fraction = ''] = text.split(mark);
    if (!/^\d*$/.test(whole) || !/^\d+$/.test(fraction)) return undefined;
    const couldGroup = text === literal && /^[1-9]\d{0,2}$/.test(whole) && fraction.length === 3;
    return { whole: whole || '0', fraction, mark, couldGroup };
  }
  if (points === 0 || commas === 0) {
    const mark = points ? '.' : ',';
    return GROUPED[mark].test(text) ? plain(text.replaceAll(mark, ''), '', '') : undefined;
  }
  const mark = text.lastIndexOf('.') > text.lastIndexOf(',') ? '.' : ',';
  const group = mark === '.' ? ',' : '.';
  const [whole = '', fraction = '', ...more] = text.split(mark);
  if (more.length || !GROUPED[group].test(whole) || !/^\d+$/.test(fraction)) return undefined;
  return plain(whole.replaceAll(group, ''), fraction, mark);
}

function plain(whole: string, fraction: string, mark: '' | '.' | ','): WrittenDecimal {
  return { whole, fraction, mark, couldGroup: false };
}
