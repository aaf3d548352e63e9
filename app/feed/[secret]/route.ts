import { randomUUID } from 'node:crypto';
import { theBook } from '@/app/_server/book/the-book';
import { calendarFor } from '@/app/_server/feed/calendar-for';

const PLAIN = { 'Content-Type': 'text/plain; charset=utf-8', 'Cache-Control': 'private, no-store' };
const LONGEST = 200;

/**
 * The book's days as an iCalendar feed: `GET /feed/<secret>.ics`. The secret is the only key to it, made and renewed in
 * Settings; anything else is not found, with no word of whether there is a feed.
 */
export async function GET(request: Request, { params }: { params: Promise<{ secret: string }> }): Promise<Response> {
  const asked = (await params).secret.slice(0, LONGEST).replace(/\.ics$/, '');
  const { protocol, host } = new URL(request.url);
  const origin = `${protocol}//${request.headers.get('host') ?? host}`;
  try {
    const calendar = await calendarFor(await theBook(), { secret: asked, origin, now: new Date() });
    if (calendar === undefined) return new Response('Not found\n', { status: 404, headers: PLAIN });
    return new Response(calendar, {
      headers: {
        'Content-Type': 'text/calendar; charset=utf-8',
        'Content-Disposition': 'inline; filename="flitchbook.ics"',
        'Cache-Control': 'private, no-store',
        'X-Robots-Tag': 'noindex',
      },
    });
  } catch (error) {
    const reference = randomUUID().slice(0, 8);
    console.error(`[${reference}]`, error);
    const headers = { ...PLAIN, 'Retry-After': '600' };
    return new Response(`The book could not be read just now. Reference ${reference}\n`, { status: 503, headers });
  }
}
