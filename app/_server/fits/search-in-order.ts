import type { Search, SearchAnswer, SearchTask } from '@/app/_server/fits/search-task';

/**
 * The answers to tasks in the order of the tasks, so many of them handed out at once. Whoever takes no further answer
 * stops it: nothing more is handed out.
 */
export async function* searchInOrder(
  tasks: readonly SearchTask[],
  search: Search,
  atOnce: number,
): AsyncGenerator<SearchAnswer, void, void> {
  const out: Promise<SearchAnswer>[] = [];
  const handOut = (nr: number) => {
    const task = tasks[nr];
    if (!task) return;
    const answer = search(task);
    // Of a search that is stopped nobody waits for what was handed out before.
    answer.catch(() => undefined);
    out.push(answer);
  };
  for (let nr = 0; nr < atOnce; nr += 1) handOut(nr);
  for (let nr = 0; nr < tasks.length; nr += 1) {
    const next = out.shift();
    if (!next) return;
    const answer = await next;
    handOut(nr + atOnce);
    yield answer;
  }
}
