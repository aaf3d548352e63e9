import { type Nanometres, nanometres } from '@/shared/units/nanometres';
import { printLength } from '@/shared/units/print-length';
import type { UnitSystem } from '@/shared/units/unit-system';

/** What a tape shows: a sixteenth of an inch, or a millimetre. */
const STEP = { imperial: 1_587_500, metric: 1_000_000 } as const;

/**
 * A length to the mark of a tape on the safe side: what there is goes down, what is missing goes up, so that neither is
 * ever said kinder than it is. 57.2 mm is `2 1/4 in` down and `2 5/16 in` up.
 */
export function onTheRule(length: Nanometres, way: 'down' | 'up', prefer: UnitSystem): string {
  const step = STEP[prefer];
  const steps = way === 'down' ? Math.floor(length / step) : Math.ceil(length / step);
  return printLength(nanometres(steps * step), { prefer, style: 'inches' });
}
