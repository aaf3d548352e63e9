import { type Search, taskSearcher } from '@/app/_server/fits/search-task';

/** A search in this very thread, which lets others have their turn after each task. */
export function searchHere(): Search {
  const search = taskSearcher();
  return async (task) => {
    await new Promise((resolve) => setImmediate(resolve));
    return search(task);
  };
}
