import type { NextRequest } from 'next/server';
import { type Bare, bare } from '@/app/_server/bench/bare';
import { refuseCrossSite } from '@/app/_server/http/refuse-cross-site';

type Context = { params: Promise<{ what: string }> };
const READS: readonly string[] = ['verdict', 'on-hand'] satisfies (keyof Bare)[];

/** For `npm run bench` alone: the bare question of that name. Not there unless the server was started with FLITCHBOOK_BENCH=1. */
export async function GET(request: NextRequest, { params }: Context): Promise<Response> {
  const { what } = await params;
  if (process.env.FLITCHBOOK_BENCH !== '1' || !READS.includes(what)) return new Response(null, { status: 404 });
  return Response.json(bare()[what as keyof Bare](request.nextUrl.searchParams));
}

export async function POST(request: Request, { params }: Context): Promise<Response> {
  const { what } = await params;
  if (process.env.FLITCHBOOK_BENCH !== '1' || what !== 'weigh') return new Response(null, { status: 404 });
  return refuseCrossSite(request) ?? Response.json(bare().weigh(new URLSearchParams(await request.json())));
}
