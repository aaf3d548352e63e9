import type { ReaderOptions, ReadResult } from 'zxing-wasm/reader';
import { type DecodedCode, decodedCode } from './decoded-code';
import { SCAN_FORMATS } from './formats';
import type { ColourFrame } from './pixels/gray-frame';

/** The decoder itself, passed in so that the worker and the bench run the same passes. */
export type ReadPixels = (picture: ColourFrame, options: ReaderOptions) => Promise<readonly ReadResult[]>;

export type Effort = 'fast' | 'harder' | 'harder-inverted';

// `Plain` keeps GS1 separators as character 29; the library's own default turns them into bracketed text.
const ALWAYS = { textMode: 'Plain', formats: [...SCAN_FORMATS], maxNumberOfSymbols: 4 } satisfies ReaderOptions;

const EFFORTS: Record<Effort, ReaderOptions> = {
  fast: { ...ALWAYS, tryHarder: false, tryRotate: true, tryInvert: false, tryDownscale: false },
  harder: { ...ALWAYS, tryHarder: true, tryInvert: false },
  'harder-inverted': { ...ALWAYS, tryHarder: true, tryInvert: true },
};

/** One look at a picture. The codes nearest its middle come first, because that is where a person aims. */
export async function lookForCodes(read: ReadPixels, picture: ColourFrame, effort: Effort): Promise<DecodedCode[]> {
  const results = await read(picture, EFFORTS[effort]);
  return results.map((result) => decodedCode(result, picture)).sort((a, b) => a.offCentre - b.offCentre);
}
