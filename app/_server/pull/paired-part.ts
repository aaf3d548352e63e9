import type { Ask } from '@/app/_server/pull/ask';
import type { ContainerLine } from '@/app/_server/stock/judgeable';
import { loadContainer } from '@/app/_server/stock/load-container';
import type { WriteTransaction } from '@/prisma/open-book';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';
import type { PairedPart } from '@/shared/shelf-life/types/reason';

/**
 * The other part this container will be mixed with: the one named in the ask, or else the last one pulled for the job
 * that is the other part of a two-part system. Undefined for materials that are no part of anything.
 */
export async function pairedPart(
  tx: Pick<WriteTransaction, 'entry' | '$queryRaw'>,
  line: ContainerLine,
  ask: Ask,
): Promise<PairedPart | undefined> {
  if (ask.pairedLabel) {
    const other = await loadContainer(tx, ask.pairedLabel);
    return other?.candidate.policy.system ? partOf(other.candidate.policy.system, other.label) : undefined;
  }
  const own = line.candidate.policy.system;
  if (!own || ask.jobId === undefined) return undefined;
  const pulled = await tx.entry.findFirst({
    where: {
      kind: 'pulled',
      jobId: ask.jobId,
      reversedBy: null,
      product: { part: own.part === 'A' ? 'B' : 'A' },
    },
    orderBy: { id: 'desc' },
    select: {
      product: { select: { part: true, system: { select: { id: true, name: true } } } },
      movements: { select: { stock: { select: { label: true } } }, take: 1 },
    },
  });
  const product = pulled?.product;
  if (!product?.system || !product.part) return undefined;
  const system = { id: String(product.system.id), name: product.system.name, part: product.part as 'A' | 'B' };
  return partOf(system, pulled?.movements[0]?.stock.label ?? '');
}

function partOf(system: { id: string; name: string; part: 'A' | 'B' }, label: string): PairedPart {
  return {
    systemId: system.id,
    systemName: system.name,
    part: system.part,
    label: label ? printOwnLabel(label as OwnLabelCode) : `The last part ${system.part}`,
  };
}
