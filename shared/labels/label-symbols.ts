/** The two-dimensional symbols a label can carry. */
export type Symbology = 'data-matrix' | 'qr';

export type LabelSymbol = {
  readonly id: Symbology;
  readonly name: string;
  /** Modules along one side, without the quiet zone. */
  readonly modules: number;
  /** Blank modules kept on every side. */
  readonly quiet: number;
  /** Why someone would choose it, in one sentence. */
  readonly because: string;
};

/**
 * The fixed symbol sizes of our own labels; the code is always 7 capital letters and digits.
 *
 * - Data Matrix ECC 200, 14 x 14: 8 data and 10 error-correction codewords, so 7 characters always fit
 *   (ISO/IEC 16022:2006 table 7). The standard asks for a quiet zone of 1 module (5.1, 7.1); we keep 2.
 * - QR Code version 1-H, 21 x 21: 10 alphanumeric characters at the highest correction level
 *   (ISO/IEC 18004:2015 table 7). The standard asks for a quiet zone of 4 modules (6.3.8).
 */
export const LABEL_SYMBOLS: Readonly<Record<Symbology, LabelSymbol>> = {
  'data-matrix': {
    id: 'data-matrix',
    name: 'Data Matrix',
    modules: 14,
    quiet: 2,
    because: 'Bigger dots in the same space, and it still reads with a corner covered.',
  },
  qr: {
    id: 'qr',
    name: 'QR',
    modules: 21,
    quiet: 4,
    because: 'Any phone camera reads it, and it bears blur better.',
  },
};

/** The smallest module we print, in millimetres: a phone held at arm's length needs about 3 pixels a module. */
export const SMALLEST_MODULE_MM = 0.5;

/**
 * Modules are whole multiples of this, in millimetres: one dot of a label printer with 8 dots a millimetre,
 * so that no module prints one dot wider than its neighbour.
 */
export const MODULE_STEP_MM = 0.125;
