import { NewerBookError, NotABookError } from '@/prisma/check-version';

/** What kind of trouble the store is in. */
export type StoreTrouble = 'disk-full' | 'locked' | 'newer-book' | 'not-a-book' | 'no-permission' | 'unknown';

/** Finds the kind of trouble behind an error of the store, however deep Prisma or the driver wrapped it. */
export function storeTroubleOf(error: unknown): StoreTrouble {
  for (const text of textsOf(error)) {
    if (text.includes('SQLITE_FULL') || text.includes('disk is full') || text.includes('ENOSPC')) return 'disk-full';
    if (/SQLITE_BUSY|SQLITE_LOCKED|database is locked|SocketTimeout|P1008|P2028/.test(text)) return 'locked';
    if (text.includes('SQLITE_NOTADB') || text.includes('not a database') || text.includes('SQLITE_CORRUPT'))
      return 'not-a-book';
    if (/EACCES|EPERM|EROFS|SQLITE_READONLY|SQLITE_CANTOPEN|unable to open database/.test(text)) return 'no-permission';
  }
  if (error instanceof NotABookError) return 'not-a-book';
  return error instanceof NewerBookError ? 'newer-book' : 'unknown';
}

/** The trouble in plain words: what happened, what was kept, what to do. */
export function sayStoreTrouble(error: unknown): string {
  const words: Record<StoreTrouble, string> = {
    'disk-full':
      'The disk is full. Nothing was half-written: the book stands as it was before. Free some space and do it again.',
    locked:
      'Another program is holding the book. Nothing was half-written. Close the other program (a backup, a second server) and do it again.',
    'newer-book':
      'This book was written by a newer version of Flitchbook. Nothing was changed. Bring this copy of the program up to date, or open an older copy of the book.',
    'not-a-book':
      'The database file is not a Flitchbook, or is damaged. Nothing was changed. Put a backup in its place, or move the file away to begin a new book.',
    'no-permission':
      'The book cannot be opened: the program may not read or write its folder. Nothing was changed. Check FLITCHBOOK_DATA and the rights on that folder.',
    unknown: 'The book could not be opened or written.',
  };
  const trouble = storeTroubleOf(error);
  return trouble === 'unknown'
    ? `${words.unknown} ${error instanceof Error ? error.message : String(error)}`
    : words[trouble];
}

function* textsOf(error: unknown, depth = 0): Generator<string> {
  if (depth > 6 || error === null || error === undefined) return;
  if (typeof error === 'string') yield error;
  if (typeof error !== 'object') return;
  for (const key of ['code', 'message', 'name', 'kind', 'originalCode', 'originalMessage'] as const) {
    const value = (error as Record<string, unknown>)[key];
    if (typeof value === 'string') yield value;
  }
  for (const key of ['cause', 'meta', 'driverAdapterError'] as const) {
    yield* textsOf((error as Record<string, unknown>)[key], depth + 1);
  }
}
