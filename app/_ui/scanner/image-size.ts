import { err, ok, type Result } from '@/shared/result/result';
import { heicSize } from './image-size-heic';
import { jpegSize } from './image-size-jpeg';
import { webpSize } from './image-size-webp';

type ImageKind = 'png' | 'jpeg' | 'webp' | 'gif' | 'heic' | 'avif';

export interface ImageSize {
  readonly kind: ImageKind;
  /** Pixels as the file's own header states them, before any turning by its orientation mark. */
  readonly width: number;
  readonly height: number;
}

export type ImageSizeError =
  | { readonly code: 'not-an-image' }
  | { readonly code: 'unreadable-header'; readonly kind: ImageKind };

/**
 * The kind and size of a picture from its first bytes, without decoding it, so that a small file which would unpack into
 * gigabytes is refused first. The name and the stated type of the file are not believed.
 *
 * `not-an-image`: no known signature. `unreadable-header`: a known signature, but no size greater than 0 follows it.
 * Sources: PNG (ISO/IEC 15948, IHDR), JPEG (ITU-T T.81, B.2.2), GIF89a, WebP (RFC 9649), HEIF (ISO/IEC 23008-12, `ispe`).
 */
export function readImageSize(bytes: Uint8Array): Result<ImageSize, ImageSizeError> {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const kind = kindOf(bytes, view);
  if (kind === undefined) return err({ code: 'not-an-image' });
  const size = sizeOf(kind, view);
  if (!size || size.width <= 0 || size.height <= 0) return err({ code: 'unreadable-header', kind });
  return ok({ kind, ...size });
}

function kindOf(bytes: Uint8Array, view: DataView): ImageKind | undefined {
  if (bytes.length < 12) return undefined;
  const text = (from: number, length: number) => String.fromCharCode(...bytes.subarray(from, from + length));
  if (view.getUint32(0) === 0x89504e47 && view.getUint32(4) === 0x0d0a1a0a) return 'png';
  if (view.getUint16(0) === 0xffd8 && bytes[2] === 0xff) return 'jpeg';
  if (text(0, 6) === 'GIF87a' || text(0, 6) === 'GIF89a') return 'gif';
  if (text(0, 4) === 'RIFF' && text(8, 4) === 'WEBP') return 'webp';
  if (text(4, 4) !== 'ftyp') return undefined;
  const brand = text(8, 4);
  if (brand === 'avif' || brand === 'avis') return 'avif';
  return ['heic', 'heix', 'hevc', 'hevx', 'heim', 'heis', 'mif1', 'msf1'].includes(brand) ? 'heic' : undefined;
}

function sizeOf(kind: ImageKind, view: DataView): { width: number; height: number } | undefined {
  if (kind === 'png') {
    return view.byteLength < 24 ? undefined : { width: view.getUint32(16), height: view.getUint32(20) };
  }
  if (kind === 'gif') return { width: view.getUint16(6, true), height: view.getUint16(8, true) };
  if (kind === 'jpeg') return jpegSize(view);
  if (kind === 'webp') return webpSize(view);
  return heicSize(view);
}
