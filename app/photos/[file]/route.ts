import { readKeptPhoto } from '@/app/_server/stock/read-kept-photo';

/** A photo of the book. Its name is never used again, so a browser may keep it for good. */
export async function GET(_: Request, { params }: { params: Promise<{ file: string }> }): Promise<Response> {
  const photo = await readKeptPhoto((await params).file);
  if (!photo) return notThere();
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
