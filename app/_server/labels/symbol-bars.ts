import encoder from 'bwip-js/node';
import { LABEL_SYMBOLS, type Symbology } from '@/shared/labels/label-symbols';
import { labelSymbolText } from '@/shared/labels/symbol-text';

/** A run of dark modules in one row, counted in modules from the symbol's top left corner. */
export type SymbolBar = { readonly x: number; readonly y: number; readonly length: number };

const ENCODER: Readonly<Record<Symbology, Record<string, string | number>>> = {
  'data-matrix': { bcid: 'datamatrix', version: '14x14' },
  qr: { bcid: 'qrcode', version: 1, eclevel: 'H' },
};

/** The dark modules of the symbol for an own code, as horizontal bars. The symbol's size is fixed: see `LABEL_SYMBOLS`. */
export function symbolBars(code: string, symbology: Symbology): SymbolBar[] {
  const [symbol] = encoder.raw({ ...ENCODER[symbology], text: labelSymbolText(code) } as Parameters<
    typeof encoder.raw
  >[0]);
  const { modules } = LABEL_SYMBOLS[symbology];
  if (!symbol || !('pixs' in symbol) || symbol.pixx !== modules || symbol.pixy !== modules) {
    throw new Error(`The encoder made no ${modules} by ${modules} symbol for ${code}`);
  }
  const bars: SymbolBar[] = [];
  for (let y = 0; y < modules; y += 1) {
    for (let x = 0; x < modules; x += 1) {
      if (!symbol.pixs[y * modules + x]) continue;
      let length = 1;
      while (x + length < modules && symbol.pixs[y * modules + x + length]) length += 1;
      bars.push({ x, y, length });
      x += length;
    }
  }
  return bars;
}
