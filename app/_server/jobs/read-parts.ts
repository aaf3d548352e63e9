import type { PartKind, PartShape } from '@/app/_server/jobs/part-fields';
import { STANDS } from '@/app/_server/timeline/standing';
import type { WriteTransaction } from '@/prisma/open-book';
import { type Nanometres, nanometres } from '@/shared/units/nanometres';

export type PartLine = {
  id: number;
  kind: PartKind;
  name: string;
  count: number;
  shape: PartShape;
  length: Nanometres | null;
  width: Nanometres | null;
  thickness: Nanometres | null;
  note: string;
};

/** The parts of a job that stand, in the order they were added. */
export async function readParts(tx: Pick<WriteTransaction, 'jobPart'>, jobId: number): Promise<PartLine[]> {
  const rows = await tx.jobPart.findMany({ where: { jobId, ...STANDS }, orderBy: { id: 'asc' } });
  const nm = (length: bigint | null) => (length === null ? null : nanometres(length));
  return rows.map((row) => ({
    id: row.id,
    kind: row.kind as PartKind,
    name: row.name,
    count: row.count,
    shape: row.shape as PartShape,
    length: nm(row.lengthNm),
    width: nm(row.widthNm),
    thickness: nm(row.thicknessNm),
    note: row.note,
  }));
}
