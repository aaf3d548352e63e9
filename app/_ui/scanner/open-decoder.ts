import type { DecodedCode } from './decoded-code';
import type { Decoder } from './decoder';
import type { DecoderReply, DecoderRequest } from './decoder-messages';

const OPEN_WITHIN_MS = 20_000;

type Waiting = { readonly done: (codes: readonly DecodedCode[]) => void; readonly failed: (cause: Error) => void };

/**
 * Starts the decoder's worker and waits until it can read. Rejects when neither the fast nor the plain decoder can be had, or
 * it takes too long.
 */
export function openDecoder(): Promise<Decoder> {
  const worker = new Worker(new URL('./decoder.worker.ts', import.meta.url), { type: 'module' });
  const waiting = new Map<number, Waiting>();
  let lastId = 0;

  function ask(build: (id: number) => DecoderRequest, hand: Transferable[]): Promise<readonly DecodedCode[]> {
    lastId += 1;
    const id = lastId;
    return new Promise((done, failed) => {
      waiting.set(id, { done, failed });
      worker.postMessage(build(id), hand);
    });
  }

  function close(): void {
    worker.terminate();
    for (const { done } of waiting.values()) done([]);
    waiting.clear();
  }

  const decoder: Decoder = {
    async readFrame(video, number) {
      if (video.videoWidth === 0) return [];
      const picture = await createImageBitmap(video);
      return ask((id) => ({ id, kind: 'frame', number, picture }), [picture]);
    },
    readPhoto: (file) => ask((id) => ({ id, kind: 'photo', file }), []),
    close,
  };

  return new Promise((resolve, reject) => {
    const refuse = (reason: string) => {
      clearTimeout(timer);
      close();
      reject(new Error(reason));
    };
    const timer = setTimeout(() => refuse('The decoder did not start in time.'), OPEN_WITHIN_MS);
    worker.addEventListener('error', (event) => refuse(event.message || 'The decoder could not be loaded.'));
    worker.addEventListener('message', ({ data: reply }: MessageEvent<DecoderReply>) => {
      if (reply.kind === 'refused') return refuse(reply.reason);
      if (reply.kind === 'ready') {
        clearTimeout(timer);
        return resolve(decoder);
      }
      const asked = waiting.get(reply.id);
      waiting.delete(reply.id);
      if (reply.kind === 'codes') asked?.done(reply.codes);
      else asked?.failed(new Error(reply.reason));
    });
  });
}
