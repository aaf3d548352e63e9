import { type LabelFormat, labelsPerPage } from './label-formats';

/** Which label of the run stands where on its page; `x` and `y` are the label's top left corner in millimetres. */
export type LabelPosition = { readonly index: number; readonly x: number; readonly y: number };

/**
 * Deals `count` labels out to pages. On a sheet the first page begins at position `start` (from 1, along the rows), so that a
 * part-used sheet is used up; a start past the sheet's last position begins at the last. Single labels have one place a page.
 *
 * @example placeLabels(3, LABEL_FORMATS['a4-3x8'], 24).length // 2: one label in the last corner, two on a new sheet
 */
export function placeLabels(count: number, format: LabelFormat, start: number): LabelPosition[][] {
  const perPage = labelsPerPage(format);
  const skipped = format.kind === 'sheet' ? Math.min(Math.max(Math.trunc(start), 1), perPage) - 1 : 0;
  const pages: LabelPosition[][] = [];
  for (let index = 0; index < count; index += 1) {
    const place = skipped + index;
    const page = Math.floor(place / perPage);
    const cell = place % perPage;
    const at =
      format.kind === 'sheet'
        ? {
            x: format.left + (cell % format.columns) * format.stepX,
            y: format.top + Math.floor(cell / format.columns) * format.stepY,
          }
        : { x: 0, y: 0 };
    const positions = pages[page] ?? [];
    positions.push({ index, ...at });
    pages[page] = positions;
  }
  return pages;
}
