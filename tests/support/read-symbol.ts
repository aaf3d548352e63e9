import { readFileSync } from 'node:fs';
import {
  BarcodeFormat,
  BinaryBitmap,
  ChecksumException,
  DataMatrixReader,
  DecodeHintType,
  FormatException,
  HybridBinarizer,
  NotFoundException,
  QRCodeReader,
  RGBLuminanceSource,
} from '@zxing/library';
import { prepareZXingModule, readBarcodes } from 'zxing-wasm/reader';
import type { Symbology } from '@/shared/labels/label-symbols';

/** A grey picture, one byte a pixel, 0 black. */
export type Grey = { readonly data: Uint8Array; readonly width: number; readonly height: number };

const wasm = readFileSync('node_modules/zxing-wasm/dist/reader/zxing_reader.wasm');
const wasmBinary = wasm.buffer.slice(wasm.byteOffset, wasm.byteOffset + wasm.byteLength);
prepareZXingModule({ overrides: { wasmBinary } });

/** Every two-dimensional symbol the product's own decoder finds in the picture. */
export async function readAll(picture: Grey, symbology: Symbology): Promise<string[]> {
  const data = new Uint8ClampedArray(picture.width * picture.height * 4);
  for (const [index, grey] of picture.data.entries()) data.set([grey, grey, grey, 255], index * 4);
  const found = await readBarcodes(
    { data, width: picture.width, height: picture.height, colorSpace: 'srgb' } as ImageData,
    {
      formats: [symbology === 'qr' ? 'QRCode' : 'DataMatrix'],
      tryHarder: true,
      textMode: 'Plain',
      maxNumberOfSymbols: 255,
    },
  );
  return found.filter((symbol) => symbol.isValid).map((symbol) => symbol.text);
}

/** What a second decoder, written independently of the first, reads in a picture of one symbol, or `undefined`. */
export function readIndependently(picture: Grey, symbology: Symbology): string | undefined {
  const source = new RGBLuminanceSource(Uint8ClampedArray.from(picture.data), picture.width, picture.height);
  const bitmap = new BinaryBitmap(new HybridBinarizer(source));
  const format = symbology === 'qr' ? BarcodeFormat.QR_CODE : BarcodeFormat.DATA_MATRIX;
  const hints = new Map<DecodeHintType, unknown>([
    [DecodeHintType.TRY_HARDER, true],
    [DecodeHintType.POSSIBLE_FORMATS, [format]],
  ]);
  try {
    return (symbology === 'qr' ? new QRCodeReader() : new DataMatrixReader()).decode(bitmap, hints).getText();
  } catch (error) {
    if (error instanceof NotFoundException || error instanceof ChecksumException || error instanceof FormatException) {
      return undefined;
    }
    throw error;
  }
}
