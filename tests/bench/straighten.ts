/**
 * `npx tsx tests/bench/straighten.ts`: how long a phone's photo of 4,000 × 3,000 takes to be straightened and kept as a
 * picture of at most 2,048 pixels, against only making the same photo smaller to the same number of pixels and writing it
 * as the same kind of file, in turns within one run. Figures are printed; a goal missed is said, never failed.
 */
import os from 'node:os';
import sharp from 'sharp';
import { straightenPhoto } from '@/app/_server/shapes/straighten-photo';
import { boundsOf } from '@/shared/outline/outline-bounds';
import { type FourPixels, outlineFromPhoto } from '@/shared/outline/outline-from-photo';
import { unwrap } from '@/shared/result/result';
import { PHONE_CAMERA, photoOfSlab, SLAB, seenBy } from '../support/slab-photo';

const ROUNDS = process.argv.includes('--quick') ? 5 : 15;
const GOAL = 2.5;

const at = (places: readonly { x: number; y: number }[]) => places.map((place) => seenBy(PHONE_CAMERA, place));
const upload = await photoOfSlab(PHONE_CAMERA);
const { outline, map } = unwrap(
  outlineFromPhoto({
    reference: { kind: 'sheet', width: 420, height: 297 },
    marks: at(SLAB.sheet) as unknown as FourPixels,
    edge: at(SLAB.edge),
    gaps: [],
    fromOtherEnd: false,
  }),
);
const size = { width: PHONE_CAMERA.width, height: PHONE_CAMERA.down };
const straighten = () => straightenPhoto(upload, { size, map, place: boundsOf(outline.ring) });
const { info } = await straighten();
const resize = () =>
  sharp(upload)
    .rotate()
    .resize(info.width, info.height, { fit: 'fill' })
    .jpeg({ quality: 82, mozjpeg: true })
    .toBuffer();

const taken = { straighten: [] as number[], resize: [] as number[] };
for (let round = -2; round < ROUNDS; round += 1) {
  for (const [name, work] of [
    ['straighten', straighten],
    ['resize', resize],
  ] as const) {
    const begun = performance.now();
    await work();
    if (round >= 0) taken[name].push(performance.now() - begun);
  }
}
const median = (all: number[]) => all.sort((a, b) => a - b)[Math.floor(all.length / 2)] ?? Number.NaN;
const [ours, bare] = [median(taken.straighten), median(taken.resize)];
console.log(`${os.cpus().length} cores (${os.cpus()[0]?.model ?? 'unknown'}), Node ${process.version}`);
console.log(
  `${size.width} × ${size.height} straightened to ${info.width} × ${info.height}: ${ours.toFixed(0)} ms; made smaller only: ${bare.toFixed(0)} ms; ratio ${(ours / bare).toFixed(2)}, goal at most ${GOAL}${ours / bare > GOAL ? ': missed' : ''}`,
);
