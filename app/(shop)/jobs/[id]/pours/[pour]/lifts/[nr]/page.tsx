import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { liftBelow, saidBefore } from '@/app/_server/pours/join-below';
import { promisedTins } from '@/app/_server/pours/promised-tins';
import { Page } from '@/app/_ui/page';
import { MixCard } from '@/app/(shop)/jobs/[id]/pours/[pour]/lifts/[nr]/_ui/mix-card';
import { liftCard } from '@/app/(shop)/jobs/[id]/pours/[pour]/lifts/[nr]/lift-card';
import { pourOfPage } from '@/app/(shop)/jobs/[id]/pours/pour-of-page';
import { sayDay, sayLift } from '@/app/(shop)/jobs/[id]/pours/say-pour';
import { printLength } from '@/shared/units/print-length';
import { printTemperature } from '@/shared/units/print-temperature';

type Params = { params: Promise<{ id: string; pour: string; nr: string }> };

async function liftOfPage(params: Params['params']) {
  const { nr: text } = await params;
  const page = await pourOfPage(params, `/lifts/${text}`);
  const lift = /^\d{1,2}$/.test(text) ? page.pour.lifts.find(({ nr }) => nr === Number(text)) : undefined;
  if (!lift) notFound();
  return { ...page, lift };
}

export async function generateMetadata({ params }: Params): Promise<Metadata> {
  const { pour, lift } = await liftOfPage(params);
  return { title: `${sayLift(lift.nr)} of ${pour.name}` };
}

/** The mix card of one lift, for the wall or the phone: what to weigh, and weighing it. */
export default async function LiftPage({ params }: Params) {
  const { book, head, pour, lift } = await liftOfPage(params);
  const tins = lift.poured ? [] : await promisedTins(book.read, pour);
  const { today, units, dateOrder: order } = head;
  const depth = lift.nr > 0 ? `${printLength(lift.depth, { prefer: units })} deep` : 'on the bare wood';
  const { parts } = pour.kept.plan.ratio;
  const per = Math.round((1000 * parts.b) / parts.a) / 10;
  return (
    <Page
      title={`${sayLift(lift.nr)} of ${pour.name}`}
      context={sayDay(lift.poured?.on ?? lift.day, order, today)}
      back={{ href: `/jobs/${pour.job.id}/pours/${pour.id}`, words: pour.name }}
    >
      <MixCard
        card={liftCard(pour, lift, { on: liftBelow(pour, lift.nr) ?? null, said: saidBefore(lift) })}
        about={`${pour.system.name}, 100 to ${per} by mass, ${depth}. For ${pour.job.name}.`}
        room={printTemperature(pour.kept.figures.room, { prefer: units })}
        tins={tins}
        now={Date.now()}
        today={today}
        order={order}
        units={units}
      />
    </Page>
  );
}
