import { crc32, deflateSync } from 'node:zlib';

/** A PNG of a few bytes whose header claims this size (ISO/IEC 15948:2004, 11.2.2: width and height in IHDR). */
export function pngThatClaims(width: number, height: number): Buffer {
  return png(width, height, Buffer.alloc(1000));
}

/** A whole and sound PNG of black, one bit a pixel: kilobytes that unpack to `width` times `height` pixels. */
export function pngOfBlack(width: number, height: number): Buffer {
  return png(width, height, Buffer.alloc((Math.ceil(width / 8) + 1) * height));
}

function png(width: number, height: number, rows: Buffer): Buffer {
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(height, 4);
  // One bit, greyscale, deflate, no filter choice, not interlaced.
  header.set([1, 0, 0, 0, 0], 8);
  const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  return Buffer.concat([
    signature,
    chunk('IHDR', header),
    chunk('IDAT', deflateSync(rows, { level: 9 })),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

function chunk(type: string, data: Buffer): Buffer {
  const body = Buffer.concat([Buffer.from(type, 'latin1'), data]);
  const framed = Buffer.alloc(body.length + 8);
  framed.writeUInt32BE(data.length, 0);
  body.copy(framed, 4);
  framed.writeUInt32BE(crc32(body) >>> 0, body.length + 4);
  return framed;
}
