'use client';

import { ShelfRibbon } from '@/app/_ui/rule/shelf-ribbon';
import { ReasonList } from '@/app/_ui/verdict/reason-list';
import { VerdictPanel } from '@/app/_ui/verdict/verdict-panel';
import { arrivalReasons, type DoorContext, sayArrival } from '@/app/(shop)/arrive/say-arrival';
import { addDays } from '@/shared/calendar/add-days';
import { type CalendarDate, LAST_DAY } from '@/shared/calendar/calendar-date';
import { daysBetween } from '@/shared/calendar/days-between';
import { sayLimit } from '@/shared/shelf-life/say-limit';
import type { Verdict } from '@/shared/shelf-life/types/verdict';

/** How it arrives: said at once, above everything there is to fill in. */
export function ArrivalVerdict({ verdict, about }: { verdict: Verdict; about: DoorContext }) {
  const reasons = arrivalReasons(verdict, about);
  const [first] = verdict.reasons;
  return (
    <VerdictPanel key={verdict.word} word={verdict.word} headline={sayArrival(verdict, about)} size="small">
      {first && reasons[0]?.toDo && first.code !== 'date-unconfirmed' ? <p>{reasons[0].toDo}</p> : null}
    </VerdictPanel>
  );
}

/** The rest of the answer: the other reasons, and its shelf life on the rule. */
export function ArrivalReasons({
  verdict,
  about,
  openedOn,
}: {
  verdict: Verdict;
  about: DoorContext;
  openedOn?: CalendarDate;
}) {
  const { today, order } = about;
  const others = arrivalReasons(verdict, about).slice(1);
  const limits = verdict.limits
    .filter((limit) => limit.effective)
    .map((limit) => ({
      lastGoodDay: limit.lastGoodDay,
      label: sayLimit(limit, { today, order }),
      governing: limit === verdict.governing,
    }));
  return (
    <>
      {others.length > 0 ? <ReasonList reasons={others} label="Also" /> : null}
      {verdict.governing ? (
        <ShelfRibbon
          {...windowOf(verdict.governing.lastGoodDay, today)}
          today={today}
          order={order}
          limits={limits}
          openedOn={openedOn}
        />
      ) : null}
    </>
  );
}

/** A stretch of the rule with today and the limit on it, and a tenth of it as margin at either end. */
function windowOf(limit: CalendarDate, today: CalendarDate): { from: CalendarDate; to: CalendarDate } {
  const [first, last] = limit < today ? [limit, today] : [today, limit];
  const margin = Math.max(14, Math.round(daysBetween(first, last) / 8));
  const room = daysBetween(last, LAST_DAY);
  return { from: addDays(first, -margin), to: addDays(last, Math.min(margin, room)) };
}
