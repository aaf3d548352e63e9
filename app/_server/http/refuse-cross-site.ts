/**
 * The answer to a write that did not come from a page of this server, or undefined where it may go on.
 *
 * There is no sign-in, so the browser's word for where a request comes from is what keeps another web site from writing
 * in the book: its `Origin` must be this host, and `Sec-Fetch-Site` must not name another (Fetch Standard, 3.2 and Fetch
 * Metadata). JSON only, because a form of another site can send anything else without asking first (Fetch Standard,
 * CORS-safelisted request-header). A program that is no browser sends neither header and may write.
 */
export function refuseCrossSite(request: Request): Response | undefined {
  const { headers } = request;
  const site = headers.get('sec-fetch-site');
  if (site !== null && site !== 'same-origin') return refused(403, 'cross-site');
  const origin = headers.get('origin');
  if (origin !== null && hostOf(origin) !== headers.get('host')) return refused(403, 'cross-site');
  const type = headers.get('content-type')?.split(';')[0]?.trim().toLowerCase();
  return type === 'application/json' ? undefined : refused(415, 'not-json');
}

function hostOf(origin: string): string | undefined {
  return URL.canParse(origin) ? new URL(origin).host : undefined;
}

function refused(status: 403 | 415, code: 'cross-site' | 'not-json'): Response {
  const what =
    code === 'cross-site'
      ? 'The request came from another web site.'
      : 'The request is not in JSON (application/json).';
  const todo = code === 'cross-site' ? 'Do it in Flitchbook itself.' : 'Send it with Content-Type: application/json.';
  const problem = { code, what, kept: 'Nothing was written.', todo };
  return Response.json({ ok: false, problem }, { status, headers: { 'Cache-Control': 'no-store' } });
}
