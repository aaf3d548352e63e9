import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { prepareZXingModule, readBarcodes } from 'zxing-wasm/reader';
import { type Doubtful, NOTHING_DOUBTFUL } from '@/app/_ui/scanner/acceptance';
import { decodeFrame } from '@/app/_ui/scanner/decode-frame';
import { CENTRE_WINDOW, FRAMES_IN_CYCLE } from '@/app/_ui/scanner/frame-schedule';
import { type Effort, lookForCodes, type ReadPixels } from '@/app/_ui/scanner/look-for-codes';
import type { ColourFrame } from '@/app/_ui/scanner/pixels/gray-frame';
import { toColour } from '@/app/_ui/scanner/pixels/to-colour';
import { toGray } from '@/app/_ui/scanner/pixels/to-gray';
import { type PlainLibrary, plainReader } from '@/app/_ui/scanner/plain-reader';
import { benchFrames } from './frames';

/**
 * Compares ways of reading codes on the same made frames: `npx tsx tests/bench/decoders.ts [frames] [seconds]`.
 *
 * Read rate, misreads (a text that is not there, on any frame) and the median time of one frame, with and without a code
 * in view. `ours` may look at the same picture for one turn of its schedule, as it does with a camera held still; `ours,
 * first frame` has only one look. The ratio is to the library's single hard pass in the same run, so that runs on
 * different machines compare. When the time is up the remaining frames are left out; those seen are spread over every kind.
 */
const frameCount = Number(process.argv[2] ?? 84);
const seconds = Number(process.argv[3] ?? 60);

interface Tally {
  read: number;
  looked: number;
  misread: number;
  readonly withTimes: number[];
  readonly withoutTimes: number[];
}

type Way = (picture: ColourFrame) => Promise<{ texts: string[]; frameTimes: number[] }>;

// Node finds only this library's CommonJS build, which gives no named imports.
const require = createRequire(import.meta.url);

const wasm = readFileSync(require.resolve('zxing-wasm/reader/zxing_reader.wasm'));
const wasmBinary = wasm.buffer.slice(wasm.byteOffset, wasm.byteOffset + wasm.byteLength);
await prepareZXingModule({ overrides: { wasmBinary }, fireImmediately: true });

const read: ReadPixels = (picture, options) => readBarcodes(asImageData(picture), options);

const ways: Record<string, Way> = {
  'zxing-wasm harder (baseline)': single('harder-inverted'),
  'zxing-wasm fast': single('fast'),
  ours: ours(FRAMES_IN_CYCLE),
  'ours, first frame': ours(1),
  '@zxing/library ASSUME_GS1': plain(),
};

const began = performance.now();
const { withCode, without } = await benchFrames(frameCount, 12);
console.log(`${withCode.length} frames with a code, ${without.length} without, 1280 × 720`);

const tallies = new Map(
  Object.keys(ways).map((name) => [name, { read: 0, looked: 0, misread: 0, withTimes: [], withoutTimes: [] } as Tally]),
);
const misses: Record<string, Record<string, number>> = {};
for (const way of Object.values(ways)) for (const picture of without.slice(0, 1)) await way(picture);

// Every way sees a picture before the next picture comes, so that a busy moment of the machine touches them all alike.
for (const picture of without) {
  for (const [name, way] of Object.entries(ways)) {
    const seen = await way(picture);
    const tally = tallies.get(name);
    tally?.withoutTimes.push(...seen.frameTimes);
    if (tally && seen.texts.length > 0) tally.misread += 1;
  }
}
for (const { picture, text, kind, harm } of spread(withCode)) {
  if (performance.now() - began > seconds * 1000) break;
  for (const [name, way] of Object.entries(ways)) {
    const seen = await way(picture);
    const tally = tallies.get(name);
    if (!tally) continue;
    tally.looked += 1;
    tally.withTimes.push(...seen.frameTimes);
    if (seen.texts.includes(text)) tally.read += 1;
    else count(misses, name, `${kind} ${harm}`);
    if (seen.texts.some((other) => other !== text)) tally.misread += 1;
  }
}

let baseline: { withCode: number; without: number } | undefined;
const rows = [...tallies].map(([decoder, tally]) => {
  const times = { withCode: median(tally.withTimes), without: median(tally.withoutTimes) };
  baseline ??= times;
  return {
    decoder,
    read: `${tally.read}/${tally.looked}`,
    '%': Math.round((100 * tally.read) / tally.looked),
    misread: tally.misread,
    'ms with': round(times.withCode),
    'ms without': round(times.without),
    'ratio with': round(times.withCode / baseline.withCode),
    'ratio without': round(times.without / baseline.without),
  };
});
console.table(rows);
for (const [name, kinds] of Object.entries(misses)) console.log(`${name} missed: ${JSON.stringify(kinds)}`);
console.log(`${Math.round((performance.now() - began) / 1000)} s`);

function single(effort: Effort): Way {
  return async (picture) => {
    const started = performance.now();
    const codes = await lookForCodes(read, picture, effort);
    return { texts: codes.map((code) => code.text), frameTimes: [performance.now() - started] };
  };
}

function ours(frames: number): Way {
  return async (picture) => {
    const frame = { whole: () => picture, centre: () => middle(picture) };
    const frameTimes: number[] = [];
    let doubtful: Doubtful = NOTHING_DOUBTFUL;
    for (let number = 0; number < frames; number++) {
      const started = performance.now();
      const judged = await decodeFrame(read, frame, number, doubtful);
      frameTimes.push(performance.now() - started);
      doubtful = judged.doubtful;
      if (judged.accepted.length > 0) return { texts: judged.accepted.map((code) => code.text), frameTimes };
    }
    return { texts: [], frameTimes };
  };
}

function plain(): Way {
  const look = plainReader(require('@zxing/library') as PlainLibrary);
  return async (picture) => {
    const started = performance.now();
    const codes = look(picture);
    return { texts: codes.map((code) => code.text), frameTimes: [performance.now() - started] };
  };
}

function middle(picture: ColourFrame): ColourFrame {
  const left = (picture.width - CENTRE_WINDOW.width) / 2;
  const top = (picture.height - CENTRE_WINDOW.height) / 2;
  return toColour(toGray(picture, { left, top, ...CENTRE_WINDOW }));
}

/** The same frames in an order whose every beginning holds all kinds, for ways that run out of time. */
function spread<T>(all: readonly T[]): T[] {
  const step = 29;
  const order = all.map((_, at) => (at * step) % all.length);
  return [...new Set([...order, ...all.keys()])].flatMap((at) => all.slice(at, at + 1));
}

/** Node has no `ImageData`; the decoder only reads these three fields. */
function asImageData(picture: ColourFrame): ImageData {
  return { ...picture, data: new Uint8ClampedArray(picture.data), colorSpace: 'srgb' } as ImageData;
}

function median(values: number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[sorted.length >> 1] ?? Number.NaN;
}

function round(value: number): number {
  return Math.round(value * 100) / 100;
}

function count(table: Record<string, Record<string, number>>, name: string, kind: string): void {
  const row = table[name] ?? {};
  table[name] = { ...row, [kind]: (row[kind] ?? 0) + 1 };
}
