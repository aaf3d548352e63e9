/**
 * A bench top as a camera sees it: brown, with grain running across, knots of dark line and sensor noise.
 * Four bytes a pixel. `random` gives numbers from 0 up to 1; `noise` is the greatest change of a value.
 */
export function woodBackground(width: number, height: number, random: () => number, noise = 10): Uint8ClampedArray {
  const data = new Uint8ClampedArray(width * height * 4);
  const phase = random() * 100;
  const pitch = 0.05 + random() * 0.1;
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const wander = 9 * Math.sin(x * 0.004 + phase) + 4 * Math.sin(x * 0.013 + y * 0.01);
      const ring = Math.sin((y + wander) * pitch + phase);
      const pore = Math.sin((y + wander) * 1.7 + x * 0.02) > 0.93 ? -28 : 0;
      const tone = 22 * ring + pore + (random() - 0.5) * 2 * noise;
      const at = (y * width + x) * 4;
      data[at] = 170 + tone;
      data[at + 1] = 128 + tone * 0.9;
      data[at + 2] = 86 + tone * 0.7;
      data[at + 3] = 255;
    }
  }
  return data;
}
