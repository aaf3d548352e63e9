'use client';

import Link from 'next/link';
import { useState, useTransition } from 'react';
import type { HistoryOf } from '@/app/_server/ledger/entries-of';
import { Code } from '@/app/_ui/code';
import { HistoryList } from '@/app/_ui/history/history-list';
import { Key } from '@/app/_ui/keys';
import { PlainError } from '@/app/_ui/plain-error';
import { olderEntries } from '@/app/(shop)/_parts/history/actions';
import styles from '@/app/(shop)/_parts/history/history.module.css';
import { ReverseKey } from '@/app/(shop)/_parts/history/reverse-key';
import type { SaidEntry } from '@/app/(shop)/_parts/history/say-entry';
import { thingHref } from '@/app/(shop)/_parts/thing-href';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';

const MOST_LABELS = 6;

/** Entries of the book with their reversals; older ones come a page at a time. */
export function HistoryRows({
  of,
  first,
  more,
  label,
}: {
  of: HistoryOf;
  first: SaidEntry[];
  more: boolean;
  label: string;
}) {
  const [older, setOlder] = useState<SaidEntry[]>([]);
  const [left, setLeft] = useState(more);
  const [failed, setFailed] = useState(false);
  const [pending, start] = useTransition();
  const entries = [...first, ...older];

  const showOlder = () =>
    start(async () => {
      const before = entries.at(-1)?.id;
      if (before === undefined) return;
      try {
        const page = await olderEntries({ of, before });
        setOlder((shown) => [...shown, ...page.entries]);
        setLeft(page.more);
        setFailed(false);
      } catch {
        setFailed(true);
      }
    });

  return (
    <>
      <HistoryList
        label={label}
        entries={entries.map((entry) => ({
          id: String(entry.id),
          when: entry.when,
          who: entry.who,
          what: entry.what,
          why: <Why entry={entry} />,
          below: <Below entry={entry} naming={of.stockId === undefined} inJob={of.jobId !== undefined} />,
          verdict: entry.verdict ? { word: entry.verdict } : undefined,
          reversed: entry.reversed ?? undefined,
          action: entry.canReverse ? <ReverseKey entryId={entry.id} what={entry.what} /> : undefined,
        }))}
      />
      {failed ? (
        <PlainError
          happened="The older entries could not be fetched."
          kept="Nothing was changed."
          toDo="Come back into Wi-Fi and press again."
        />
      ) : null}
      {left ? (
        <div className={styles.more}>
          <Key variant="ghost" pending={pending} pendingWords="Looking back" onClick={showOlder}>
            Show older
          </Key>
        </div>
      ) : null}
    </>
  );
}

function Why({ entry }: { entry: SaidEntry }) {
  const lines = [entry.why, entry.overridden, entry.writtenLater].filter((line) => line !== null && line !== '');
  if (lines.length === 0) return null;
  return lines.map((line) => (
    <span key={line} className={styles.line}>
      {line}
    </span>
  ));
}

function Below({ entry, naming, inJob }: { entry: SaidEntry; naming: boolean; inJob: boolean }) {
  const labels = naming ? entry.labels.slice(0, MOST_LABELS) : [];
  const more = entry.labels.length + entry.moreLabels - labels.length;
  const job = inJob ? null : entry.job;
  if (labels.length === 0 && !job && entry.photos.length === 0) return null;
  return (
    <div className={styles.links}>
      {labels.map((each) => (
        <Link key={each} href={thingHref(each)}>
          <Code>{printOwnLabel(each as OwnLabelCode)}</Code>
        </Link>
      ))}
      {naming && more > 0 ? <span>and {more} more</span> : null}
      {job ? <Link href={`/jobs/${job.id}`}>{job.name}</Link> : null}
      {entry.photos.map((file, index) => (
        <a key={file} href={`/photos/${file}`}>
          Photo{entry.photos.length > 1 ? ` ${index + 1}` : ''}
        </a>
      ))}
    </div>
  );
}
