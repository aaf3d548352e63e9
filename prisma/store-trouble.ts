import { NewerBookError } from '@/prisma/check-version';
import { NotABookError } from '@/prisma/not-a-book';
import { NoBookError } from '@/prisma/require-book';

/** What kind of trouble the store is in. */
export type StoreTrouble =
  | 'disk-full'
  | 'locked'
  | 'took-too-long'
  | 'newer-book'
  | 'older-book'
  | 'no-book'
  | 'not-a-book'
  | 'no-permission'
  | 'server-away'
  | 'server-refuses'
  | 'unknown';

const WORDS: Record<StoreTrouble, string> = {
  'disk-full':
    'The disk is full. Nothing was half-written: the book stands as it was before. Free some space and do it again.',
  locked:
    'Another program is holding the book. Nothing was half-written. Close the other program (a backup, a second server) and do it again.',
  'took-too-long':
    'That took longer than the book may be held for one act. Nothing was half-written: the book stands as it was before. Do it again when the computer has less to do.',
  'newer-book':
    'This book was written by a newer version of Flitchbook. Nothing was changed. Bring this copy of the program up to date, or open an older copy of the book.',
  'older-book':
    'This book was written by an older version of Flitchbook. Nothing was changed. Bring it up to date first with npm run migrate; a copy of it is kept.',
  'no-book':
    'There is no book in that folder. Nothing was changed. Check FLITCHBOOK_DATA, or begin a book with npm start.',
  'not-a-book':
    'The database file is not a Flitchbook, or is damaged. Nothing was changed. Put a backup in its place, or move the file away to begin a new book.',
  'no-permission':
    'The book cannot be opened: the program may not read or write its folder. Nothing was changed. Check FLITCHBOOK_DATA and the rights on that folder.',
  'server-away':
    'The database server that keeps the book does not answer. Nothing was half-written: what was answered before stands. See that it runs and that FLITCHBOOK_DATABASE_URL names it, then do it again.',
  'server-refuses':
    'The database server does not let this program in: it does not know the database, the user or the password of FLITCHBOOK_DATABASE_URL. Nothing was changed. Make the database and its user first, or mend the address.',
  unknown: 'The book could not be opened or written.',
};

/**
 * What a database server says by its own codes, five characters (postgresql.org/docs, Appendix A), Prisma by its adapter's
 * kinds, and the wire before there is either.
 */
const SERVER_TROUBLE: readonly (readonly [StoreTrouble, RegExp])[] = [
  ['disk-full', /^(53100|58030)$/],
  ['locked', /^(55P03|40P01|40001|53300|57014|TooManyConnections|TransactionWriteConflict)$/],
  [
    'server-refuses',
    /^(28P01|28000|3D000|42501|AuthenticationFailed|DatabaseDoesNotExist|DatabaseAccessDenied)$|Invalid URL|SASL/,
  ],
  [
    'server-away',
    /^(57P0[1-3]|08...|ECONN\w+|ENOTFOUND|EHOSTUNREACH|EPIPE|DatabaseNotReachable|ConnectionClosed|TlsConnectionError)$|Connection terminated|not queryable|timeout exceeded when trying to connect/,
  ],
  ['no-permission', /^25006$/],
];

/** Finds the kind of trouble behind an error of the store, however deep Prisma or the driver wrapped it. */
export function storeTroubleOf(error: unknown): StoreTrouble {
  for (const text of textsOf(error)) {
    if (text.includes('SQLITE_FULL') || text.includes('disk is full') || text.includes('ENOSPC')) return 'disk-full';
    // P2028 is said both of a writer that waited in vain for the pen and of one that held it for too long.
    if (/expired transaction|Transaction already closed/.test(text)) return 'took-too-long';
    if (/SQLITE_BUSY|SQLITE_LOCKED|database is locked|SocketTimeout|P1008|Unable to start a transaction/.test(text))
      return 'locked';
    if (text.includes('SQLITE_NOTADB') || text.includes('not a database') || text.includes('SQLITE_CORRUPT'))
      return 'not-a-book';
    const ofServer = SERVER_TROUBLE.find(([, says]) => says.test(text));
    if (ofServer) return ofServer[0];
    if (/EACCES|EPERM|EROFS|SQLITE_READONLY|SQLITE_CANTOPEN|unable to open database/.test(text)) return 'no-permission';
  }
  if (error instanceof NoBookError) return error.migrationsMissing ? 'older-book' : 'no-book';
  if (error instanceof NotABookError) return 'not-a-book';
  return error instanceof NewerBookError ? 'newer-book' : 'unknown';
}

/** Whether a code is one of the kinds of trouble. */
export function isStoreTrouble(code: string): code is StoreTrouble {
  return Object.hasOwn(WORDS, code);
}

/** The trouble in plain words: what happened, what was kept, what to do. */
export function sayStoreTrouble(error: unknown): string {
  const trouble = storeTroubleOf(error);
  return trouble === 'unknown'
    ? `${WORDS.unknown} ${error instanceof Error ? error.message : String(error)}`
    : WORDS[trouble];
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
