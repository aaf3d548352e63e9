import { ASCENT, DESCENT, type Face, type Typeface } from './typeface';
import { wrapText } from './wrap-text';

/** One line as it will be set; `rule` when a line to write on follows its words. */
type Row = {
  readonly text: string;
  readonly face: Face;
  readonly size: number;
  readonly height: number;
  readonly rule: boolean;
};
/** All rows of a label at one size, and what setting them took. */
export type Setting = {
  readonly rows: readonly Row[];
  readonly height: number;
  readonly broken: boolean;
  readonly cut: boolean;
};
/** How many lines the title, and each of the lines under it, may wrap to. */
export type Limits = { readonly titleLines: number; readonly lineLines: number };

/** Room for handwriting over a rule, and the shortest rule worth printing, in millimetres. */
const WRITING_HEIGHT_MM = 4;
const SHORTEST_RULE_MM = 12;
/** Air under the title, as a share of the lines' size. */
const TITLE_GAP = 0.3;

/**
 * Wraps a label's title, its `end 1 of 2` and its lines into rows at one size, in millimetres; the title is set `ratio` times
 * larger. A line to write on is given the height of handwriting and keeps room for its rule.
 */
export function setRows(
  title: string,
  end: readonly string[],
  lines: readonly { readonly text: string; readonly rule: boolean }[],
  size: number,
  ratio: number,
  width: number,
  limits: Limits,
  typeface: Typeface,
): Setting {
  const rows: Row[] = [];
  let broken = false;
  let cut = false;
  const add = (text: string, face: Face, rowSize: number, most: number, rule: boolean) => {
    const room = rule ? width - SHORTEST_RULE_MM : width;
    const wrapped = wrapText(text, room, most, (part) => typeface.width(part, face) * rowSize);
    broken ||= wrapped.broken;
    cut ||= wrapped.cut;
    const leading = (ASCENT + DESCENT) * rowSize;
    const parts = wrapped.lines.length === 0 && rule ? [''] : wrapped.lines;
    parts.forEach((part, index) => {
      const ruled = rule && index === parts.length - 1;
      rows.push({
        text: part,
        face,
        size: rowSize,
        height: ruled ? Math.max(leading, WRITING_HEIGHT_MM) : leading,
        rule: ruled,
      });
    });
  };
  add(title, 'strong', size * ratio, limits.titleLines, false);
  const titleRows = rows.length;
  for (const text of end) add(text, 'strong', size, 1, false);
  for (const line of lines) add(line.text, 'text', size, limits.lineLines, line.rule);
  const next = rows[titleRows];
  if (next && titleRows > 0) rows[titleRows] = { ...next, height: next.height + TITLE_GAP * size };
  return { rows, height: rows.reduce((sum, row) => sum + row.height, 0), broken, cut };
}
