import type { NextRequest } from 'next/server';
import { theBook } from '@/app/_server/book/the-book';
import { wasPulled } from '@/app/_server/pull/was-pulled';
import { keySchema } from '@/app/(shop)/pull/schema';

/** What a press wrote whose answer never came back: the pull, or null. */
export async function GET(request: NextRequest): Promise<Response> {
  const key = keySchema.safeParse(request.nextUrl.searchParams.get('key'));
  if (!key.success) return Response.json(null, { status: 400 });
  return Response.json(await wasPulled(await theBook(), key.data), { headers: { 'Cache-Control': 'no-store' } });
}
