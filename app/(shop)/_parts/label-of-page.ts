import { notFound, permanentRedirect } from 'next/navigation';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import { parseOwnLabel } from '@/shared/scan-codes/parse-own-label';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';

type Params = Promise<{ label: string }>;

/** The label in a page's address as it stands on the thing, or other words where it is none. */
export async function titleOfLabel(params: Params, otherwise: string): Promise<string> {
  const read = parseOwnLabel(decodeURIComponent((await params).label));
  return read.ok ? printOwnLabel(read.value.code) : otherwise;
}

/** The label in the address of a page below `folder`; a label written otherwise is sent on to the one address it has. */
export async function labelOfPage(params: Params, folder: 'containers' | 'pieces'): Promise<OwnLabelCode> {
  const given = decodeURIComponent((await params).label);
  const read = parseOwnLabel(given);
  if (!read.ok) notFound();
  if (read.value.code !== given) permanentRedirect(`/${folder}/${read.value.code}`);
  return read.value.code;
}
