import { statusOfTrouble } from '@/app/_server/http/answer-json';
import { readKeptPhoto } from '@/app/_server/stock/read-kept-photo';
import { problemOfError } from '@/app/_server/words/problem-of-error';

/** A photo of the book. Its name is never used again, so a browser may keep it for good. */
export async function GET(_: Request, { params }: { params: Promise<{ file: string }> }): Promise<Response> {
  try {
    const photo = await readKeptPhoto((await params).file);
    return photo ? shown(photo) : said(404, 'There is no such photo in this book.');
  } catch (error) {
    const problem = problemOfError(error);
    return said(statusOfTrouble(problem) ?? 500, `${problem.what}\nThe book is unchanged.\n${problem.todo}\n`);
  }
}

function shown(photo: Buffer<ArrayBuffer>): Response {
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

function said(status: number, words: string): Response {
  return new Response(words, {
    status,
    headers: {
      'Content-Type': 'text/plain; charset=utf-8',
      'Cache-Control': 'no-store',
      'X-Content-Type-Options': 'nosniff',
    },
  });
}
