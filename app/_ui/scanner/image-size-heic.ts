const ISPE = 0x69737065;
const LOOK_IN_BYTES = 262_144;

/**
 * The greatest size stated in the `ispe` boxes of a HEIF or AVIF file (ISO/IEC 23008-12, 6.5.3), which holds one for the
 * picture, one for each tile and one for the thumbnail. Boxes are looked for in the first 256 KiB, where the index stands.
 */
export function heicSize(view: DataView): { width: number; height: number } | undefined {
  let width = 0;
  let height = 0;
  const end = Math.min(view.byteLength, LOOK_IN_BYTES) - 16;
  for (let at = 4; at <= end; at++) {
    if (view.getUint32(at) !== ISPE) continue;
    width = Math.max(width, view.getUint32(at + 8));
    height = Math.max(height, view.getUint32(at + 12));
  }
  return width > 0 && height > 0 ? { width, height } : undefined;
}
