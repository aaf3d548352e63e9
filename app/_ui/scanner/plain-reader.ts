import type { DecodeHintType, Result } from '@zxing/library';
import type { DecodedCode } from './decoded-code';
import type { ColourFrame, GrayFrame } from './pixels/gray-frame';
import { quarterTurn } from './pixels/quarter-turn';
import { toGray } from './pixels/to-gray';
import { plainSymbology } from './plain-symbology';

/** The decoder in plain script, passed in because pages fetch it only when needed and Node finds another build of it. */
export type PlainLibrary = typeof import('@zxing/library');

export type PlainReader = (picture: ColourFrame, turned?: boolean) => DecodedCode[];

/**
 * A reader for browsers that refuse WebAssembly: it reads about half of what the other does, and square codes best in the
 * middle, a GS1-128 only where its label fills the picture's width. `turned` looks at the picture on its side, for bar codes that stand upright.
 *
 * The library's reader for all formats and its canvas source are not used: the one writes to the console at every miss, the
 * other cannot turn a picture. EAN-8 and UPC-E are left out because it sees them in wood grain.
 */
export function plainReader(library: PlainLibrary): PlainReader {
  const { BarcodeFormat, DecodeHintType: Hint } = library;
  const linear = [
    BarcodeFormat.CODE_128,
    BarcodeFormat.CODE_39,
    BarcodeFormat.EAN_13,
    BarcodeFormat.UPC_A,
    BarcodeFormat.ITF,
  ];
  const square = new Set([BarcodeFormat.QR_CODE, BarcodeFormat.DATA_MATRIX]);
  const hints = new Map<DecodeHintType, unknown>([
    [Hint.POSSIBLE_FORMATS, linear],
    [Hint.TRY_HARDER, true],
    // Without this a GS1-128 code loses its separators.
    [Hint.ASSUME_GS1, true],
  ]);
  const readers = [
    new library.QRCodeReader(),
    new library.DataMatrixReader(),
    new library.MultiFormatOneDReader(hints),
  ];

  function seen(result: Result): DecodedCode {
    const format = result.getBarcodeFormat();
    const { text, symbology } = plainSymbology(BarcodeFormat[format], result.getText());
    // It does not tell how many lines agreed, so a linear code always waits for a second frame.
    return { text, symbology, linear: !square.has(format), lineCount: 0, offCentre: 0 };
  }

  return (picture, turned = false) => {
    const gray = turned ? quarterTurn(toGray(picture)) : toGray(picture);
    const bitmap = bitmapOf(library, gray);
    for (const reader of readers) {
      try {
        return [seen(reader.decode(bitmap, hints))];
      } catch (cause) {
        // In this library every miss is an exception of its own family; any other error is a bug.
        if (!(cause instanceof library.Exception)) throw cause;
      }
    }
    return [];
  };
}

function bitmapOf(library: PlainLibrary, gray: GrayFrame) {
  const source = new library.RGBLuminanceSource(new Uint8ClampedArray(gray.data), gray.width, gray.height);
  return new library.BinaryBitmap(new library.HybridBinarizer(source));
}
