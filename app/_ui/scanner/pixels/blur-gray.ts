import type { GrayFrame } from './gray-frame';

/**
 * A slight blur: each pixel becomes the 1-2-1 weighted mean of itself and its neighbours, across then down.
 * Calms sensor noise and dust so that the modules of a code stand clear. The edge pixel stands in for what lies beyond it.
 * A flat frame comes back unchanged.
 */
export function blurGray(frame: GrayFrame): GrayFrame {
  const { width, height, data } = frame;
  const across = new Uint8Array(data.length);
  for (let y = 0; y < height; y++) {
    const row = y * width;
    let before = data[row] ?? 0;
    let here = before;
    for (let x = 0; x < width; x++) {
      const after = x + 1 < width ? (data[row + x + 1] ?? 0) : here;
      across[row + x] = (before + 2 * here + after + 2) >> 2;
      before = here;
      here = after;
    }
  }
  const out = new Uint8Array(data.length);
  for (let y = 0; y < height; y++) {
    const row = y * width;
    const above = y > 0 ? row - width : row;
    const below = y + 1 < height ? row + width : row;
    for (let x = 0; x < width; x++) {
      out[row + x] = ((across[above + x] ?? 0) + 2 * (across[row + x] ?? 0) + (across[below + x] ?? 0) + 2) >> 2;
    }
  }
  return { width, height, data: out };
}
