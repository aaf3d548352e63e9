import type { Metadata } from 'next';
import Link from 'next/link';
import type { ReactNode } from 'react';
import { bookForPage } from '@/app/_server/book/book-for-page';
import { readWatch, type Watched } from '@/app/_server/watch/read-watch';
import { sayWatch } from '@/app/_server/watch/say-watch';
import type { WatchList } from '@/app/_server/watch/watch-list';
import type { NoteList } from '@/app/_server/watch/watch-note';
import { watchNotes } from '@/app/_server/watch/watch-notes';
import { BellSetting } from '@/app/_ui/bell/bell-setting';
import { Empty } from '@/app/_ui/empty';
import { LinkKey } from '@/app/_ui/keys';
import { Page } from '@/app/_ui/page';
import { RibbonTable } from '@/app/_ui/rule/ribbon-table';
import { Section } from '@/app/_ui/section';
import { LaidOutKey } from '@/app/(shop)/watch/_ui/laid-out-key';
import styles from '@/app/(shop)/watch/_ui/watch.module.css';
import { WatchRows } from '@/app/(shop)/watch/_ui/watch-rows';
import { NOTE_SECTIONS } from '@/app/(shop)/watch/note-sections';
import { pieceWatchRow, ribbonRow, watchRow } from '@/app/(shop)/watch/watch-row';
import { watchSpan } from '@/app/(shop)/watch/watch-span';
import { sayDate } from '@/shared/calendar/say-date';
import { RAG_CAUTION } from '@/shared/hazards/self-heating';
import type { CurrencyCode } from '@/shared/units/currency';
import { minorUnits } from '@/shared/units/minor-units';
import { printMoney } from '@/shared/units/print-money';

export const metadata: Metadata = { title: 'Watch' };

/** How many lines of a list are shown at first, and at most when it was asked for. */
const FEW = 12;
const MOST = 400;

const BEFORE_RULE: [WatchList, title: string][] = [
  ['on-hold', 'On hold'],
  ['spoilt', 'Spoilt'],
  ['retest', 'To test again'],
];
const AFTER_RULE: [WatchList, title: string][] = [
  ['forgotten', 'Opened and forgotten'],
  ['undated', 'No date'],
  ['unconfirmed', 'Dates to confirm'],
];

