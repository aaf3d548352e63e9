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
 * where `FLITCHBOOK_DATABASE_URL` names one.
 */
export function bookFiles(
  folder = process.env.FLITCHBOOK_DATA ?? path.join(process.cwd(), 'data'),
  postgresql = process.env.FLITCHBOOK_DATABASE_URL || undefined,
): BookFiles {
  const root = path.resolve(/* turbopackIgnore: true */ folder);
  return {
    folder: root,
    database: path.join(root, 'flitchbook.db'),
    photos: path.join(root, 'photos'),
    sheets: path.join(root, 'sheets'),
    serving: path.join(root, 'serving.json'),
    ...(postgresql !== undefined && { postgresql }),
  };
}
