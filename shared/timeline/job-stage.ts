import { err, ok, type Result } from '@/shared/result/result';

/** Where a job stands, from asked for to delivered, or dropped. */
export const JOB_STAGES = ['asked', 'quoted', 'agreed', 'making', 'curing', 'ready', 'delivered', 'dropped'] as const;
export type JobStage = (typeof JOB_STAGES)[number];

/** What may follow: one step on or back, past a quote or a cure that is not needed, and back from the end. */
const NEXT: Readonly<Record<JobStage, readonly JobStage[]>> = {
  asked: ['quoted', 'agreed', 'dropped'],
  quoted: ['agreed', 'asked', 'dropped'],
  agreed: ['making', 'quoted', 'dropped'],
  making: ['curing', 'ready', 'agreed', 'dropped'],
  curing: ['ready', 'making', 'dropped'],
  ready: ['delivered', 'curing', 'making', 'dropped'],
  delivered: ['ready', 'making'],
  dropped: ['agreed', 'asked'],
};

/** The stages a job may go to from where it stands, the usual one first. */
export const stagesFrom = (stage: JobStage): readonly JobStage[] => NEXT[stage];

/**
 * Whether a job may go from one stage to another: `no-change` for the same, `illegal-jump` for one that skips what has to
 * happen between. From `asked` to `delivered` is such a jump; from `making` to `ready` is not, where nothing has to cure.
 */
export function checkStage(
  from: JobStage,
  to: JobStage,
): Result<JobStage, { readonly code: 'no-change' | 'illegal-jump' }> {
  if (from === to) return err({ code: 'no-change' });
  return NEXT[from].includes(to) ? ok(to) : err({ code: 'illegal-jump' });
}

/** Delivered is done, dropped is dropped, everything else is open. */
export function stateOfStage(stage: JobStage): 'open' | 'done' | 'dropped' {
  return stage === 'delivered' ? 'done' : stage === 'dropped' ? 'dropped' : 'open';
}
