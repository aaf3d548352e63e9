'use server';

import { act } from '@/app/_server/act';
import { beginDemo } from '@/app/_server/book/begin-demo';
import { readBook } from '@/app/_server/book/read-book';
import { setUpBook } from '@/app/_server/book/set-up-book';
import { theBook } from '@/app/_server/book/the-book';
import { demoSchema, setUpSchema } from '@/app/welcome/schema';

export async function beginBookAction(key: string, input: unknown) {
  return act(setUpSchema, key, input, setUpBook);
}

/** The demo is many entries: what failed on the way leaves those before it, and that is said. */
export async function beginDemoAction(key: string, input: unknown) {
  const answer = await act(demoSchema, key, input, beginDemo);
  if (answer.ok || answer.problem.code === 'book-already-there') return answer;
  const begun = await theBook()
    .then((book) => readBook(book, new Date()))
    .catch(() => undefined);
  if (!begun) return answer;
  return {
    ok: false as const,
    problem: {
      ...answer.problem,
      code: 'demo-half-made',
      kept: 'What was laid out before that is in the book, marked as a demo.',
      todo: `Open it as it is, or stop the program, move its data folder away and start again. ${answer.problem.todo}`,
    },
  };
}
