/**
 * A file chosen on this device, kept in it until what it belongs to is in the book: it outlives a reload and another page.
 * A browser may refuse storage; then it is not kept and has to be chosen again.
 */
export async function recallFile(name: string): Promise<File | undefined> {
  const kept = await inShelf('readonly', (shelf) => shelf.get(name)).catch(() => undefined);
  return kept instanceof File ? kept : undefined;
}

/** Keeps a file, or lets it go where it is undefined. Says whether that is done. */
export async function keepFile(name: string, file: File | undefined): Promise<boolean> {
  return inShelf('readwrite', (shelf) => (file ? shelf.put(file, name) : shelf.delete(name))).then(
    () => true,
    () => false,
  );
}

const SHELF = 'files';

function inShelf(mode: IDBTransactionMode, ask: (shelf: IDBObjectStore) => IDBRequest): Promise<unknown> {
  return new Promise((resolve, reject) => {
    const opening = indexedDB.open('flitchbook', 1);
    opening.onupgradeneeded = () => opening.result.createObjectStore(SHELF);
    opening.onerror = () => reject(opening.error);
    opening.onsuccess = () => {
      const base = opening.result;
      const work = base.transaction(SHELF, mode);
      const asked = ask(work.objectStore(SHELF));
      work.oncomplete = () => {
        base.close();
        resolve(asked.result);
      };
      work.onabort = () => {
        base.close();
        reject(work.error);
      };
    };
  });
}
