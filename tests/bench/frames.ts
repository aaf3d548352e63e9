import sharp from 'sharp';
import { RENDER_SCALE, renderCode } from '../support/fake-camera/render-code';
import { seeded } from '../support/fake-camera/seeded';
import { type Picture, warp } from '../support/fake-camera/warp';
import { woodBackground } from '../support/fake-camera/wood-background';

const WIDTH = 1280;
const HEIGHT = 720;
const SEED = 7;

const CODES = [
  {
    kind: 'gs1datamatrix',
    write: '(01)09501101530003(10)AB-12(17)261231',
    text: '010950110153000310AB-12\u001d17261231',
  },
  { kind: 'gs1-128', write: '(01)09501101530003(10)AB-12', text: '010950110153000310AB-12' },
  { kind: 'qrcode', write: 'S-2HM8KQ', text: 'S-2HM8KQ' },
  { kind: 'ean13', write: '9501101530003', text: '9501101530003' },
] as const;

const HARMS = ['clean', 'blurred', 'noisy', 'turned', 'tilted', 'off centre', 'small'] as const;
export type Harm = (typeof HARMS)[number];

export interface BenchFrame {
  readonly picture: Picture;
  readonly text: string;
  readonly kind: string;
  readonly harm: Harm;
}

/** Frames of labels on a bench top, each kind of code under each kind of harm in turn, and frames of bare bench top. */
export async function benchFrames(
  count: number,
  bare: number,
): Promise<{ withCode: BenchFrame[]; without: Picture[] }> {
  const random = seeded(SEED);
  const withCode: BenchFrame[] = [];
  for (let at = 0; at < count; at++) {
    const code = CODES[at % CODES.length] ?? CODES[0];
    const harm = HARMS[Math.floor(at / CODES.length) % HARMS.length] ?? 'clean';
    withCode.push({ picture: await frame(code, harm, random), text: code.text, kind: code.kind, harm });
  }
  const without = Array.from({ length: bare }, () => bench(random, 10));
  return { withCode, without };
}

function bench(random: () => number, noise: number): Picture {
  return { width: WIDTH, height: HEIGHT, data: woodBackground(WIDTH, HEIGHT, random, noise) };
}

async function frame(code: (typeof CODES)[number], harm: Harm, random: () => number): Promise<Picture> {
  const label = await renderCode(code.kind, code.write);
  const pixelsPerModule = harm === 'small' ? 1.9 + random() * 0.8 : 2.4 + random() * 1.6;
  const reach = harm === 'off centre' ? 1 : 0.15;
  const laid = warp(bench(random, 6), label, {
    x: WIDTH / 2 + (random() - 0.5) * 700 * reach,
    y: HEIGHT / 2 + (random() - 0.5) * 400 * reach,
    degrees: harm === 'turned' ? random() * 360 : (random() - 0.5) * 16,
    scale: pixelsPerModule / RENDER_SCALE,
    tilt: harm === 'tilted' ? 0.25 + random() * 0.2 : 0.05,
  });
  if (harm === 'blurred') return blurred(laid, 1 + random() * 1.3);
  return harm === 'noisy' ? noisy(laid, 30 + random() * 50, random) : laid;
}

async function blurred(picture: Picture, sigma: number): Promise<Picture> {
  const raw = { width: picture.width, height: picture.height, channels: 4 } as const;
  const data = await sharp(Buffer.from(picture.data), { raw }).blur(sigma).raw().toBuffer();
  return { ...picture, data: new Uint8ClampedArray(data) };
}

function noisy(picture: Picture, most: number, random: () => number): Picture {
  const data = new Uint8ClampedArray(picture.data);
  for (let at = 0; at < data.length; at += 4) {
    const change = (random() - 0.5) * 2 * most;
    for (let channel = 0; channel < 3; channel++) data[at + channel] = (data[at + channel] ?? 0) + change;
  }
  return { ...picture, data };
}
