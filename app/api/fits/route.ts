import type { NextRequest } from 'next/server';
import { bookForPage } from '@/app/_server/book/book-for-page';
import { AT_ONCE, searchOffThread } from '@/app/_server/fits/search-off-thread';
import { whatFits } from '@/app/_server/fits/what-fits';
import { problemOfError } from '@/app/_server/words/problem-of-error';
import type { FitsLine } from '@/app/(shop)/on-hand/fits/fits-line';
import { fitsView } from '@/app/(shop)/on-hand/fits/fits-view';
import { readQuestion } from '@/app/(shop)/on-hand/fits/question';

/** All there is, and as long as it takes: whoever asks sees how far it is and may stop it. */
const MOST = 10_000;
const EVERY = 20;

/**
 * What a top can be cut from, of all the wood on hand: the question as the page's own address has it. Answers a JSON
 * object a line: `{done,of}` as it goes on, at last `{view}`, or `{problem}` in words. Hanging up stops it.
 */
export async function GET(request: NextRequest): Promise<Response> {
  const { book, head } = await bookForPage();
  const { units: prefer, today, dateOrder: order } = head;
  const { read } = readQuestion(Object.fromEntries(request.nextUrl.searchParams), { prefer, today, order });
  if (!read.ok) return new Response(null, { status: 400 });
  const ask = read.value;
  let stopped = false;
  const body = new ReadableStream<Uint8Array>({
    async start(controller) {
      const text = new TextEncoder();
      const send = (line: FitsLine) => {
        if (!stopped && !request.signal.aborted) controller.enqueue(text.encode(`${JSON.stringify(line)}\n`));
      };
      try {
        const fits = await whatFits(book, ask, head, {
          most: MOST,
          milliseconds: Number.POSITIVE_INFINITY,
          search: searchOffThread,
          atOnce: AT_ONCE,
          progress: (done, of) => (done % EVERY === 0 ? send({ done, of }) : undefined),
          isStopped: () => stopped || request.signal.aborted,
        });
        if (fits.ok) {
          const context = {
            prefer,
            today,
            order,
            moisture: ask.mostTenths !== undefined,
            best: ask.request.best ?? 'balanced',
          };
          send({ view: fitsView(fits.value, ask, context) });
        }
      } catch (error) {
        send({ problem: problemOfError(error) });
      }
      if (!stopped && !request.signal.aborted) controller.close();
    },
    cancel() {
      stopped = true;
    },
  });
  return new Response(body, {
    headers: { 'content-type': 'application/x-ndjson; charset=utf-8', 'cache-control': 'private, no-store' },
  });
}
