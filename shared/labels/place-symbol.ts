import type { LabelSize } from './label-formats';
import { LABEL_SYMBOLS, MODULE_STEP_MM, SMALLEST_MODULE_MM, type Symbology } from './label-symbols';

export type PlacedSymbol = {
  /** Left and top edge and side of the symbol without its quiet zone, in millimetres. */
  readonly x: number;
  readonly y: number;
  readonly side: number;
  readonly module: number;
  /** Width of the blank kept on every side, in millimetres. */
  readonly quiet: number;
};

/** Kept between the quiet zone and the label's edge, for stock that feeds a little crooked. */
const EDGE_MM = 0.5;
/** Share of the longer side that the symbol and its quiet zone may take; the rest belongs to the words. */
const LONGEST_SHARE = 0.36;

/**
 * Where the two-dimensional symbol stands: at the left and in the middle of a wide label, at the top and in the middle of
 * a tall one, as large as the label allows without taking more than 36 % of its longer side. The module is a multiple of
 * 0.125 mm and at least 0.5 mm; a label too small for that is a bug in the list of formats and throws.
 *
 * @example placeSymbol({ width: 62, height: 29, marginX: 2, marginY: 2 }, 'data-matrix').module // 1.125
 */
export function placeSymbol(size: LabelSize, symbology: Symbology): PlacedSymbol {
  const { modules, quiet } = LABEL_SYMBOLS[symbology];
  const wide = size.width >= size.height;
  const [along, across] = wide ? [size.width, size.height] : [size.height, size.width];
  const [marginAlong, marginAcross] = wide ? [size.marginX, size.marginY] : [size.marginY, size.marginX];
  const most = Math.min(
    (along * LONGEST_SHARE) / (modules + 2 * quiet),
    (across - 2 * marginAcross) / modules,
    (across - 2 * EDGE_MM) / (modules + 2 * quiet),
  );
  const module = Math.floor(most / MODULE_STEP_MM + 1e-9) * MODULE_STEP_MM;
  if (module < SMALLEST_MODULE_MM) throw new Error(`A ${size.width} by ${size.height} mm label is too small to scan`);
  const side = modules * module;
  const first = Math.max(marginAlong, quiet * module + EDGE_MM);
  const middle = (across - side) / 2;
  return { x: wide ? first : middle, y: wide ? middle : first, side, module, quiet: quiet * module };
}
