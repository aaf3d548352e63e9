import type { Metadata } from 'next';
import Link from 'next/link';
import { liftBelow } from '@/app/_server/pours/join-below';
import { samplesOfLifts } from '@/app/_server/pours/samples-of-lifts';
import { newestSheet } from '@/app/_server/pours/sheet-of';
import { Code } from '@/app/_ui/code';
import { Facts } from '@/app/_ui/facts';
import { KeyBar, LinkKey } from '@/app/_ui/keys';
import { Page } from '@/app/_ui/page';
import { Section } from '@/app/_ui/section';
import { RiverDrawing } from '@/app/_ui/slab/river-drawing';
import { HistorySection } from '@/app/(shop)/_parts/history-section';
import { KeptSamples } from '@/app/(shop)/jobs/[id]/pours/_ui/kept-samples';
import { LiftsDrawing } from '@/app/(shop)/jobs/[id]/pours/_ui/lifts-drawing';
import { PlanCautions, PlanNeed } from '@/app/(shop)/jobs/[id]/pours/_ui/plan-result';
import styles from '@/app/(shop)/jobs/[id]/pours/_ui/pours.module.css';
import { RemovePour } from '@/app/(shop)/jobs/[id]/pours/_ui/remove-pour';
import { pourOfPage } from '@/app/(shop)/jobs/[id]/pours/pour-of-page';
import {
  STATE_WORDS,
  sayDay,
  sayGrams,
  sayJoin,
  sayLift,
  sayStanding,
  stateOf,
} from '@/app/(shop)/jobs/[id]/pours/say-pour';
import { sayRiverDepth, sayRiverFrom, sayRiverOf, sayRiverSize } from '@/app/(shop)/jobs/[id]/pours/say-river';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';
import { printLength } from '@/shared/units/print-length';
import { printTemperature } from '@/shared/units/print-temperature';

type Params = { params: Promise<{ id: string; pour: string }> };

export async function generateMetadata({ params }: Params): Promise<Metadata> {
  return { title: (await pourOfPage(params)).pour.name };
}

