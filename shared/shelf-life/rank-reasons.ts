import type { Reason, ReasonCode, Weight } from '@/shared/shelf-life/types/reason';

const WEIGHTS: readonly Weight[] = ['stop', 'care', 'note'];

/** Within a weight, what could hurt most and cannot be put right comes first. */
const CODES: readonly ReasonCode[] = [
  'recalled',
  'quarantine',
  'on-hold',
  'gelled',
  'skinned-through',
  'frozen-ruined',
  'wrong-system',
  'pair-failed',
  'past-limit',
  'date-unknown',
  'inspection-failed',
  'empty',
  'facts-contradict',
  'day-of-use-past',
  'short',
  'other-lot',
  'extended-by-inspection',
  'limit-near',
  'opened-life-unknown',
  'opened-day-guessed',
  'date-unconfirmed',
  'frozen-thaw',
  'crystals',
  'haze',
  'darkened',
  'settled',
  'stored-out-of-range',
  'inspection-does-not-extend',
  'house-default',
];

/**
 * The reasons worst first: every stop, then every care, then every note, within each by a fixed list of codes, and of two
 * passed limits the earlier first. Reasons alike in all that keep their order.
 */
export function rankReasons(reasons: readonly Reason[]): readonly Reason[] {
  return [...reasons].sort(
    (a, b) =>
      WEIGHTS.indexOf(a.weight) - WEIGHTS.indexOf(b.weight) ||
      CODES.indexOf(a.code) - CODES.indexOf(b.code) ||
      (a.code === 'past-limit' && b.code === 'past-limit' ? b.daysPast - a.daysPast : 0),
  );
}
