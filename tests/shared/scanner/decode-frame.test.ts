import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { beforeAll, describe, expect, it } from 'vitest';
import { prepareZXingModule, readBarcodes, ZXING_WASM_SHA256 } from 'zxing-wasm/reader';
import { NOTHING_DOUBTFUL } from '@/app/_ui/scanner/acceptance';
import { decodeFrame } from '@/app/_ui/scanner/decode-frame';
import { decodePhoto } from '@/app/_ui/scanner/decode-photo';
import { decodeFramePlainly } from '@/app/_ui/scanner/decode-plainly';
import { CENTRE_WINDOW } from '@/app/_ui/scanner/frame-schedule';
import type { ReadPixels } from '@/app/_ui/scanner/look-for-codes';
import type { ColourFrame } from '@/app/_ui/scanner/pixels/gray-frame';
import { toColour } from '@/app/_ui/scanner/pixels/to-colour';
import { toGray } from '@/app/_ui/scanner/pixels/to-gray';
import { type PlainLibrary, plainReader } from '@/app/_ui/scanner/plain-reader';
import { renderCode } from '@/tests/support/fake-camera/render-code';
import { seeded } from '@/tests/support/fake-camera/seeded';
import { warp } from '@/tests/support/fake-camera/warp';
import { woodBackground } from '@/tests/support/fake-camera/wood-background';

const read: ReadPixels = (picture, options) =>
  readBarcodes({ ...picture, data: new Uint8ClampedArray(picture.data), colorSpace: 'srgb' } as ImageData, options);

beforeAll(async () => {
  const wasm = readFileSync(createRequire(import.meta.url).resolve('zxing-wasm/reader/zxing_reader.wasm'));
  const wasmBinary = wasm.buffer.slice(wasm.byteOffset, wasm.byteOffset + wasm.byteLength);
  await prepareZXingModule({ overrides: { wasmBinary }, fireImmediately: true });
});

async function filmed(kind: string, text: string, degrees = 3): Promise<ColourFrame> {
  const bench = { width: 1280, height: 720, data: woodBackground(1280, 720, seeded(5)) };
  const label = await renderCode(kind, text);
  return warp(bench, label, { x: 640, y: 360, degrees, scale: 0.75, tilt: 0.05 });
}

const firstFrame = async (picture: ColourFrame) =>
  (await decodeFrame(read, { whole: () => picture, centre: () => picture }, 0, NOTHING_DOUBTFUL)).accepted;

describe('what the decoder hands over', () => {
  // GS1 General Specifications, table of symbology identifiers: ]d2, ]C1, ]Q3 for GS1 data, ]d1, ]C0, ]Q1 for other data.
  it.each([
    ['gs1datamatrix', '(01)09501101530003(10)AB-12(17)261231', ']d2', '010950110153000310AB-12\u001d17261231'],
    ['gs1-128', '(10)AB-12(21)7', ']C1', '10AB-12\u001d217'],
    ['gs1qrcode', '(01)09501101530003(10)AB-12(17)261231', ']Q3', '010950110153000310AB-12\u001d17261231'],
    ['datamatrix', 'S-2HM8KQ', ']d1', 'S-2HM8KQ'],
    ['code128', 'S-2HM8KQ', ']C0', 'S-2HM8KQ'],
    ['qrcode', 'S-2HM8KQ', ']Q1', 'S-2HM8KQ'],
    ['ean13', '9501101530003', ']E0', '9501101530003'],
    ['upca', '036000291452', ']E0', '0036000291452'],
    ['code39', 'LOT+A-12', ']A0', 'LOT+A-12'],
  ])('of a %s holding %s is %s with its separators', async (kind, write, symbology, text) => {
    const [code] = await firstFrame(await filmed(kind, write));
    expect(code).toMatchObject({ text, symbology });
  });

  it('is nothing where there is only wood', async () => {
    const bench = { width: 1280, height: 720, data: woodBackground(1280, 720, seeded(9)) };
    expect(await firstFrame(bench)).toEqual([]);
  });

  it('is the code nearest the middle, where there are two', async () => {
    const one = await filmed('qrcode', 'MIDDLE');
    const two = warp(one, await renderCode('qrcode', 'ASIDE'), {
      x: 1080,
      y: 560,
      degrees: 0,
      scale: 0.75,
      tilt: 0.01,
    });
    expect((await firstFrame(two))[0]?.text).toBe('MIDDLE');
  });
});

