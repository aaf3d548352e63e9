import { open } from 'node:fs/promises';
import sharp from 'sharp';
import { seeded } from './seeded';
import { warp } from './warp';
import { woodBackground } from './wood-background';

export interface FakeCameraOptions {
  /** The label, as SVG text or the bytes of any picture sharp reads. */
  readonly svgOrPng: string | Uint8Array;
  readonly path: string;
  readonly width?: number;
  readonly height?: number;
  readonly seconds?: number;
  /** The label's width as a part of the picture's width. */
  readonly share?: number;
  readonly degrees?: number;
}

const FRAMES_A_SECOND = 10;

/**
 * Writes what a camera would film of a label lying on a bench, for Chromium's
 * `--use-file-for-fake-video-capture=<path>.mjpeg`, which plays it over and over. The hand shakes a little and the sensor is
 * noisy, always in the same way.
 */
export async function makeFakeCamera(options: FakeCameraOptions): Promise<string> {
  const { svgOrPng, path, width = 1280, height = 720, seconds = 2, share = 0.3, degrees = 4 } = options;
  if (!path.endsWith('.mjpeg')) throw new Error(`Chromium tells the format by the name; ${path} must end in .mjpeg`);
  const random = seeded(3);
  const label = await readLabel(svgOrPng);
  const file = await open(path, 'w');
  try {
    for (let frame = 0; frame < Math.max(1, Math.round(seconds * FRAMES_A_SECOND)); frame++) {
      const bench = { width, height, data: woodBackground(width, height, seeded(3), 10) };
      const filmed = warp(bench, label, {
        x: width / 2 + (random() - 0.5) * 12,
        y: height / 2 + (random() - 0.5) * 12,
        degrees: degrees + (random() - 0.5) * 2,
        scale: (share * width) / label.width,
        tilt: 0.05,
      });
      const raw = { width, height, channels: 4 } as const;
      const jpeg = sharp(Buffer.from(filmed.data), { raw }).flatten().jpeg({ quality: 88, chromaSubsampling: '4:2:0' });
      await file.write(await jpeg.toBuffer());
    }
  } finally {
    await file.close();
  }
  return path;
}

/** The flags with which Chromium films the file instead of asking for a camera. */
export function fakeCameraFlags(path: string): string[] {
  return [
    '--use-fake-ui-for-media-stream',
    '--use-fake-device-for-media-stream',
    `--use-file-for-fake-video-capture=${path}`,
  ];
}

async function readLabel(svgOrPng: string | Uint8Array) {
  const source = typeof svgOrPng === 'string' ? Buffer.from(svgOrPng) : svgOrPng;
  const { data, info } = await sharp(source, { density: 300 })
    .flatten({ background: '#fff' })
    .ensureAlpha()
    .raw()
    .toBuffer({ resolveWithObject: true });
  return { width: info.width, height: info.height, data: new Uint8ClampedArray(data) };
}
