import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import type { CSSProperties } from 'react';
import { bookForPage } from '@/app/_server/book/book-for-page';
import { outlineOfPiece } from '@/app/_server/fits/outline-of-piece';
import { readShape } from '@/app/_server/shapes/read-shape';
import { loadPiece } from '@/app/_server/stock/load-piece';
import { Facts } from '@/app/_ui/facts';
import { previewLink } from '@/app/_ui/labels/label-links';
import { Page } from '@/app/_ui/page';
import { SlabDrawing } from '@/app/_ui/slab/slab-drawing';
import { labelOfPage, titleOfLabel } from '@/app/(shop)/_parts/label-of-page';
import { pieceRow } from '@/app/(shop)/_parts/stock/piece-row';
import { ReadingDots } from '@/app/(shop)/pieces/_ui/reading-dots';
import { sayMarks } from '@/app/(shop)/pieces/[label]/marks/say-marks';
import styles from '@/app/(shop)/pieces/[label]/print/_ui/print.module.css';
import { PrintKey } from '@/app/(shop)/pieces/[label]/print/_ui/print-key';
import { measuredFacts } from '@/app/(shop)/pieces/measured-facts';
import { pieceFacts } from '@/app/(shop)/pieces/piece-facts';
import { placedReadings } from '@/app/(shop)/pieces/placed-readings';
import { sayReading } from '@/app/(shop)/pieces/say-reading';
import { sayShape } from '@/app/(shop)/pieces/say-shape';
import { sayDate } from '@/shared/calendar/say-date';
import type { Outline } from '@/shared/outline/outline';
import { boundsOf } from '@/shared/outline/outline-bounds';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';
import { speciesMeant } from '@/shared/wood/species-meant';

type Props = { params: Promise<{ label: string }> };

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  return { title: `${await titleOfLabel(params, 'Piece')} to print` };
}

/** As many as leave the page one page; the rest are counted. */
const MOST_READINGS = 8;
const MOST_MARKS = 10;
/** So few leave room for the readings beside the facts. */
const FEW_MARKS = 4;

/** One page to hang beside the wood: its drawing, what is known of it, its label. */
export default async function PrintPiecePage({ params }: Props) {
  const label = await labelOfPage(params, 'pieces');
  const { book, head } = await bookForPage();
  const line = await loadPiece(book.read, label);
  if (!line) notFound();
  const shape = await readShape(book, line.stockId, head.timeZone);
  const outline = line.form === 'pack' ? undefined : outlineOfPiece(line);
  const { today, units: prefer, dateOrder: order } = head;
  const row = pieceRow(line, { today, prefer, order });
  const shown = printOwnLabel(label);
  const marks = sayMarks(line.marks, prefer);
  const moisture =
    line.readings.length > 0 ? (
      <>
        <h2 className={styles.title}>Moisture</h2>
        <ul className={styles.readings}>
          {line.readings.slice(0, MOST_READINGS).map((reading, nr) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a page to print never changes.
            <li key={nr}>
              {sayDate(reading.takenOn, { order, today })}: {sayReading(reading, prefer)}
            </li>
          ))}
          {more(line.readings.length, MOST_READINGS, 'older reading')}
        </ul>
      </>
    ) : null;
  return (
    <div className={styles.sheet}>
      <Page title={row.title} context={shown} back={{ href: `/pieces/${label}`, words: shown }}>
        {outline?.ok ? (
          <div className={styles.drawing} style={{ '--slab-ratio': ratioOf(outline.value) } as CSSProperties}>
            <SlabDrawing outline={outline.value} marks={line.marks} live={row.shape.liveEdges} label={row.drawn} lined>
              <ReadingDots outline={outline.value} readings={placedReadings(line.readings)} />
            </SlabDrawing>
          </div>
        ) : null}
        <p className={styles.how}>
          {!outline ? '' : shape ? sayShape(shape, head) : 'Drawn to scale from its length and three widths.'}
        </p>
        <div className={styles.columns}>
          <div>
            <Facts facts={[...pieceFacts(line, speciesMeant(line.species), head), ...measuredFacts(line, prefer)]} />
            {marks.length > FEW_MARKS ? moisture : null}
          </div>
          <div>
            {/* biome-ignore lint/performance/noImgElement: a drawing made by our own server needs no image optimiser */}
            <img
              className={styles.label}
              src={previewLink(label, { format: '62x29', symbology: 'data-matrix', copies: 1, placeCopies: 1 })}
              alt={`Its label ${shown}`}
            />
            <h2 className={styles.title}>Marked on it</h2>
            {marks.length === 0 ? <p className={styles.how}>Nothing is marked on it.</p> : null}
            <ul className={styles.marks}>
              {marks.slice(0, MOST_MARKS).map(({ id, title, where, note }) => (
                <li key={id}>
                  <b>{title}:</b> {where}
                  {note ? `. ${note}` : ''}
                </li>
              ))}
              {more(marks.length, MOST_MARKS, 'mark')}
            </ul>
            {marks.length > FEW_MARKS ? null : moisture}
          </div>
        </div>
        <p className={styles.made}>
          {head.name}, {sayDate(today, { order })}
        </p>
        <PrintKey />
      </Page>
    </div>
  );
}

/** Length over width: how much of the paper's width a slab may take before it is too high for one page. */
function ratioOf({ ring }: Outline): number {
  const { left, right, bottom, top } = boundsOf(ring);
  return (right - left) / Math.max(1, top - bottom);
}

function more(count: number, most: number, what: string) {
  if (count <= most) return null;
  const left = count - most;
  return (
    <li>
      And {left} {what}
      {left === 1 ? '' : 's'} more, in the book.
    </li>
  );
}
