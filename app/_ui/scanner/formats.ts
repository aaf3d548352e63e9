import type { ReadInputBarcodeFormat } from 'zxing-wasm/reader';

/**
 * What the decoder looks for. Code 39 only in its standard form: the extended form rewrites `LOT+A-12` as `LOTa-12`.
 * Plain Interleaved 2 of 5 is left out because it sees codes in wood grain and ruled lines; ITF-14 has a fixed length.
 */
export const SCAN_FORMATS: readonly ReadInputBarcodeFormat[] = [
  'QRCode',
  'DataMatrix',
  'Code128',
  'Code39Std',
  'EAN13',
  'EAN8',
  'UPCA',
  'UPCE',
  'ITF14',
  'DataBar',
  'DataBarLtd',
  'DataBarExp',
];
