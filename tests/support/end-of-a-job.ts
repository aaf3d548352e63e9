import { type SetStage, type StageSet, setStage } from '@/app/_server/jobs/set-stage';
import type { OpenBook } from '@/prisma/open-book';
import { by, must } from '@/tests/support/test-book';

/** Brings an agreed job to its end by the stages between, whatever still cures. */
export async function endJob(book: OpenBook, jobId: number, end: 'delivered' | 'dropped'): Promise<StageSet> {
  const move = async (stage: SetStage['stage']) => must(await setStage(book, by(), { jobId, stage, reason: 'A test' }));
  if (end === 'dropped') return move('dropped');
  await move('making');
  await move('ready');
  return move('delivered');
}
