import type { NextRequest } from 'next/server';
import type { z } from 'zod';
import { answerLabels, badLabelQuestion, refusedLabels } from '@/app/_server/labels/label-answers';
import { labelContentFor } from '@/app/_server/labels/label-content-for';
import { labelSvgQuery } from '@/app/_server/labels/label-query';
import { labelSvg } from '@/app/_server/labels/label-svg';
import { LABEL_FORMATS } from '@/shared/labels/label-formats';
import { labelRun } from '@/shared/labels/label-run';

/** One label as a drawing: `/api/labels/svg?code=C-4K7QM2&format=62x29&symbology=qr`. */
export async function GET(request: NextRequest): Promise<Response> {
  const query = labelSvgQuery.safeParse(Object.fromEntries(request.nextUrl.searchParams));
  if (!query.success) return badLabelQuestion(query.error);
  return answerLabels(() => drawn(query.data));
}

async function drawn({ code, format, symbology, end }: z.infer<typeof labelSvgQuery>): Promise<Response> {
  const found = await labelContentFor([code]);
  if (!found.ok) return refusedLabels(found.error);
  const run = labelRun(found.value, 1);
  const label = run.find((each) => each.end === undefined || each.end.nr === Number(end ?? '1'));
  if (!label) return refusedLabels({ code: 'not-found', facts: { label: code } });
  return new Response(labelSvg(label, LABEL_FORMATS[format].label, symbology), {
    headers: {
      'Content-Type': 'image/svg+xml; charset=utf-8',
      'Cache-Control': 'private, no-cache',
      'Content-Security-Policy': "default-src 'none'",
      'X-Content-Type-Options': 'nosniff',
    },
  });
}
