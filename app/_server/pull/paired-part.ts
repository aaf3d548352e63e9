import type { Ask } from '@/app/_server/pull/ask';
import type { Refusal } from '@/app/_server/refusal';
import type { ContainerLine } from '@/app/_server/stock/judgeable';
import { loadContainer } from '@/app/_server/stock/load-container';
import type { WriteTransaction } from '@/prisma/open-book';
import { err, ok, type Result } from '@/shared/result/result';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';
import { trialsOf } from '@/shared/shelf-life/trials-of';
import type { MaterialSystem } from '@/shared/shelf-life/types/policy';
import type { PairedPart } from '@/shared/shelf-life/types/reason';

/**
 * The other part this container will be mixed with: the one named in the ask, refused where it is none the book knows; or
 * else the last other part of its own system pulled for the job, and only where there is none, the last of any system.
 * Undefined for materials that are no part of anything. It comes with its test pours together with other lots, so that
 * the judge knows what the very pair has passed or failed.
 */
export async function pairedPart(
  tx: Pick<WriteTransaction, 'entry' | '$queryRaw'>,
  line: Pick<ContainerLine, 'candidate'>,
  ask: Pick<Ask, 'jobId' | 'pairedLabel'>,
): Promise<Result<PairedPart | undefined, Refusal>> {
  if (ask.pairedLabel) {
    const other = await loadContainer(tx, ask.pairedLabel);
    const facts = { label: ask.pairedLabel };
    if (!other) return err({ code: 'not-found', field: 'pairedLabel', facts });
    const { system } = other.candidate.policy;
    if (!system) return err({ code: 'not-found', field: 'pairedLabel', facts: { ...facts, noPart: 1 } });
    return ok(partOf(system, other));
  }
  const own = line.candidate.policy.system;
  if (!own || ask.jobId === undefined) return ok(undefined);
  const part = own.part === 'A' ? 'B' : 'A';
  const { jobId } = ask;
  return ok(
    (await lastPulled(tx, jobId, { part, systemId: Number(own.id) })) ?? (await lastPulled(tx, jobId, { part })),
  );
}

async function lastPulled(
  tx: Pick<WriteTransaction, 'entry' | '$queryRaw'>,
  jobId: number,
  product: { part: 'A' | 'B'; systemId?: number },
): Promise<PairedPart | undefined> {
  const pulled = await tx.entry.findFirst({
    where: { kind: { in: ['pulled', 'weighed-out'] }, jobId, reversedBy: null, product },
    orderBy: { id: 'desc' },
    select: {
      product: { select: { system: { select: { id: true, name: true } } } },
      movements: { select: { stock: { select: { label: true } } }, take: 1 },
    },
  });
  const system = pulled?.product?.system;
  if (!system) return undefined;
  const label = pulled.movements[0]?.stock.label;
  const other = label ? await loadContainer(tx, label) : undefined;
  return partOf({ id: String(system.id), name: system.name, part: product.part }, other);
}

/** A container as the other half of a pair, with the test pours it was part of together with other lots. */
export function partOf(
  system: MaterialSystem,
  line: Pick<ContainerLine, 'label' | 'candidate'> | undefined,
): PairedPart {
  return {
    systemId: system.id,
    systemName: system.name,
    part: system.part,
    label: line ? printOwnLabel(line.label) : `The last part ${system.part}`,
    trials: line ? trialsOf(line.candidate) : [],
  };
}
