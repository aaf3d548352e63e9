import type { ColourFrame, GrayFrame } from './gray-frame';

/** A gray frame as opaque colour pixels, because the decoder takes canvas pixels. */
export function toColour(frame: GrayFrame): ColourFrame {
  const data = new Uint8ClampedArray(frame.width * frame.height * 4);
  const words = new Uint32Array(data.buffer);
  const source = frame.data;
  for (let at = 0; at < source.length; at++) words[at] = (source[at] ?? 0) * 0x010101 + 0xff000000;
  return { width: frame.width, height: frame.height, data };
}
