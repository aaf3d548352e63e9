import type { DecodedCode } from './decoded-code';

/** What the page asks of the decoder's worker. Pictures are handed over, not copied, and stay on the device. */
export type DecoderRequest =
  | { readonly id: number; readonly kind: 'frame'; readonly number: number; readonly picture: ImageBitmap }
  | { readonly id: number; readonly kind: 'photo'; readonly file: Blob };

/** What the worker answers. `ready` or `refused` comes once, first. */
export type DecoderReply =
  | { readonly kind: 'ready' }
  | { readonly kind: 'refused'; readonly reason: string }
  | { readonly kind: 'codes'; readonly id: number; readonly codes: readonly DecodedCode[] }
  | { readonly kind: 'failed'; readonly id: number; readonly reason: string };
