import type { NextRequest } from 'next/server';
import type { z } from 'zod';
import { answerLabels, badLabelQuestion, refusedLabels } from '@/app/_server/labels/label-answers';
import { labelContentFor } from '@/app/_server/labels/label-content-for';
import { labelsPdfQuery } from '@/app/_server/labels/label-query';
import { labelsPdf } from '@/app/_server/labels/labels-pdf';
import { LABEL_FORMATS } from '@/shared/labels/label-formats';
import { labelRun } from '@/shared/labels/label-run';

/** Labels ready to print: `/api/labels/pdf?codes=C-4K7QM2,S-8QD3TW&format=a4-3x8&symbology=qr&copies=2&start=5`. */
export async function GET(request: NextRequest): Promise<Response> {
  const query = labelsPdfQuery.safeParse(Object.fromEntries(request.nextUrl.searchParams));
  if (!query.success) return badLabelQuestion(query.error);
  return answerLabels(() => printed(query.data));
}

async function printed({ codes, format, symbology, copies, start }: z.infer<typeof labelsPdfQuery>): Promise<Response> {
  const found = await labelContentFor(codes);
  if (!found.ok) return refusedLabels(found.error);
  const run = labelRun(found.value, copies === '2' ? 2 : 1);
  const pdf = await labelsPdf(run, LABEL_FORMATS[format], { symbology, start });
  return new Response(new Uint8Array(pdf), {
    headers: {
      'Content-Type': 'application/pdf',
      'Content-Disposition': `inline; filename="labels-${format}.pdf"`,
      'Cache-Control': 'private, no-store',
      'X-Content-Type-Options': 'nosniff',
    },
  });
}
