import type { DecodedCode } from './decoded-code';

/** Reads codes from pictures, on the device. */
export interface Decoder {
  /** `number` counts frames since the finder opened or last read something. Give the next frame only after the answer. */
  readonly readFrame: (video: HTMLVideoElement, number: number) => Promise<readonly DecodedCode[]>;
  readonly readPhoto: (file: Blob) => Promise<readonly DecodedCode[]>;
  /** Ends the worker and frees its memory. Pending reads answer with nothing. */
  readonly close: () => void;
}
