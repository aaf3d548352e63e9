import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { searchOffThread } from '@/app/_server/fits/search-off-thread';
import { isSameRiver, type KeptRiver } from '@/app/_server/pours/kept-river';
import { planPage } from '@/app/_server/pours/plan-page';
import { pouredOf } from '@/app/_server/pours/poured-of';
import { Page } from '@/app/_ui/page';
import { riverOfAddress } from '@/app/(shop)/jobs/_parts/asked-pour';
import { PlanForm } from '@/app/(shop)/jobs/[id]/pours/_ui/plan-form';
import { planWood } from '@/app/(shop)/jobs/[id]/pours/_ui/plan-wood';
import styles from '@/app/(shop)/jobs/[id]/pours/_ui/pours.module.css';
import { pourOfPage } from '@/app/(shop)/jobs/[id]/pours/pour-of-page';
import { sayLift } from '@/app/(shop)/jobs/[id]/pours/say-pour';
import { sayRiverOf } from '@/app/(shop)/jobs/[id]/pours/say-river';
import { startPlan, typedFills } from '@/app/(shop)/jobs/[id]/pours/start-plan';
import { typeFigures } from '@/app/(shop)/jobs/[id]/pours/type-figures';
import { anotherStation, type TypedPlan } from '@/app/(shop)/jobs/[id]/pours/typed-plan';
import { addDays } from '@/shared/calendar/add-days';
import { laterOf } from '@/shared/calendar/later-of';
import { sayDate } from '@/shared/calendar/say-date';
import { daysToPourAgain } from '@/shared/pour/schedule-pour';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import { openDay } from '@/shared/timeline/closed-days';

export const metadata: Metadata = { title: 'Plan the pour anew' };

/** A pour planned anew: what was begun of it stays. */
export default async function EditPourPage({ params }: { params: Promise<{ id: string; pour: string }> }) {
  const { book, head, pour } = await pourOfPage(params, '/edit');
  const page = await planPage(book, pour.job.id, { pourId: pour.id });
  if (!page) notFound();
  const { today, units, dateOrder: order } = head;
  const { closed, choices, systems, job } = page;
  const sheet = systems.find(({ id }) => id === pour.system.id)?.sheet ?? pour.kept.sheet;
  const poured = pouredOf(pour, { today, sheet, timeZone: head.timeZone });
  const next = pour.lifts.find((lift) => !lift.poured && lift.weighed.length === 0)?.day;
  const ready = poured ? laterOf(addDays(poured.last, daysToPourAgain(sheet)), today) : today;
  const first = next && next >= today ? next : openDay(ready, closed);
  const { river } = pour.kept;
  const now =
    river && (await riverOfAddress(book, riverAddress(river), { prefer: units, today, order }, searchOffThread));
  const hasMoved = river && !(now?.ok && isSameRiver(now.value, river));
  const empty = startPlan(choices, { units, systemId: pour.system.id, first: '' });
  const kept: Partial<TypedPlan> = pour.kept.typed.plan
    ? (JSON.parse(pour.kept.typed.plan) as TypedPlan)
    : typeFigures(pour.kept.figures, units);
  const start: TypedPlan = {
    ...empty,
    ...kept,
    name: pour.name,
    systemId: String(pour.system.id),
    stations: (kept.stations ?? empty.stations).map((row) => ({ ...anotherStation(), ...row })),
    fills: fillsNow(kept.fills ?? [], typedFills(choices, units)),
    first: sayDate(first, { order }),
    reason: pour.kept.reason,
  };
  const begun = pour.lifts.filter((lift) => lift.poured || lift.weighed.length > 0);
  return (
    <Page
      title={`Plan ${pour.name} anew`}
      context={job.name}
      back={{ href: `/jobs/${job.id}/pours/${pour.id}`, words: pour.name }}
    >
      {begun.length > 0 ? (
        <p className={styles.defer}>
          {begun.map(({ nr }) => sayLift(nr)).join(', ')}{' '}
          {begun.length === 1 ? 'stays as it is: it was' : 'stay as they are: they were'} begun. What is planned here
          goes on top.
        </p>
      ) : null}
      {river && hasMoved ? (
        <p className={styles.defer}>
          {sayRiverOf(river)} is not what it was: its wood was measured, marked or cut since. What is planned here goes
          by the river as it was kept with the pour on {sayDate(river.searchedOn, { order, today })}.
        </p>
      ) : null}
      <PlanForm
        key={pour.id}
        jobId={job.id}
        job={job.name}
        parts={page.parts}
        part={page.part}
        pourId={pour.id}
        start={start}
        systems={systems}
        wood={planWood(choices.wood)}
        river={river}
        isRiverKept
        closed={closed}
        poured={poured}
        today={today}
        order={order}
        units={units}
      />
    </Page>
  );
}

const riverAddress = ({ labels, asked }: KeptRiver) => ({ labels: labels as OwnLabelCode[], asked });

/** What was chosen before stays as it was typed; what has been marked since is offered, not ticked. */
function fillsNow(before: TypedPlan['fills'], now: TypedPlan['fills']): TypedPlan['fills'] {
  const known = new Set(before.map(({ id }) => id));
  return [...before, ...now.filter(({ id }) => !known.has(id)).map((fill) => ({ ...fill, on: false }))];
}
