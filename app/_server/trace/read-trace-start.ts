import type { TraceStart } from '@/app/_server/trace/trace-from';
import type { WriteTransaction } from '@/prisma/open-book';
import { parseOwnLabel } from '@/shared/scan-codes/parse-own-label';
import { TRACE_KINDS } from '@/shared/trace/trace-graph';

/** What an address of a trace means: `lot/12`, `container/C4K7VMX`; undefined where it means nothing in this book. */
export async function readTraceStart(
  tx: Pick<WriteTransaction, 'stock'>,
  kindText: string,
  idText: string,
): Promise<TraceStart | undefined> {
  const kind = TRACE_KINDS.find((each) => each === kindText);
  if (!kind) return undefined;
  if (kind !== 'container' && kind !== 'piece') {
    return /^[1-9]\d{0,8}$/.test(idText) ? { kind, id: Number(idText) } : undefined;
  }
  const label = parseOwnLabel(idText);
  if (!label.ok) return undefined;
  const row = await tx.stock.findUnique({ where: { label: label.value.code }, select: { id: true, kind: true } });
  return row?.kind === kind ? { kind, id: row.id } : undefined;
}
