import type { GrayFrame } from './gray-frame';

/** The frame turned clockwise by a quarter, losing nothing: its left column becomes the top row, from right to left. */
export function quarterTurn(frame: GrayFrame): GrayFrame {
  const { width, height, data } = frame;
  const out = new Uint8Array(data.length);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) out[x * height + (height - 1 - y)] = data[y * width + x] ?? 0;
  }
  return { width: height, height: width, data: out };
}
