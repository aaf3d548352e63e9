import { type NextRequest, NextResponse } from 'next/server';

/**
 * Answers only to names of this computer, and, once the book was opened to the workshop's network, to addresses and
 * local names in it. Without this a web page elsewhere could point its own name at this computer and read the book.
 */
export function proxy(request: NextRequest): NextResponse {
  const host = hostOf(request.headers.get('host') ?? '');
  const known = host === 'localhost' || host === '127.0.0.1' || host === '[::1]';
  const open = process.env.FLITCHBOOK_NETWORK === '1';
  if (known || (open && isLocalName(host))) return NextResponse.next();
  return new NextResponse(
    'This Flitchbook does not answer to that name. Open it at http://localhost, or at the address it printed when it started.',
    { status: 421, headers: { 'content-type': 'text/plain; charset=utf-8' } },
  );
}

function hostOf(header: string): string {
  return header.toLowerCase().replace(/:\d+$/, '');
}

function isLocalName(host: string): boolean {
  return /^\d{1,3}(\.\d{1,3}){3}$/.test(host) || /^\[[0-9a-f:]+\]$/.test(host) || /^[a-z0-9-]+(\.local)?$/.test(host);
}

export const config = { matcher: ['/((?!_next/static|vendor/).*)'] };
