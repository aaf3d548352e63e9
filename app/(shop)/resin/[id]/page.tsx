import type { Metadata } from 'next';
import Link from 'next/link';
import { notFound } from 'next/navigation';
import { cache } from 'react';
import { bookForPage } from '@/app/_server/book/book-for-page';
import { systemPage } from '@/app/_server/pours/read-systems';
import { Facts } from '@/app/_ui/facts';
import { Fold } from '@/app/_ui/fold';
import { Page } from '@/app/_ui/page';
import { Section } from '@/app/_ui/section';
import { HistorySection } from '@/app/(shop)/_parts/history-section';
import { readId } from '@/app/(shop)/_parts/read-id';
import styles from '@/app/(shop)/jobs/[id]/pours/_ui/pours.module.css';
import { SheetForm } from '@/app/(shop)/resin/_ui/sheet-form';
import { sayFrom, sayLives, sayRatioCheck, sheetFacts } from '@/app/(shop)/resin/say-sheet';
import { typeSheet } from '@/app/(shop)/resin/typed-sheet';
import { dateIn } from '@/shared/calendar/date-in';
import { sayDate } from '@/shared/calendar/say-date';

type Props = { params: Promise<{ id: string }> };

const systemOf = cache(async (params: Props['params']) => {
  const id = readId((await params).id);
  if (id === undefined) return undefined;
  const { book } = await bookForPage();
  return systemPage(book, id);
});

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  return { title: (await systemOf(params))?.system.name ?? 'Resin' };
}

/** One resin system: what its data sheet says, its parts, and the form to write the sheet down. */
export default async function SystemPage({ params }: Props) {
  const page = await systemOf(params);
  if (!page) notFound();
  const { head } = await bookForPage();
  const { system, older } = page;
  const { units, today, dateOrder: order, timeZone } = head;
  const { sheet } = system;
  const on = (at: string) => sayDate(dateIn(timeZone, new Date(at)), { order, today });
  const check = sheet && sayRatioCheck(sheet.facts);
  return (
    <Page
      title={system.name}
      context={sheet ? sayFrom(sheet.facts) : 'no numbers yet'}
      back={{ href: '/resin', words: 'Resin' }}
    >
      <div className={styles.columns}>
        <div>
          {sheet ? (
            <Section title="What the sheet says" aside={`${sheet.who}, ${on(sheet.at)}`}>
              <Facts facts={sheetFacts(sheet.facts, units)} />
              {check ? <p className={styles.soft}>{check.says}</p> : null}
              {sheet.kept ? (
                <p>
                  <a href={`/sheets/${sheet.kept.file}`}>
                    Open the sheet itself: {sheet.kept.fileName || 'data sheet'}
                  </a>
                </p>
              ) : (
                <p className={styles.defer}>Typed, no sheet: nothing but these numbers is in the book.</p>
              )}
            </Section>
          ) : null}
          <Section title="Its parts">
            <ul className={styles.list} aria-label="Parts">
              {system.parts.map((part) => (
                <li key={part.productId}>
                  <Link href={`/products/${part.productId}`} className={styles.row}>
                    <b>
                      {part.part}: {part.name}
                    </b>
                    <span>{part.densityGramsPerLitre ? `${part.densityGramsPerLitre} g/L` : ''}</span>
                    <span className={styles.soft}>Keeps {sayLives(part)}</span>
                  </Link>
                </li>
              ))}
            </ul>
          </Section>
          {older.length > 0 ? (
            <Fold title="Sheets before" now={`${older.length}`}>
              {older.map((each) => (
                <Section key={each.id} title={`${on(each.at)}, ${each.who}`} aside={sayFrom(each.facts)}>
                  <Facts facts={sheetFacts(each.facts, units)} />
                  {each.kept ? <a href={`/sheets/${each.kept.file}`}>Open that sheet</a> : null}
                </Section>
              ))}
            </Fold>
          ) : null}
        </div>
        <div>
          <Section title={sheet ? 'Write it down anew' : 'Write the sheet down'}>
            <p className={styles.soft}>
              Only what the sheet says; what it does not say stays empty. The maker’s sheet goes before anything here.
            </p>
            <SheetForm
              key={sheet?.id ?? 0}
              systemId={system.id}
              name={system.name}
              typed={typeSheet(sheet?.facts ?? firstFacts(system.parts), units)}
              fileName={sheet?.kept?.fileName ?? null}
              units={units}
            />
          </Section>
        </div>
      </div>
      {system.parts[0] ? <HistorySection of={{ productId: system.parts[0].productId }} /> : null}
    </Page>
  );
}

/** Densities the products already say, to begin with. */
function firstFacts(parts: readonly { part: 'A' | 'B'; densityGramsPerLitre: number | null }[]) {
  const density = (part: 'A' | 'B') => parts.find((each) => each.part === part)?.densityGramsPerLitre ?? undefined;
  return { from: 'typed' as const, depths: [], densityA: density('A'), densityB: density('B') };
}
