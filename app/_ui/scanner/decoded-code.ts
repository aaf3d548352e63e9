import type { ReadResult } from 'zxing-wasm/reader';
import type { SeenCode } from './acceptance';

export interface DecodedCode extends SeenCode {
  /** How far the code's middle is from the middle of the picture, in pixels. */
  readonly offCentre: number;
}

const SQUARE = new Set(['QRCode', 'DataMatrix', 'Aztec', 'MaxiCode', 'MicroQRCode', 'RMQRCode']);

/** A decoder's result in our words. Every format that is not known to be square is held to the stricter linear rule. */
export function decodedCode(result: ReadResult, picture: { width: number; height: number }): DecodedCode {
  const { topLeft, topRight, bottomLeft, bottomRight } = result.position;
  const x = (topLeft.x + topRight.x + bottomLeft.x + bottomRight.x) / 4;
  const y = (topLeft.y + topRight.y + bottomLeft.y + bottomRight.y) / 4;
  return {
    text: result.text,
    symbology: result.symbologyIdentifier,
    linear: !SQUARE.has(result.symbology),
    lineCount: result.lineCount,
    offCentre: Math.hypot(x - picture.width / 2, y - picture.height / 2),
  };
}