export default async function WatchPage({ searchParams }: { searchParams: Promise<{ all?: string | string[] }> }) {
  const { all } = await searchParams;
  const { book, head } = await bookForPage();
  const [watch, notes] = await Promise.all([readWatch(book, head), watchNotes(book, head)]);
  const { today, units: prefer, dateOrder: order } = head;
  const shown = <T,>(list: string, rows: readonly T[]) => rows.slice(0, all === list ? MOST : FEW);
  const onRule = [...watch.lists.expired.groups, ...watch.lists.expiring.groups];
  // Both sides of today have their share, the nearest to it: many long past must not hide what is to be used first.
  const aSide = all === 'rule' ? MOST / 2 : FEW;
  const rule = [...watch.lists.expired.groups.slice(-aSide), ...watch.lists.expiring.groups.slice(0, aSide)];
  const limits = rule.flatMap(({ verdict }) => verdict.governing?.lastGoodDay ?? []);
  const ruleTitle = [
    watch.lists.expired.containers ? 'Past their day' : '',
    watch.lists.expiring.containers ? 'To use first' : '',
  ].filter(Boolean);
  const quiet = sayWatch(watch, notes);
  const isQuiet =
    onRule.length === 0 &&
    watch.heldPieceCount === 0 &&
    Object.values(notes).every((lines) => lines.length === 0) &&
    [...BEFORE_RULE, ...AFTER_RULE].every(([list]) => watch.lists[list].containers === 0);

  const listSection = ([list, title]: [WatchList, string]) => {
    const { groups, containers } = watch.lists[list];
    if (groups.length === 0) return null;
    const rows = shown(list, groups);
    return (
      <WatchSection
        key={list}
        list={list}
        title={title}
        containers={containers}
        shown={rows.length}
        groups={groups.length}
      >
        <WatchRows label={title} rows={rows.map((one: Watched) => watchRow(list, one, { today, order, prefer }))} />
      </WatchSection>
    );
  };

  const noteSection = (list: NoteList, under?: ReactNode) => {
    const lines = notes[list];
    if (lines.length === 0) return null;
    const rows = shown(list, lines);
    const { title, one, many } = NOTE_SECTIONS[list];
    return (
      <WatchSection
        list={list}
        title={title}
        containers={lines.length}
        unit={one}
        units={many}
        shown={rows.length}
        groups={lines.length}
        order={list === 'bench' ? 'the earliest first' : undefined}
      >
        {under}
        <WatchRows label={title} rows={rows} />
        {list === 'rags' ? (
          <div className={styles.more}>
            <LaidOutKey />
          </div>
        ) : null}
      </WatchSection>
    );
  };
  const atRisk = watch.lists.expiring.costMinor;
  const money = printMoney(minorUnits(atRisk), head.currency as CurrencyCode);

  return (
    <Page title="Watch" context={sayDate(today, { order })} settings>
      {isQuiet ? (
        <Empty
          title={quiet}
          toDo={
            watch.containers === 0
              ? 'There is no tin or jug in the book yet. What you book in under Arrive is watched from then on: dates, holds, and what was opened and forgotten.'
              : `All ${watch.containers} containers in the shop were looked at: none is on hold, past its day, near it, forgotten or without a date.`
          }
        >
          {watch.containers === 0 ? <LinkKey href="/arrive">Book something in</LinkKey> : null}
        </Empty>
      ) : (
        <p className={styles.sum}>{quiet}</p>
      )}
      {noteSection(
        'rags',
        <div className={styles.caution}>
          <p>
            <strong>{RAG_CAUTION.danger}</strong>
          </p>
          <p>{RAG_CAUTION.todo}</p>
          <p className={styles.soft}>{RAG_CAUTION.defers}</p>
        </div>,
      )}
      {noteSection('bench')}
      {BEFORE_RULE.map(listSection)}
      {noteSection('pairs')}
      {noteSection('planned')}
      {noteSection('due')}
      {onRule.length > 0 ? (
        <WatchSection
          list="rule"
          title={ruleTitle.join(', and ').replace('and To', 'and to')}
          containers={watch.lists.expired.containers + watch.lists.expiring.containers}
          shown={rule.length}
          groups={onRule.length}
          order="those nearest to today"
          beside={atRisk > 0 ? `${money} at risk in what is to be used first` : undefined}
        >
          <RibbonTable
            {...watchSpan(limits, today)}
            today={today}
            order={order}
            label="Shelf life, the earliest limit first"
            rows={rule.map((one) => ribbonRow(one, { today, order }))}
          />
        </WatchSection>
      ) : null}
      {noteSection('samples')}
      {noteSection('readings')}
      {AFTER_RULE.map(listSection)}
      {noteSection('idle')}
      {watch.heldPieceCount > 0 ? (
        <WatchSection
          list="wood"
          title="Wood on hold"
          containers={watch.heldPieceCount}
          unit="piece"
          shown={shown('wood', watch.heldPieces).length}
          groups={watch.heldPieceCount}
        >
          <WatchRows
            label="Wood on hold"
            rows={shown('wood', watch.heldPieces).map((piece) => pieceWatchRow(piece, today))}
          />
        </WatchSection>
      ) : null}
      <p>
        <Link href="/samples">The shelf of kept samples</Link>
      </p>
      <Section title="Without looking here">
        <div className={styles.ways}>
          <BellSetting />
          <div>
            <p>Every day in the book can stand in your own calendar too.</p>
            <p className={styles.more}>
              <LinkKey href="/settings#calendar" variant="ghost">
                The calendar’s address
              </LinkKey>
            </p>
          </div>
        </div>
      </Section>
    </Page>
  );
}

interface WatchSectionProps {
  list: string;
  title: string;
  containers: number;
  unit?: string;
  units?: string;
  /** Said beside the count. */
  beside?: string;
  /** Lines shown, of how many. */
  shown: number;
  groups: number;
  /** Which ones are shown first. */
  order?: string;
  children: ReactNode;
}

/** One list under its title, with the way to the rest of it. Says so when even that is not all. */
function WatchSection({
  list,
  title,
  containers,
  unit = 'container',
  units = `${unit}s`,
  beside,
  shown,
  groups,
  order = 'the most urgent first',
  children,
}: WatchSectionProps) {
  return (
    <Section
      title={<span id={list}>{title}</span>}
      aside={[`${containers.toLocaleString('en')} ${containers === 1 ? unit : units}`, beside]
        .filter(Boolean)
        .join(', ')}
    >
      {children}
      {shown < groups ? (
        <div className={styles.more}>
          <span>
            {shown} of {groups.toLocaleString('en')} lines are shown, {order}.
          </span>
          {shown <= 2 * FEW ? (
            <LinkKey href={`/watch?all=${list}#${list}`} variant="ghost">
              {groups > MOST ? `Show the first ${MOST}` : `Show all ${groups}`}
            </LinkKey>
          ) : null}
        </div>
      ) : null}
    </Section>
  );
}
