/** The canvas size of a WebP file: its lossy, lossless or extended first chunk (RFC 9649, sections 2.5 to 2.7). */
export function webpSize(view: DataView): { width: number; height: number } | undefined {
  if (view.byteLength < 30) return undefined;
  const chunk = view.getUint32(12);
  if (chunk === 0x56503820) {
    // 'VP8 ': after a 3-byte frame tag and the start code 9D 01 2A, 14 bits each (RFC 6386, 9.1).
    if (view.getUint8(23) !== 0x9d || view.getUint8(24) !== 0x01 || view.getUint8(25) !== 0x2a) return undefined;
    return { width: view.getUint16(26, true) & 0x3fff, height: view.getUint16(28, true) & 0x3fff };
  }
  if (chunk === 0x5650384c) {
    if (view.getUint8(20) !== 0x2f) return undefined;
    const bits = view.getUint32(21, true);
    return { width: (bits & 0x3fff) + 1, height: ((bits >>> 14) & 0x3fff) + 1 };
  }
  if (chunk === 0x56503858) {
    const low = (at: number) => view.getUint16(at, true) | (view.getUint8(at + 2) << 16);
    return { width: low(24) + 1, height: low(27) + 1 };
  }
  return undefined;
}
