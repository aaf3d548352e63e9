import { parentPort } from 'node:worker_threads';
import { type SearchTask, taskSearcher } from '@/app/_server/fits/search-task';
import type { ThreadReply } from '@/app/_server/fits/thread-reply';

const search = taskSearcher();

parentPort?.on('message', ({ id, task }: { readonly id: number; readonly task: SearchTask }) => {
  const reply: ThreadReply = (() => {
    try {
      return { id, answer: search(task) };
    } catch (error) {
      return { id, failed: error instanceof Error ? (error.stack ?? error.message) : String(error) };
    }
  })();
  parentPort?.postMessage(reply);
});
