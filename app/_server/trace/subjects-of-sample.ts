import type { TraceReader } from '@/app/_server/trace/trace-steps';

/** The lift a sample was kept of, and the lots it was mixed of. */
export type SubjectsOfSample = { lift: number[]; mixed: number[] };

/** What a kept sample is a sample of. Of a lift it says which lots went in itself; the two noted with it are named beside. */
export async function subjectsOfSample(tx: TraceReader, sampleId: number): Promise<SubjectsOfSample> {
  const [sample] = await tx.$queryRaw<{ liftId: number | null; lotAId: number | null; lotBId: number | null }[]>`
    SELECT "liftId", "lotAId", "lotBId" FROM "Sample" WHERE "id" = ${sampleId}`;
  const { liftId = null, lotAId = null, lotBId = null } = sample ?? {};
  const some = (...ids: (number | null)[]) => [...new Set(ids.flatMap((id) => id ?? []))];
  return { lift: some(liftId), mixed: some(lotAId, lotBId) };
}
