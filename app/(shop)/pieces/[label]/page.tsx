import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { bookForPage } from '@/app/_server/book/book-for-page';
import { listJobs } from '@/app/_server/jobs/read-jobs';
import { listPlaces } from '@/app/_server/places/place-page';
import { placeChoices, placeTree } from '@/app/_server/places/place-tree';
import { listSpecies } from '@/app/_server/stock/list-species';
import { piecePage } from '@/app/_server/stock/piece-page';
import { Code } from '@/app/_ui/code';
import { Facts } from '@/app/_ui/facts';
import { Page } from '@/app/_ui/page';
import { PieceDrawing } from '@/app/_ui/piece-drawing';
import { Section } from '@/app/_ui/section';
import { DiscardAct } from '@/app/(shop)/_parts/acts/discard-act';
import { HoldAct } from '@/app/(shop)/_parts/acts/hold-act';
import { MoveAct } from '@/app/(shop)/_parts/acts/move-act';
import { PhotoAct } from '@/app/(shop)/_parts/acts/photo-act';
import { HistorySection } from '@/app/(shop)/_parts/history-section';
import { labelOfPage, titleOfLabel } from '@/app/(shop)/_parts/label-of-page';
import { Photos } from '@/app/(shop)/_parts/stock/photos';
import { pieceRow } from '@/app/(shop)/_parts/stock/piece-row';
import { DrawnHow, PieceWall } from '@/app/(shop)/_parts/stock/piece-wall';
import { PrintLabel } from '@/app/(shop)/_parts/stock/print-label';
import styles from '@/app/(shop)/_parts/stock/stock.module.css';
import { ChangePieceAct } from '@/app/(shop)/pieces/_ui/change-piece-act';
import { GiveAct } from '@/app/(shop)/pieces/_ui/give-act';
import { PieceVerdictToday } from '@/app/(shop)/pieces/_ui/piece-verdict-today';
import { ReadingAct } from '@/app/(shop)/pieces/_ui/reading-act';
import { WoodFigures } from '@/app/(shop)/pieces/_ui/wood-figures';
import { figuredPiece } from '@/app/(shop)/pieces/figured-piece';
import { pieceAsTyped } from '@/app/(shop)/pieces/piece-as-typed';
import { pieceFacts } from '@/app/(shop)/pieces/piece-facts';
import { sayDate } from '@/shared/calendar/say-date';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';
import { HOLD_STATES, type HoldState } from '@/shared/shelf-life/types/lot-facts';
import { judgePiece } from '@/shared/wood/judge-piece';
import { speciesMeant } from '@/shared/wood/species-meant';

type Props = { params: Promise<{ label: string }> };

/** A maker recalls lots of material; wood is held or set apart. */
const WOOD_HOLDS: readonly HoldState[] = ['free', 'on-hold', 'quarantine'];

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  return { title: await titleOfLabel(params, 'Piece') };
}

export default async function PiecePage({ params }: Props) {
  const label = await labelOfPage(params, 'pieces');
  const { book, head } = await bookForPage();
  const { today, units: prefer, dateOrder: order } = head;
  const page = await piecePage(book, label);
  if (!page) notFound();
  const { line } = page;
  const row = pieceRow(line, { today, prefer });
  const [places, jobs, species] = await Promise.all([listPlaces(book), listJobs(book, 'open'), listSpecies(book)]);
  const sisters = page.flitch.filter((each) => each.stockId !== line.stockId);
  const hold = HOLD_STATES.find((state) => state === line.facts.hold) ?? 'free';
  const shown = printOwnLabel(line.label);
  const meant = speciesMeant(line.species);
  const typed = pieceAsTyped(line, prefer);

  return (
    <Page title={row.title} context={<Code>{shown}</Code>} back={{ href: '/on-hand?show=wood', words: 'On hand' }}>
      <PieceVerdictToday verdict={judgePiece(line.facts, today)} gone={row.usedUp} />
      <div className={styles.large}>
        <PieceDrawing name={line.label} shape={row.shape} marks={row.marks} words={row.onWood} label={row.drawn} />
      </div>
      <DrawnHow rows={[row]} />
      <div className={styles.columns}>
        <div>
          <Section title={`This ${line.form}`}>
            <Facts facts={pieceFacts(line, meant, head)} />
          </Section>
          <Section title="Moisture readings">
            {line.readings.length === 0 ? (
              <p className={styles.soft}>None yet. Read it mid-length, away from ends and knots.</p>
            ) : (
              <table className={styles.readings}>
                <thead>
                  <tr>
                    <th scope="col">Day</th>
                    <th scope="col">Reading</th>
                    <th scope="col">Where, with what</th>
                  </tr>
                </thead>
                <tbody>
                  {line.readings.map((reading, index) => (
                    // biome-ignore lint/suspicious/noArrayIndexKey: readings are appended, never moved; newest first.
                    <tr key={line.readings.length - index}>
                      <td>{sayDate(reading.takenOn, { today })}</td>
                      <td>{reading.mcTenths / 10} %</td>
                      <td>{[reading.spot, reading.meter].filter(Boolean).join(', ') || 'Not noted'}</td>
                    </tr>
                  ))}
                </tbody>
              </table>
            )}
          </Section>
          <Section title="Worked out">
            <WoodFigures piece={figuredPiece(line, prefer)} meant={meant} prefer={prefer} today={today} />
          </Section>
        </div>
        <div>
          <Section title="Write about it">
            {row.usedUp ? null : (
              <GiveAct
                key={line.facts.promisedTo?.id ?? 0}
                label={line.label}
                jobs={jobs}
                promisedTo={line.facts.promisedTo ?? null}
              />
            )}
            <ReadingAct
              label={line.label}
              today={today}
              order={order}
              now={row.moisture}
              meter={line.readings[0]?.meter ?? ''}
            />
            <ChangePieceAct
              key={JSON.stringify(typed)}
              label={line.label}
              form={line.form}
              piece={typed}
              species={species}
              prefer={prefer}
            />
            <MoveAct
              label={line.label}
              places={placeChoices(placeTree(places))}
              here={line.placeLabel}
              hereWords={line.place}
            />
            <HoldAct key={hold} stockId={line.stockId} hold={hold} thing={`this ${line.form}`} states={WOOD_HOLDS} />
            <PhotoAct stockId={line.stockId} />
            {row.usedUp ? null : <DiscardAct label={line.label} what={`the ${line.form}`} />}
            <PrintLabel label={line.label}>
              {line.form === 'slab' ? 'Print both its labels' : 'Print its label'}
            </PrintLabel>
          </Section>
          <Photos photos={page.photos} of={shown} />
        </div>
      </div>
      {sisters.length > 0 ? (
        <Section title={`Flitch ${line.flitch}, in sawn order`} aside={`${page.flitch.length} in all`}>
          <PieceWall
            rows={page.flitch.map((each) => pieceRow(each, { today, prefer }))}
            label={`Flitch ${line.flitch}`}
            here={line.label}
          />
        </Section>
      ) : null}
      <HistorySection of={{ stockId: line.stockId }} />
    </Page>
  );
}
