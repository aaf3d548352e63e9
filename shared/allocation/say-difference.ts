import type { ComparedMeasure, MeasureDifference } from '@/shared/allocation/compare-allocations';
import { type SayAllocation, sayDay } from '@/shared/allocation/say-context';

/** The measures as they stand within a sentence. */
export const MEASURE_NAMES: Record<ComparedMeasure, string> = {
  short: 'what is short',
  splitSurfaces: 'surfaces of more than one lot',
  lotChanges: 'changes of lot',
  waste: 'waste',
  opened: 'containers opened',
  order: 'the order of expiry',
};

/** How two allocations differ in one measure, `other` seen from `one`: `2 more containers opened.`, `Less waste.` */
export function sayDifference({ measure, on, one, other }: MeasureDifference, how: SayAllocation): string {
  const more = other > one;
  const by = Math.abs(other - one);
  switch (measure) {
    case 'short':
      return `${more ? 'More' : 'Less'} is short${on ? ` on ${sayDay(on, how)}` : ''}.`;
    case 'splitSurfaces':
      return `${by} ${more ? 'more' : 'fewer'} ${by === 1 ? 'surface' : 'surfaces'} of more than one lot.`;
    case 'lotChanges':
      return `${by} ${more ? 'more' : 'fewer'} ${by === 1 ? 'change' : 'changes'} of lot.`;
    case 'waste':
      return more ? 'More would pass its limit unused.' : 'Less would pass its limit unused.';
    case 'opened':
      return `${by} ${more ? 'more' : 'fewer'} ${by === 1 ? 'container' : 'containers'} opened.`;
    case 'order':
      return more ? 'What expires first would wait longer.' : 'What expires first would go sooner.';
  }
}
