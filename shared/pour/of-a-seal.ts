import type { LiftCaution } from '@/shared/pour/cautions-of-lift';

const OF_A_SEAL: ReadonlySet<LiftCaution['code']> = new Set([
  'batch-not-measured',
  'room-too-warm',
  'room-too-cold',
  'no-sheet',
]);

/** Whether a caution means anything for a seal coat, which has no depth to be too deep or too thin. */
export const isOfASeal = (code: LiftCaution['code']): boolean => OF_A_SEAL.has(code);
