import type { ColourFrame, GrayFrame } from './gray-frame';

/**
 * The brightness of a colour frame, or of a window of it.
 *
 * The weights are those of ITU-R BT.601 (0.299 red, 0.587 green, 0.114 blue) in 1024ths, the same the decoder uses,
 * so a pass over a changed copy sees what a pass over the frame itself would.
 * The window is cut to what lies inside the frame. Opacity is ignored: camera frames have none.
 *
 * @example toGray({ width: 1, height: 1, data: Uint8ClampedArray.of(255, 255, 255, 255) }).data[0] // 255
 */
export function toGray(
  frame: ColourFrame,
  window: { readonly left: number; readonly top: number; readonly width: number; readonly height: number } = {
    left: 0,
    top: 0,
    width: frame.width,
    height: frame.height,
  },
): GrayFrame {
  const left = Math.min(Math.max(0, window.left), frame.width);
  const top = Math.min(Math.max(0, window.top), frame.height);
  const width = Math.min(window.width, frame.width - left);
  const height = Math.min(window.height, frame.height - top);
  const data = new Uint8Array(width * height);
  const source = frame.data;
  let to = 0;
  for (let y = 0; y < height; y++) {
    let from = ((top + y) * frame.width + left) * 4;
    for (let x = 0; x < width; x++) {
      const red = source[from] ?? 0;
      const green = source[from + 1] ?? 0;
      const blue = source[from + 2] ?? 0;
      data[to++] = (306 * red + 601 * green + 117 * blue + 512) >> 10;
      from += 4;
    }
  }
  return { width, height, data };
}
