import { blurGray } from './blur-gray';
import type { GrayFrame } from './gray-frame';

/**
 * Sharpens by adding back what a blur takes away (an unsharp mask), `strength` times over.
 * Recovers codes the lens has not quite focused on. Values stay within 0 and 255; a flat frame comes back unchanged.
 */
export function sharpenGray(frame: GrayFrame, strength = 3): GrayFrame {
  const soft = blurGray(blurGray(frame)).data;
  const out = new Uint8ClampedArray(frame.data.length);
  for (let at = 0; at < out.length; at++) {
    const here = frame.data[at] ?? 0;
    out[at] = here + strength * (here - (soft[at] ?? 0));
  }
  return { width: frame.width, height: frame.height, data: new Uint8Array(out.buffer) };
}
