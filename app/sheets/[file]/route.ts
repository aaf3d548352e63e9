import { statusOfTrouble } from '@/app/_server/http/answer-json';
import { readKeptSheet } from '@/app/_server/pours/read-kept-sheet';
import { problemOfError } from '@/app/_server/words/problem-of-error';

/**
 * A data sheet of the book, as it was uploaded. It came from outside, so nothing in it may act as a page of ours: a picture
 * is shown alone, a PDF is handed to the device.
 */
export async function GET(_: Request, { params }: { params: Promise<{ file: string }> }): Promise<Response> {
  try {
    const sheet = await readKeptSheet((await params).file);
    if (!sheet) return said(404, 'There is no such sheet in this book.');
    return new Response(sheet.bytes, {
      headers: {
        ...SAFE,
        'Content-Type': sheet.type,
        'Content-Length': String(sheet.bytes.length),
        'Cache-Control': 'private, max-age=31536000, immutable',
        'Content-Disposition': sheet.type === 'application/pdf' ? 'attachment; filename="data-sheet.pdf"' : 'inline',
      },
    });
  } catch (error) {
    const problem = problemOfError(error);
    return said(statusOfTrouble(problem) ?? 500, `${problem.what}\nThe book is unchanged.\n${problem.todo}\n`);
  }
}

const SAFE = {
  'X-Content-Type-Options': 'nosniff',
  'Content-Security-Policy': "default-src 'none'; sandbox",
  'Cross-Origin-Resource-Policy': 'same-origin',
};

function said(status: number, words: string): Response {
  return new Response(words, {
    status,
    headers: { ...SAFE, 'Content-Type': 'text/plain; charset=utf-8', 'Cache-Control': 'no-store' },
  });
}