/** One pour: drawn as its lifts, each with its mix card, what it takes and what to mind. */
export default async function PourPage({ params }: Params) {
  const { book, head, pour } = await pourOfPage(params);
  const { today, units, dateOrder: order } = head;
  const { kept, lifts, job } = pour;
  const day = (on: typeof today) => sayDay(on, order, today);
  const here = `/jobs/${job.id}/pours/${pour.id}`;
  const next = lifts.find((lift) => !lift.poured);
  const isOpen = job.state === 'open';
  const isBegun = lifts.some((lift) => stateOf(lift) !== 'planned');
  const { space } = kept.figures;
  const riverDepth = (space.from === 'fills' && space.fills[0]?.depth) || kept.depth;
  const sheetNow = await newestSheet(book.read, pour.system.id);
  const samples = await samplesOfLifts(
    book,
    lifts.map(({ id }) => id),
  );
  const hasChanged = sheetNow && JSON.stringify(sheetNow.facts) !== JSON.stringify(kept.sheet);
  return (
    <Page title={pour.name} context={sayStanding(pour)} back={{ href: `/jobs/${job.id}`, words: job.name }}>
      {hasChanged && lifts.some((lift) => stateOf(lift) === 'planned') ? (
        <p className={styles.defer}>
          The sheet of {pour.system.name} was written down anew since this was planned.{' '}
          <Link href={`${here}/edit`}>Plan it anew</Link> to go by it.
        </p>
      ) : null}
      <div className={styles.columns}>
        <div>
          <Section title="Its lifts">
            <LiftsDrawing
              units={units}
              lifts={lifts.map((lift) => ({
                nr: lift.nr,
                depth: lift.depth,
                day: day(lift.poured?.on ?? lift.day),
                state: stateOf(lift),
              }))}
            />
            <ul className={styles.list} aria-label="Lifts">
              {lifts.map((lift) => (
                <li key={lift.id}>
                  <Link href={`${here}/lifts/${lift.nr}`} className={styles.row}>
                    <b>
                      {sayLift(lift.nr)}
                      {lift.nr > 0 ? `, ${printLength(lift.depth, { prefer: units })}` : ''}
                    </b>
                    <span>{day(lift.poured?.on ?? lift.day)}</span>
                    <span className={styles.soft}>
                      {STATE_WORDS[stateOf(lift)]}
                      {lift.id === next?.id ? sayJoin(liftBelow(pour, lift.nr), lift.day, today, Date.now()) : ''}
                      {lift.poured ? ` by ${lift.poured.who}` : ''}
                      {lift.poured?.room ? ` at ${printTemperature(lift.poured.room, { prefer: units })}` : ''}
                    </span>
                    <span className={styles.soft}>
                      {sayGrams(
                        lift.poured
                          ? lift.weighed.reduce((sum, { mass }) => sum + mass, 0)
                          : lift.batches.reduce((sum, { total }) => sum + total, 0),
                      )}
                    </span>
                  </Link>
                </li>
              ))}
            </ul>
          </Section>
          {kept.river ? (
            <Section title="What it fills">
              <figure className={styles.river}>
                <RiverDrawing river={kept.river} label={`The finished top, to scale: ${sayRiverOf(kept.river)}`} />
                <figcaption>
                  {sayRiverFrom(kept.river, { units, order, today })} {sayRiverSize(kept.river, { units })} Depth:{' '}
                  {sayRiverDepth(riverDepth, kept.river, units)}.
                </figcaption>
              </figure>
              <p className={styles.riverKeys}>
                {kept.river.labels.map((label) => (
                  <Link key={label} href={`/pieces/${label}`}>
                    <Code>{printOwnLabel(label as OwnLabelCode)}</Code>
                  </Link>
                ))}
              </p>
            </Section>
          ) : null}
          <PlanCautions plan={kept.plan} />
          {kept.reason ? (
            <Section title="Why it goes beyond the sheet">
              <p>{kept.reason}</p>
            </Section>
          ) : null}
        </div>
        <div>
          <Section title="Its days">
            <Facts
              facts={[
                ...(pour.part ? [{ term: 'For', value: pour.part }] : []),
                {
                  term: 'Resin',
                  value: (
                    <>
                      <Link href={`/resin/${pour.system.id}`}>{pour.system.name}</Link>
                      {kept.sheet.from === 'typed' ? ', typed, no sheet' : ''}
                    </>
                  ),
                },
                { term: 'Last lift', value: `${day(pour.lastLift)}: what goes in is judged for this day` },
                ...(pour.demould
                  ? [{ term: 'Demould', value: day(pour.demould.doneOn ?? pour.demould.day) }]
                  : [{ term: 'Demould', value: 'the sheet does not say' }]),
                ...(pour.cure ? [{ term: 'Cured through', value: day(pour.cure.doneOn ?? pour.cure.day) }] : []),
              ]}
            />
          </Section>
          {next ? null : <KeptSamples samples={samples} last={lifts.at(-1)?.id} />}
          <PlanNeed plan={kept.plan} sheet={kept.sheet} units={units} />
          {isOpen && !isBegun ? <RemovePour pourId={pour.id} jobId={job.id} name={pour.name} /> : null}
        </div>
      </div>
      <HistorySection of={{ jobId: job.id }} />
      {isOpen ? (
        <KeyBar>
          {next ? (
            <LinkKey href={`${here}/lifts/${next.nr}`}>
              {stateOf(next) === 'begun' ? 'Go on with' : 'Weigh out'} {sayLift(next.nr).toLowerCase()}
            </LinkKey>
          ) : null}
          {lifts.some((lift) => stateOf(lift) === 'planned') ? (
            <LinkKey variant="ghost" href={`${here}/edit`}>
              Plan it anew
            </LinkKey>
          ) : null}
        </KeyBar>
      ) : null}
    </Page>
  );
}
