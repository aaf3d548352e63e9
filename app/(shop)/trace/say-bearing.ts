import type { Bearing } from '@/app/_server/trace/what-bears-on';
import { TREATED } from '@/app/(shop)/containers/treatment-words';
import type { SayNode } from '@/app/(shop)/trace/say-node';
import { sayDate } from '@/shared/calendar/say-date';
import type { TraceKey } from '@/shared/trace/trace-graph';

/** One line beside a thing of a trace. */
export type TraceNote = { id: string; words: string; isBad: boolean };

/** As many as are read beside a thing; its own page has them all. */
const MOST_EACH = 4;

/** What tests and treatments say of each thing, in the order they are given. */
export function sayBearings(
  bearings: readonly Bearing[],
  say: Pick<SayNode, 'order' | 'today'>,
): ReadonlyMap<TraceKey, readonly TraceNote[]> {
  const notes = new Map<TraceKey, TraceNote[]>();
  for (const bearing of bearings) {
    const own = notes.get(bearing.on) ?? [];
    if (own.length < MOST_EACH) notes.set(bearing.on, [...own, sayBearing(bearing, say)]);
  }
  return notes;
}

function sayBearing(bearing: Bearing, { order, today }: Pick<SayNode, 'order' | 'today'>): TraceNote {
  const on = sayDate(bearing.day, { order, today });
  const { id } = bearing;
  if (bearing.of === 'treatment') {
    const { kind, note } = bearing;
    return { id, words: `${TREATED[kind].label}, ${on}${note ? `: ${note}` : ''}`, isBad: false };
  }
  const { kind, passed, together, result } = bearing;
  const what = `${kind === 'test-pour' ? 'Test pour' : 'Inspection'} ${passed ? 'passed' : 'failed'}, ${on}`;
  return {
    id,
    words: [together ? `${what}, together with ${together}` : what, result].filter(Boolean).join('. '),
    isBad: !passed,
  };
}
