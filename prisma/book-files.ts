import path from 'node:path';

/** Where a book lives on disk: its database, its photos, its data sheets, its own settings of how it is served. */
export type BookFiles = { folder: string; database: string; photos: string; sheets: string; serving: string };

/** The files of the book in `FLITCHBOOK_DATA` (default `data/` in the project). */
export function bookFiles(folder = process.env.FLITCHBOOK_DATA ?? path.join(process.cwd(), 'data')): BookFiles {
  const root = path.resolve(/* turbopackIgnore: true */ folder);
  return {
    folder: root,
    database: path.join(root, 'flitchbook.db'),
    photos: path.join(root, 'photos'),
    sheets: path.join(root, 'sheets'),
    serving: path.join(root, 'serving.json'),
  };
}
