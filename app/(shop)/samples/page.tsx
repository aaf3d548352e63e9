import type { Metadata } from 'next';
import Link from 'next/link';
import { bookForPage } from '@/app/_server/book/book-for-page';
import { listPlaces } from '@/app/_server/places/place-page';
import { placeChoices, placeTree } from '@/app/_server/places/place-tree';
import { listSamples, type SampleLine, sampleChoices } from '@/app/_server/samples/list-samples';
import { Empty } from '@/app/_ui/empty';
import { Page } from '@/app/_ui/page';
import { Section } from '@/app/_ui/section';
import { readId } from '@/app/(shop)/_parts/read-id';
import { SampleFacts } from '@/app/(shop)/samples/_parts/sample-facts';
import { SampleWays } from '@/app/(shop)/samples/_parts/sample-ways';
import { KeepSampleForm } from '@/app/(shop)/samples/_ui/keep-sample-form';
import { LookAct } from '@/app/(shop)/samples/_ui/look-act';
import styles from '@/app/(shop)/samples/_ui/samples.module.css';

export const metadata: Metadata = { title: 'Samples' };

type Props = { searchParams: Promise<{ all?: string; lift?: string; one?: string }> };

/** The shelf of cured samples, or one of them: what each is of, what was seen of it, and when to look again. */
export default async function SamplesPage({ searchParams }: Props) {
  const { book, head } = await bookForPage();
  const { today, dateOrder: order } = head;
  const { all, lift, one } = await searchParams;
  const id = readId(one ?? '');
  const [samples, choices, places] = await Promise.all([
    listSamples(book, id === undefined ? { all: all !== undefined } : { id }),
    sampleChoices(book, readId(lift ?? '')),
    listPlaces(book),
  ]);
  const due = samples.filter(({ gone, lookOn }) => !gone && lookOn !== null && lookOn <= today);
  const others = samples.filter((each) => !due.includes(each));
  const row = (sample: SampleLine) => (
    <li key={sample.id} className={styles.sample}>
      <SampleFacts sample={sample} today={today} order={order} />
      <SampleWays sample={sample} traced />
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

  return (
    <Page title="Samples" back={{ href: '/watch', words: 'Watch' }}>
      {samples.length === 0 && id !== undefined ? (
        <Empty title="That sample is not in the book." toDo="Its entry was taken back, or there never was one." />
      ) : samples.length === 0 ? (
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
        <Section
          title={id === undefined ? 'On the shelf' : undefined}
          aside={id === undefined ? `${others.length}` : undefined}
        >
          <ul className={styles.samples}>{others.map(row)}</ul>
        </Section>
      ) : null}
      {id === undefined ? (
        <Section title="Keep one">
          <KeepSampleForm
            {...choices}
            lift={lift}
            places={placeChoices(placeTree(places))}
            today={today}
            order={order}
          />
        </Section>
      ) : null}
      <p>
        {id === undefined ? (
          <Link href={all === undefined ? '/samples?all=1' : '/samples'}>
            {all === undefined ? 'Those that are gone too' : 'Only those on the shelf'}
          </Link>
        ) : (
          <Link href="/samples">All samples on the shelf</Link>
        )}
      </p>
    </Page>
  );
}
