import os from 'node:os';
import { Worker } from 'node:worker_threads';
import { searchHere } from '@/app/_server/fits/search-here';
import type { Search, SearchAnswer, SearchTask } from '@/app/_server/fits/search-task';
import type { ThreadReply } from '@/app/_server/fits/thread-reply';

type Waiting = {
  readonly task: SearchTask;
  readonly done: (answer: SearchAnswer) => void;
  readonly failed: (cause: Error) => void;
};
type Thread = { readonly worker: Worker; readonly waiting: Map<number, Waiting> };
type Pool = { threads: Thread[]; lastId: number; readonly here: Search };

const MOST_THREADS = 4;

// On globalThis because the server may load this module once a bundle, and each would start threads of its own.
const holder = globalThis as { flitchbookSearch?: Pool };

/** So many tasks are worth handing out at once: one being done and one waiting on each thread. */
export const AT_ONCE = 2 * threadCount();

function threadCount(): number {
  return Math.max(1, Math.min(MOST_THREADS, os.availableParallelism() - 1));
}

/**
 * Searches on threads of their own, so that the book goes on answering while many slabs are asked. The threads start with
 * the first task, leave a core to the server and do not keep it from stopping. What a thread that broke still had to do,
 * and everything where none can be started, is done in this thread instead.
 */
export const searchOffThread: Search = (task) => {
  holder.flitchbookSearch ??= { threads: [], lastId: 0, here: searchHere() };
  const pool = holder.flitchbookSearch;
  const thread = freest(pool);
  if (!thread) return pool.here(task);
  pool.lastId += 1;
  const id = pool.lastId;
  return new Promise((done, failed) => {
    thread.waiting.set(id, { task, done, failed });
    thread.worker.postMessage({ id, task });
  });
};

function freest(pool: Pool): Thread | undefined {
  const idle = pool.threads.find(({ waiting }) => waiting.size === 0);
  if (idle) return idle;
  if (pool.threads.length < threadCount()) return start(pool) ?? pool.threads[0];
  return pool.threads.reduce((least, each) => (each.waiting.size < least.waiting.size ? each : least));
}

function start(pool: Pool): Thread | undefined {
  let worker: Worker;
  try {
    worker = new Worker(new URL('./search-thread.ts', import.meta.url));
  } catch (error) {
    console.error('The search could not have a thread of its own.', error);
    return undefined;
  }
  const thread: Thread = { worker, waiting: new Map() };
  pool.threads.push(thread);
  const leave = (cause: unknown) => {
    if (!pool.threads.includes(thread)) return;
    pool.threads = pool.threads.filter((each) => each !== thread);
    if (thread.waiting.size > 0) console.error('A thread of the search ended; its work is done here.', cause);
    for (const { task, done, failed } of thread.waiting.values()) pool.here(task).then(done, failed);
    thread.waiting.clear();
  };
  worker.on('message', (reply: ThreadReply) => {
    const waiting = thread.waiting.get(reply.id);
    thread.waiting.delete(reply.id);
    if ('answer' in reply) waiting?.done(reply.answer);
    else waiting?.failed(new Error(reply.failed));
  });
  worker.on('error', leave);
  worker.on('exit', leave);
  worker.unref();
  return thread;
}
