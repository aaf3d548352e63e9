import path from 'node:path';

/** Where a book lives on disk: its database, its photos, its data sheets, its own settings of how it is served. */
export type BookFiles = {
  folder: string;
  database: string;
  photos: string;
  sheets: string;
  serving: string;
  /** The address of a PostgreSQL database that keeps the book in place of the file `database`. */
  postgresql?: string | undefined;
};

/**
 * The files of the book in `FLITCHBOOK_DATA` (default `data/` in the project), and the database server it is kept on
 * where `FLITCHBOOK_DATABASE_URL` names one. Of a folder that is named here, only a server that is named here too: a book
 * made for a trial must not end up in the one that the surroundings name.
 */
export function bookFiles(folder?: string, postgresql?: string): BookFiles {
  const { FLITCHBOOK_DATA, FLITCHBOOK_DATABASE_URL } = process.env;
  const root = path.resolve(/* turbopackIgnore: true */ folder ?? FLITCHBOOK_DATA ?? path.join(process.cwd(), 'data'));
  const server = folder === undefined ? FLITCHBOOK_DATABASE_URL || undefined : postgresql;
  return {
    folder: root,
    database: path.join(root, 'flitchbook.db'),
    photos: path.join(root, 'photos'),
    sheets: path.join(root, 'sheets'),
    serving: path.join(root, 'serving.json'),
    ...(server !== undefined && { postgresql: server }),
  };
}
