'use client';

import { useMemo, useRef } from 'react';
import { type TimeScale, timeScale } from '@/app/_ui/rule/time-scale';
import { addDays } from '@/shared/calendar/add-days';
import { laterOf } from '@/shared/calendar/later-of';
import { dayOfStep, type Step } from '@/shared/timeline/step';
import type { TimelineFacts } from '@/shared/timeline/timeline-facts';

/** Room beside the first and the last day, so that there is somewhere to drag to. */
const BESIDE_DAYS = 3;
const LEAST_DAYS = 21;
const MOST_DAYS = 500;

/**
 * The days a time line is drawn on: all of its steps, today, and the due day where that is near. While a step is held the
 * line stays as it is, so that the day under the finger stays under it.
 */
export function useScale(steps: readonly Step[], { today, dueOn }: TimelineFacts) {
  const isHeld = useRef(false);
  const last = useRef<TimeScale>(undefined);
  const days = [today, ...(dueOn === null ? [] : [dueOn]), ...steps.map(dayOfStep)].sort();
  const [from, to] = [days[0] ?? today, days.at(-1) ?? today];
  const fresh = useMemo(() => {
    const start = addDays(from, -BESIDE_DAYS);
    const least = addDays(start, LEAST_DAYS);
    const end = laterOf(addDays(to, BESIDE_DAYS), least);
    const most = addDays(start, MOST_DAYS);
    if (end > most) return timeScale(start, most);
    return timeScale(start, end);
  }, [from, to]);
  const scale = isHeld.current && last.current ? last.current : fresh;
  last.current = scale;
  const hold = (held: boolean) => {
    isHeld.current = held;
  };
  return { scale, hold };
}
