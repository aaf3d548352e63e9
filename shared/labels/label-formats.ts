/** A label's outside size and the blank border that keeps print off its edge, in millimetres. */
export type LabelSize = {
  readonly width: number;
  readonly height: number;
  readonly marginX: number;
  readonly marginY: number;
};

/** A page of labels for an office printer. Positions count along the rows, from 1 at top left. */
export type SheetFormat = {
  readonly id: LabelFormatId;
  readonly kind: 'sheet';
  readonly name: string;
  readonly label: LabelSize;
  readonly page: { readonly width: number; readonly height: number; readonly name: string };
  readonly columns: number;
  readonly rows: number;
  /** Left and top edge of the first label, and the step to its neighbours, in millimetres. */
  readonly left: number;
  readonly top: number;
  readonly stepX: number;
  readonly stepY: number;
};

/** A roll or stack of single labels: every page is one label. */
type SingleFormat = {
  readonly id: LabelFormatId;
  readonly kind: 'single';
  readonly name: string;
  readonly label: LabelSize;
};

export type LabelFormat = SheetFormat | SingleFormat;

export const LABEL_FORMAT_IDS = ['a4-3x8', 'a4-2x7', 'letter-3x10', '62x29', '57x32', '100x50', '102x152'] as const;

export type LabelFormatId = (typeof LABEL_FORMAT_IDS)[number];

const A4 = { width: 210, height: 297, name: 'A4' };
const LETTER = { width: 215.9, height: 279.4, name: 'US Letter' };

/**
 * The label stock we print on, named by its dimensions. Sheet arrangements are the usual ones sold for office printers
 * (common practice); A4 is 210 x 297 mm (ISO 216:2007 table 1), US Letter 8 1/2 x 11 in (ANSI/ASME Y14.1, size A).
 * The 70 x 37 mm sheet runs to the paper's edge, where office printers cannot print, so its labels keep a wider margin.
 */
export const LABEL_FORMATS: Readonly<Record<LabelFormatId, LabelFormat>> = {
  'a4-3x8': {
    id: 'a4-3x8',
    kind: 'sheet',
    name: 'A4, 3 by 8, 70 × 37 mm',
    label: { width: 70, height: 37, marginX: 5, marginY: 4 },
    page: A4,
    columns: 3,
    rows: 8,
    left: 0,
    top: 0.5,
    stepX: 70,
    stepY: 37,
  },
  'a4-2x7': {
    id: 'a4-2x7',
    kind: 'sheet',
    name: 'A4, 2 by 7, 99.1 × 38.1 mm',
    label: { width: 99.1, height: 38.1, marginX: 3, marginY: 2.5 },
    page: A4,
    columns: 2,
    rows: 7,
    left: 4.65,
    top: 15.15,
    stepX: 101.6,
    stepY: 38.1,
  },
  'letter-3x10': {
    id: 'letter-3x10',
    kind: 'sheet',
    name: 'US Letter, 3 by 10, 66.7 × 25.4 mm',
    label: { width: 66.675, height: 25.4, marginX: 2.5, marginY: 2 },
    page: LETTER,
    columns: 3,
    rows: 10,
    left: 4.7625,
    top: 12.7,
    stepX: 69.85,
    stepY: 25.4,
  },
  '62x29': {
    id: '62x29',
    kind: 'single',
    name: '62 × 29 mm',
    label: { width: 62, height: 29, marginX: 2, marginY: 2 },
  },
  '57x32': {
    id: '57x32',
    kind: 'single',
    name: '57 × 32 mm',
    label: { width: 57, height: 32, marginX: 2, marginY: 2 },
  },
  '100x50': {
    id: '100x50',
    kind: 'single',
    name: '100 × 50 mm',
    label: { width: 100, height: 50, marginX: 3, marginY: 3 },
  },
  '102x152': {
    id: '102x152',
    kind: 'single',
    name: '102 × 152 mm (4 × 6 in)',
    label: { width: 101.6, height: 152.4, marginX: 5, marginY: 5 },
  },
};

/** How many labels one page holds: 24 for `a4-3x8`, 1 for any single label. */
export function labelsPerPage(format: LabelFormat): number {
  return format.kind === 'sheet' ? format.columns * format.rows : 1;
}
