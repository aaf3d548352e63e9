import fs from 'node:fs/promises';
import path from 'node:path';
import { bookFiles } from '@/prisma/book-files';

/** As `receivePhoto` names them; anything else is not a photo of the book, whatever is in the folder. */
const KEPT_NAME = /^[0-9a-f-]{32,36}\.jpg$/;

/** A photo of the book. Its name is never used again, so a browser may keep it for good. */
export async function GET(_: Request, { params }: { params: Promise<{ file: string }> }): Promise<Response> {
  const { file } = await params;
  if (!KEPT_NAME.test(file)) return notThere();
  let photo: Buffer<ArrayBuffer>;
  try {
    photo = await fs.readFile(path.join(bookFiles().photos, file));
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return notThere();
    throw error;
  }
  return new Response(photo, {
    headers: {
      'Content-Type': 'image/jpeg',
      'Content-Length': String(photo.length),
      'Cache-Control': 'private, max-age=31536000, immutable',
      'X-Content-Type-Options': 'nosniff',
      'Content-Disposition': 'inline',
    },
  });
}

function notThere(): Response {
  return new Response('There is no such photo in this book.', {
    status: 404,
    headers: { 'Content-Type': 'text/plain; charset=utf-8', 'X-Content-Type-Options': 'nosniff' },
  });
}
