import { readBook } from '@/app/_server/book/read-book';
import { theBook } from '@/app/_server/book/the-book';
import { answerReading } from '@/app/_server/http/answer-json';
import { watchLines } from '@/app/_server/watch/watch-lines';
import { err, ok } from '@/shared/result/result';

/** The lines of Watch in a few words each, for the bell of a page that is open: `{ok:true,answer:{today,lines}}`. */
export async function GET(): Promise<Response> {
  return answerReading(async () => {
    const book = await theBook();
    const head = await readBook(book, new Date());
    if (!head) return err({ code: 'no-book-yet' });
    return ok({ today: head.today, lines: await watchLines(book, head) });
  });
}
