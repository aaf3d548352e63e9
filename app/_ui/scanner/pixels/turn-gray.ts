import type { GrayFrame } from './gray-frame';

/**
 * The frame turned about its centre by `degrees` (positive turns what is seen clockwise), the same size, corners cut off.
 * Where the turned frame has nothing to show it is mid gray, which no code starts with. Values between pixels are
 * mixed from the four around (bilinear), so that narrow bars survive.
 */
export function turnGray(frame: GrayFrame, degrees: number): GrayFrame {
  const { width, height, data } = frame;
  const out = new Uint8Array(data.length).fill(128);
  const angle = (degrees * Math.PI) / 180;
  const cos = Math.cos(angle);
  const sin = Math.sin(angle);
  const midX = (width - 1) / 2;
  const midY = (height - 1) / 2;
  for (let y = 0; y < height; y++) {
    let fromX = midX + cos * -midX + sin * (y - midY);
    let fromY = midY - sin * -midX + cos * (y - midY);
    for (let x = 0; x < width; x++, fromX += cos, fromY -= sin) {
      const left = Math.floor(fromX);
      const top = Math.floor(fromY);
      if (left < 0 || top < 0 || left + 1 >= width || top + 1 >= height) continue;
      const partX = fromX - left;
      const partY = fromY - top;
      const at = top * width + left;
      const upper = (data[at] ?? 0) * (1 - partX) + (data[at + 1] ?? 0) * partX;
      const lower = (data[at + width] ?? 0) * (1 - partX) + (data[at + width + 1] ?? 0) * partX;
      out[y * width + x] = upper * (1 - partY) + lower * partY + 0.5;
    }
  }
  return { width, height, data: out };
}
