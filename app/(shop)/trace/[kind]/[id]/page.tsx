import type { Metadata } from 'next';
import Link from 'next/link';
import { notFound } from 'next/navigation';
import { bookForPage } from '@/app/_server/book/book-for-page';
import { faultsOf } from '@/app/_server/faults/faults-of';
import { listSamples } from '@/app/_server/samples/list-samples';
import { leftOf } from '@/app/_server/trace/holdable';
import { readTraceStart } from '@/app/_server/trace/read-trace-start';
import { stillHeld } from '@/app/_server/trace/still-held';
import { traceFrom } from '@/app/_server/trace/trace-from';
import { whatBearsOn } from '@/app/_server/trace/what-bears-on';
import { LinkKey } from '@/app/_ui/keys';
import { Page } from '@/app/_ui/page';
import { Section } from '@/app/_ui/section';
import { FaultList } from '@/app/(shop)/faults/_parts/fault-list';
import { SampleOfTrace } from '@/app/(shop)/samples/_parts/sample-of-trace';
import { CopyKey } from '@/app/(shop)/trace/_ui/copy-key';
import { HeldList } from '@/app/(shop)/trace/_ui/held-list';
import { HoldAllForm } from '@/app/(shop)/trace/_ui/hold-all-form';
import styles from '@/app/(shop)/trace/_ui/trace.module.css';
import { TraceList } from '@/app/(shop)/trace/_ui/trace-list';
import { TracePicture } from '@/app/(shop)/trace/_ui/trace-picture';
import { heldPresses } from '@/app/(shop)/trace/held-presses';
import { sayBearings } from '@/app/(shop)/trace/say-bearing';
import { sayHoldable } from '@/app/(shop)/trace/say-holdable';
import { KIND_WORDS, sayNode } from '@/app/(shop)/trace/say-node';
import { toCopy, toTell } from '@/app/(shop)/trace/to-tell';

type Props = { params: Promise<{ kind: string; id: string }>; searchParams: Promise<{ all?: string }> };

/** More than these are no picture any more. */
const MOST_DRAWN = 240;

export const metadata: Metadata = { title: 'Trace' };

export default async function TracePage({ params, searchParams }: Props) {
  const [{ kind, id }, { all }] = await Promise.all([params, searchParams]);
  const { book, head } = await bookForPage();
  const start = await readTraceStart(book.read, kind, decodeURIComponent(id));
  const wide = all === 'yes';
  const traced = start && (await traceFrom(book.read, start, { wide }));
  if (!start || !traced) notFound();
  const say = { prefer: head.units, order: head.dateOrder, today: head.today };
  const nodes = traced.nodes.map((node) => sayNode(node, say));
  const first = sayNode(traced.start, say);
  const holdable = leftOf(traced);
  const { left, free, lots, freeLots } = holdable;
  const toFree = free.length + freeLots.length;
  const inHand = [...lots, ...left];
  const presses = heldPresses(await stillHeld(book.read, { stockIds: inHand.map((node) => node.id) }), inHand);
  // A press may hold things that are in another trace alone: releasing it releases those too, and the key says how many.
  const counts = new Map(
    await Promise.all(
      presses.map(async ({ entryId }) => [entryId, (await stillHeld(book.read, { entryId })).length] as const),
    ),
  );
  const tell = toTell(traced.nodes);
  const [faults, samples, bearings] = await Promise.all([
    start.kind === 'fault' ? faultsOf(book.read, { id: start.id }) : [],
    start.kind === 'sample' ? listSamples(book, { id: start.id }) : [],
    whatBearsOn(book, traced.nodes),
  ]);
  const here = `/trace/${kind}/${id}`;
  const name = [KIND_WORDS[start.kind].one, first.code, first.title].filter(Boolean).join(' ');
  const back =
    start.kind === 'fault'
      ? faults[0]?.job
        ? { href: `/jobs/${faults[0].job.id}`, words: faults[0].job.name }
        : { href: '/on-hand', words: 'On hand' }
      : { href: traced.start.href, words: `${KIND_WORDS[start.kind].one} ${first.code || first.title}` };
  const beside = traced.nodes.some(({ way }) => way === 'beside');
  return (
    <Page title="Trace" context={name} back={back}>
      <p className={styles.lead}>
        What went into it and where it went, as the book stands now. What was reversed does not count.
        {traced.leftOut > 0
          ? ` At least ${traced.leftOut} things more were reached than are shown; the hold below takes them in all the same.`
          : ''}
      </p>
      {start.kind === 'fault' ? <FaultList faults={faults} head={head} /> : null}
      {samples.map((sample) => (
        <Section key={sample.id}>
          <SampleOfTrace sample={sample} today={head.today} order={head.dateOrder} />
        </Section>
      ))}
      <Section title="What is left" aside={left.length > 0 ? `${free.length} free of ${left.length}` : undefined}>
        {left.length === 0 ? (
          <p className={styles.soft}>
            Nothing of it is left in the shop: every container is empty and no piece is here.
          </p>
        ) : null}
        {toFree === 0 ? (
          left.length + lots.length > 0 ? (
            <p>Everything that is left is set apart already.</p>
          ) : null
        ) : (
          <>
            <p className={styles.lead}>{sayHoldable(holdable)}</p>
            <HoldAllForm key={`${toFree}`} start={start} wide={wide} free={toFree} />
          </>
        )}
        {presses.map((press) => (
          <HeldList key={press.entryId} press={press} count={counts.get(press.entryId) ?? press.things.length} />
        ))}
      </Section>
      <Section title="Clients to tell" aside={tell.length > 0 ? `${tell.length} in all` : undefined}>
        {tell.length === 0 ? (
          <p className={styles.soft}>It went into no job.</p>
        ) : (
          <>
            <ul className={styles.tell} aria-label="Clients to tell">
              {tell.map(({ jobId, job, client, contact, stage, isDelivered }) => (
                <li key={jobId}>
                  <span className={styles.who}>{client}</span>
                  <span className={isDelivered ? `${styles.right} ${styles.out}` : styles.right}>{stage}</span>
                  <Link href={`/jobs/${jobId}`}>{job}</Link>
                  <span className={`${styles.right} ${styles.soft}`}>{contact || 'no contact in the book'}</span>
                </li>
              ))}
            </ul>
            <CopyKey text={toCopy(tell)}>Copy the list</CopyKey>
          </>
        )}
      </Section>
      <Section title="The picture">
        {nodes.length > MOST_DRAWN ? (
          <p>{nodes.length} things are too many to draw. The lists below name each of them.</p>
        ) : (
          <TracePicture nodes={nodes} edges={traced.edges} />
        )}
        {wide ? (
          <div className={styles.switch}>
            <LinkKey variant="ghost" href={here}>
              Only what hangs on this {KIND_WORDS[start.kind].one.toLowerCase()}
            </LinkKey>
          </div>
        ) : start.kind !== 'lot' && beside ? (
          <div className={styles.switch}>
            <LinkKey variant="ghost" href={`${here}?all=yes`}>
              Follow its lots into every job
            </LinkKey>
          </div>
        ) : null}
      </Section>
      <TraceList nodes={nodes} notes={sayBearings(bearings, say)} />
    </Page>
  );
}
