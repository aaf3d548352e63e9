/**
 * The size in a JPEG's frame header, walking from marker to marker (ITU-T T.81, B.1.1.4 and B.2.2).
 * A thumbnail inside an application segment is stepped over. Nothing when the file ends or loses its order first.
 */
export function jpegSize(view: DataView): { width: number; height: number } | undefined {
  let at = 2;
  while (at + 9 < view.byteLength) {
    if (view.getUint8(at) !== 0xff) return undefined;
    const marker = view.getUint8(at + 1);
    if (marker === 0xff) {
      at += 1;
      continue;
    }
    const standsAlone = marker === 0x01 || (marker >= 0xd0 && marker <= 0xd8);
    if (standsAlone) {
      at += 2;
      continue;
    }
    // C0 to CF are frame headers, but for C4 (Huffman tables), C8 (kept free) and CC (arithmetic conditioning).
    const isFrame = marker >= 0xc0 && marker <= 0xcf && marker !== 0xc4 && marker !== 0xc8 && marker !== 0xcc;
    if (isFrame) return { height: view.getUint16(at + 5), width: view.getUint16(at + 7) };
    const length = view.getUint16(at + 2);
    if (length < 2 || marker === 0xd9 || marker === 0xda) return undefined;
    at += 2 + length;
  }
  return undefined;
}