function middleOf(picture: ColourFrame): ColourFrame {
  return toColour(toGray(picture, { left: 256, top: 120, ...CENTRE_WINDOW }));
}

describe('the plain decoder, for browsers that refuse WebAssembly', () => {
  const plain = plainReader(createRequire(import.meta.url)('@zxing/library') as PlainLibrary);
  const look = (picture: ColourFrame, frames: number) => {
    let doubtful = NOTHING_DOUBTFUL;
    for (let number = 0; number < frames; number++) {
      const judged = decodeFramePlainly(
        plain,
        { whole: () => picture, centre: () => middleOf(picture) },
        number,
        doubtful,
      );
      if (judged.accepted[0]) return { frame: number, ...judged.accepted[0] };
      doubtful = judged.doubtful;
    }
    return undefined;
  };

  it('hands over the same text and identifier for a GS1 Data Matrix in the middle', async () => {
    const picture = await filmed('gs1datamatrix', '(01)09501101530003(10)AB-12(17)261231', 0);
    expect(look(picture, 1)).toMatchObject({ text: '010950110153000310AB-12\u001d17261231', symbology: ']d2' });
  });

  it('believes a linear code only from the second frame on, and keeps its separators', async () => {
    // On white, as on a wide label: wood grain beside a GS1-128 hides it from this reader.
    const paper = { width: 1280, height: 720, data: new Uint8ClampedArray(1280 * 720 * 4).fill(255) };
    const label = await renderCode('gs1-128', '(10)AB-12(21)7');
    const picture = warp(paper, label, { x: 640, y: 360, degrees: 2, scale: 0.75, tilt: 0.05 });
    expect(look(picture, 1)).toBeUndefined();
    expect(look(picture, 2)).toMatchObject({ text: '10AB-12\u001d217', symbology: ']C1' });
  });

  it('reads a bar code that stands upright, with the frames it sees on their side', async () => {
    expect(look(await filmed('ean13', '9501101530003', 90), 6)).toMatchObject({
      text: '9501101530003',
      symbology: ']E0',
    });
  });

  it('sees nothing in bare wood', () => {
    const bench = { width: 1280, height: 720, data: woodBackground(1280, 720, seeded(9)) };
    expect(look(bench, 3)).toBeUndefined();
  });
});

describe('a photo', () => {
  it('gives its code although the label is small in it', async () => {
    const bench = { width: 4000, height: 3000, data: woodBackground(4000, 3000, seeded(6)) };
    const label = await renderCode('gs1datamatrix', '(01)09501101530003(10)AB-12(17)261231');
    const whole = warp(bench, label, { x: 3100, y: 2300, degrees: 12, scale: 0.7, tilt: 0.05 });
    const draw: Parameters<typeof decodePhoto>[1]['draw'] = (window, longest) => shrink(whole, window, longest);
    expect((await decodePhoto(read, { width: 4000, height: 3000, draw }))[0]).toMatchObject({
      text: '010950110153000310AB-12\u001d17261231',
      symbology: ']d2',
    });
  }, 20_000);
});

/** Takes every nth pixel, which is harder on a code than the smoothing of a browser's canvas. */
function shrink(
  from: ColourFrame,
  window: { left: number; top: number; width: number; height: number },
  longest: number,
): ColourFrame {
  const scale = Math.min(1, longest / Math.max(window.width, window.height));
  const width = Math.round(window.width * scale);
  const height = Math.round(window.height * scale);
  const source = new Uint32Array(from.data.buffer);
  const data = new Uint32Array(width * height);
  for (let y = 0; y < height; y++) {
    const row = (window.top + Math.floor(y / scale)) * from.width + window.left;
    for (let x = 0; x < width; x++) data[y * width + x] = source[row + Math.floor(x / scale)] ?? 0;
  }
  return { width, height, data: new Uint8ClampedArray(data.buffer) };
}

it('the decoder’s file is the one its glue code states by hash', () => {
  const wasm = readFileSync(createRequire(import.meta.url).resolve('zxing-wasm/reader/zxing_reader.wasm'));
  expect(createHash('sha256').update(wasm).digest('hex')).toBe(ZXING_WASM_SHA256);
});
