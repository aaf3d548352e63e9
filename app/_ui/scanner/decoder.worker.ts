import { prepareZXingModule, readBarcodes, ZXING_WASM_VERSION } from 'zxing-wasm/reader';
import { type Doubtful, NOTHING_DOUBTFUL } from './acceptance';
import { type CameraFrame, decodeFrame } from './decode-frame';
import { decodePhoto, type Photo, type Window } from './decode-photo';
import type { DecodedCode } from './decoded-code';
import type { DecoderReply, DecoderRequest } from './decoder-messages';
import { CENTRE_WINDOW, WHOLE_FRAME } from './frame-schedule';
import type { ReadPixels } from './look-for-codes';
import type { ColourFrame } from './pixels/gray-frame';

// Our own copy of the decoder, pinned to the version of its glue: a mismatched pair crashes.
const wasmFile = new URL(`/vendor/zxing_reader-${ZXING_WASM_VERSION}.wasm`, self.location.origin).href;

const read: ReadPixels = (picture, options) =>
  readBarcodes(new ImageData(new Uint8ClampedArray(picture.data), picture.width, picture.height), options);

/** One canvas, kept for the worker's life: making one for each frame fills a phone's memory. */
const canvas = new OffscreenCanvas(WHOLE_FRAME.width, WHOLE_FRAME.height);
const brush = canvas.getContext('2d', { willReadFrequently: true, alpha: false });

let doubtful: Doubtful = NOTHING_DOUBTFUL;

function draw(picture: ImageBitmap, window: Window, width: number, height: number): ColourFrame {
  if (!brush) throw new Error('This browser gives the decoder no canvas.');
  if (canvas.width < width) canvas.width = width;
  if (canvas.height < height) canvas.height = height;
  brush.fillStyle = '#fff';
  brush.fillRect(0, 0, width, height);
  brush.drawImage(picture, window.left, window.top, window.width, window.height, 0, 0, width, height);
  return brush.getImageData(0, 0, width, height);
}

function wholeOf(picture: ImageBitmap): ColourFrame {
  const long = Math.max(picture.width, picture.height);
  const short = Math.min(picture.width, picture.height);
  const scale = Math.min(1, WHOLE_FRAME.width / long, WHOLE_FRAME.height / short);
  const window = { left: 0, top: 0, width: picture.width, height: picture.height };
  return draw(picture, window, Math.round(picture.width * scale), Math.round(picture.height * scale));
}

function centreOf(picture: ImageBitmap): ColourFrame {
  const upright = picture.height > picture.width;
  const width = Math.min(picture.width, upright ? CENTRE_WINDOW.height : CENTRE_WINDOW.width);
  const height = Math.min(picture.height, upright ? CENTRE_WINDOW.width : CENTRE_WINDOW.height);
  const left = Math.floor((picture.width - width) / 2);
  const top = Math.floor((picture.height - height) / 2);
  return draw(picture, { left, top, width, height }, width, height);
}

/** What reads: the fast decoder, or where WebAssembly is refused the plain one, which is fetched only then. */
interface Engine {
  readonly frame: (frame: CameraFrame, number: number) => Promise<FrameOutcome>;
  readonly photo: (photo: Photo) => Promise<readonly DecodedCode[]>;
}

type FrameOutcome = { readonly accepted: readonly DecodedCode[]; readonly doubtful: Doubtful };

async function fastEngine(): Promise<Engine> {
  const locateFile = (path: string, prefix: string) => (path.endsWith('.wasm') ? wasmFile : prefix + path);
  await prepareZXingModule({ overrides: { locateFile }, fireImmediately: true });
  // The first read costs about 100 ms more than the others, so it is spent on a blank frame.
  await read({ width: 64, height: 64, data: new Uint8ClampedArray(64 * 64 * 4).fill(255) }, { tryHarder: false });
  return {
    frame: (frame, number) => decodeFrame(read, frame, number, doubtful),
    photo: (photo) => decodePhoto(read, photo),
  };
}

async function plainEngine(): Promise<Engine> {
  const [library, { plainReader }, { decodeFramePlainly, decodePhotoPlainly }] = await Promise.all([
    import('@zxing/library'),
    import('./plain-reader'),
    import('./decode-plainly'),
  ]);
  const plain = plainReader(library);
  return {
    frame: async (frame, number) => decodeFramePlainly(plain, frame, number, doubtful),
    photo: async (photo) => decodePhotoPlainly(plain, photo),
  };
}

async function openEngine(): Promise<Engine> {
  try {
    if (typeof WebAssembly !== 'object') throw new Error('WebAssembly is refused here.');
    return await fastEngine();
  } catch (cause) {
    console.warn('The fast decoder was refused, so the plain one is used.', cause);
    return plainEngine();
  }
}

async function readFrame(engine: Engine, request: Extract<DecoderRequest, { kind: 'frame' }>) {
  const { picture, number } = request;
  try {
    const frame = { whole: once(() => wholeOf(picture)), centre: once(() => centreOf(picture)) };
    if (number === 0) doubtful = NOTHING_DOUBTFUL;
    const outcome = await engine.frame(frame, number);
    doubtful = outcome.doubtful;
    return outcome.accepted;
  } finally {
    picture.close();
  }
}

async function readPhoto(engine: Engine, file: Blob) {
  const picture = await createImageBitmap(file);
  try {
    return await engine.photo({
      width: picture.width,
      height: picture.height,
      draw: (window, longest) => {
        const scale = Math.min(1, longest / Math.max(window.width, window.height));
        const side = (length: number) => Math.max(1, Math.round(length * scale));
        return draw(picture, window, side(window.width), side(window.height));
      },
    });
  } finally {
    picture.close();
  }
}

function once<T>(make: () => T): () => T {
  let made: { value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}

function reply(message: DecoderReply): void {
  self.postMessage(message);
}

function reasonOf(cause: unknown): string {
  return cause instanceof Error ? cause.message : String(cause);
}

const opening = openEngine();

self.addEventListener('message', async ({ data: request }: MessageEvent<DecoderRequest>) => {
  try {
    const engine = await opening;
    const codes = request.kind === 'frame' ? await readFrame(engine, request) : await readPhoto(engine, request.file);
    reply({ kind: 'codes', id: request.id, codes });
  } catch (cause) {
    reply({ kind: 'failed', id: request.id, reason: reasonOf(cause) });
  }
});

opening.then(
  () => reply({ kind: 'ready' }),
  (cause) => reply({ kind: 'refused', reason: reasonOf(cause) }),
);
