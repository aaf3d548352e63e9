import type { Metadata } from 'next';
import Link from 'next/link';
import { bookForPage } from '@/app/_server/book/book-for-page';
import { listPlaces } from '@/app/_server/places/place-page';
import { placeChoices, placeTree } from '@/app/_server/places/place-tree';
import { listSamples, type SampleLine, sampleChoices } from '@/app/_server/samples/list-samples';
import { Empty } from '@/app/_ui/empty';
import { Page } from '@/app/_ui/page';
import { Section } from '@/app/_ui/section';
import { KeepSampleForm } from '@/app/(shop)/samples/_ui/keep-sample-form';
import { LookAct } from '@/app/(shop)/samples/_ui/look-act';
import styles from '@/app/(shop)/samples/_ui/samples.module.css';
import { LOOKS } from '@/app/(shop)/samples/look-words';
import { sayDate } from '@/shared/calendar/say-date';

export const metadata: Metadata = { title: 'Samples' };

type Props = { searchParams: Promise<{ all?: string; lift?: string }> };

/** The shelf of cured samples: what each is of, what was seen of it, and when to look again. */
export default async function SamplesPage({ searchParams }: Props) {
  const { book, head } = await bookForPage();
  const { today, dateOrder: order } = head;
  const { all, lift } = await searchParams;
  const [samples, choices, places] = await Promise.all([
    listSamples(book, { all: all !== undefined }),
    sampleChoices(book),
    listPlaces(book),
  ]);
  const due = samples.filter(({ gone, lookOn }) => !gone && lookOn !== null && lookOn <= today);
  const others = samples.filter((each) => !due.includes(each));
  const row = (sample: SampleLine) => (
    <li key={sample.id} className={styles.sample}>
      <div className={styles.head}>
        <b>{sample.name}</b>
        <span>{sayWhen(sample)}</span>
      </div>
      <p className={styles.soft}>
        {[sample.pour, sample.place, `made ${sayDate(sample.madeOn, { order, today })}`].filter(Boolean).join(', ')}
        {sample.job ? (
          <>
            , <Link href={`/jobs/${sample.job.id}`}>{sample.job.name}</Link>
          </>
        ) : null}
      </p>
      {sample.lots.length > 0 ? (
        <p className={styles.lots}>
          {sample.lots.map((lot) => (
            <Link key={lot.lotId} href={`/lots/${lot.lotId}`}>
              {lot.words}
            </Link>
          ))}
        </p>
      ) : null}
      {sample.note ? <p>{sample.note}</p> : null}
      {sample.looks.length > 0 ? (
        <ul className={styles.looks} aria-label={`What was seen of ${sample.name}`}>
          {sample.looks.map((look) => (
            <li key={look.id}>
              <b data-result={look.result}>{LOOKS[look.result]}</b>, {sayDate(look.lookedOn, { order, today })}
              {look.note ? `. ${look.note}` : ''}
              {look.photo ? (
                <>
                  . <a href={`/photos/${look.photo}`}>Photo</a>
                </>
              ) : null}
            </li>
          ))}
        </ul>
      ) : null}
      {sample.gone ? null : (
        <LookAct
          key={sample.looks.length}
          sampleId={sample.id}
          name={sample.name}
          madeOn={sample.madeOn}
          today={today}
          order={order}
          hasPhoto={sample.lots.length > 0}
        />
      )}
    </li>
  );

  function sayWhen({ gone, lookOn }: SampleLine): string {
    if (gone) return 'gone';
    if (lookOn === null) return 'not to be looked at again';
    const on = sayDate(lookOn, { order, today });
    return lookOn < today ? `was to be looked at ${on}` : lookOn === today ? 'look today' : `look ${on}`;
  }

  return (
    <Page title="Samples" back={{ href: '/watch', words: 'Watch' }}>
      {samples.length === 0 ? (
        <Empty
          title="No sample is on the shelf."
          toDo="Keep a small cured piece of every pour. Should a top go soft or yellow, it tells whether the resin did."
        />
      ) : null}
      {due.length > 0 ? (
        <Section title="To be looked at" aside={`${due.length}`}>
          <ul className={styles.samples}>{due.map(row)}</ul>
        </Section>
      ) : null}
      {others.length > 0 ? (
        <Section title="On the shelf" aside={`${others.length}`}>
          <ul className={styles.samples}>{others.map(row)}</ul>
        </Section>
      ) : null}
      <Section title="Keep one">
        <KeepSampleForm {...choices} lift={lift} places={placeChoices(placeTree(places))} today={today} order={order} />
      </Section>
      <p>
        <Link href={all === undefined ? '/samples?all=1' : '/samples'}>
          {all === undefined ? 'Those that are gone too' : 'Only those on the shelf'}
        </Link>
      </p>
    </Page>
  );
}
