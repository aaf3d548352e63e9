import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { bookForPage } from '@/app/_server/book/book-for-page';
import { listJobs } from '@/app/_server/jobs/read-jobs';
import { listPlaces } from '@/app/_server/places/place-page';
import { placeChoices, placeTree } from '@/app/_server/places/place-tree';
import { readShape } from '@/app/_server/shapes/read-shape';
import { readSellerFigures } from '@/app/_server/shapes/seller-figures';
import { listSpecies } from '@/app/_server/stock/list-species';
import { piecePage } from '@/app/_server/stock/piece-page';
import { Code } from '@/app/_ui/code';
import { Facts } from '@/app/_ui/facts';
import { LinkKey } from '@/app/_ui/keys';
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
import { PackPart } from '@/app/(shop)/pieces/_ui/pack-part';
import { PieceVerdictToday } from '@/app/(shop)/pieces/_ui/piece-verdict-today';
import { ReadingAct } from '@/app/(shop)/pieces/_ui/reading-act';
import { SellerAct } from '@/app/(shop)/pieces/_ui/seller-act';
import { SellerPart } from '@/app/(shop)/pieces/_ui/seller-part';
import { SlabPart } from '@/app/(shop)/pieces/_ui/slab-part';
import { WoodFigures } from '@/app/(shop)/pieces/_ui/wood-figures';
import { MarkList } from '@/app/(shop)/pieces/[label]/marks/_ui/mark-list';
import { compareSeller } from '@/app/(shop)/pieces/compare-seller';
import { figuredPiece } from '@/app/(shop)/pieces/figured-piece';
import { ourFigures } from '@/app/(shop)/pieces/our-figures';
import { packView } from '@/app/(shop)/pieces/pack-view';
import { pieceAsTyped } from '@/app/(shop)/pieces/piece-as-typed';
import { pieceFacts } from '@/app/(shop)/pieces/piece-facts';
import { placedReadings } from '@/app/(shop)/pieces/placed-readings';
import { sayShape } from '@/app/(shop)/pieces/say-shape';
import { sayDate } from '@/shared/calendar/say-date';
import { countMarks } from '@/shared/outline/piece-marks';
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
  const row = pieceRow(line, { today, order, prefer });
  const [places, jobs, species, shape, seller] = await Promise.all([
    listPlaces(book),
    listJobs(book, 'open'),
    listSpecies(book),
    readShape(book, line.stockId, head.timeZone),
    readSellerFigures(book, line.stockId),
  ]);
  const figured = figuredPiece(line, prefer);
  const sisters = page.flitch.filter((each) => each.stockId !== line.stockId);
  const hold = HOLD_STATES.find((state) => state === line.facts.hold) ?? 'free';
  const shown = printOwnLabel(line.label);
  const meant = speciesMeant(line.species);
  const typed = pieceAsTyped(line, prefer);
  const pack = line.form === 'pack' ? packView(line, seller.volumeMm3, prefer) : undefined;
  const compared = pack ? [] : compareSeller(seller, figured, ourFigures(line, figured, meant), prefer);

  return (
    <Page title={row.title} context={<Code>{shown}</Code>} back={{ href: '/on-hand?show=wood', words: 'On hand' }}>
      <PieceVerdictToday verdict={judgePiece(line.facts, today)} gone={row.usedUp} />
      {line.shape && shape ? (
        <SlabPart
          key={line.shape.id}
          outline={line.shape.outline}
          marks={line.marks}
          photo={shape.photo ? { ...shape.photo, src: `/photos/${shape.photo.file}` } : undefined}
          readings={placedReadings(line.readings)}
          label={row.drawn}
        >
          <p className={styles.how}>{sayShape(shape, head)}</p>
        </SlabPart>
      ) : line.form === 'pack' ? null : (
        <>
          <div className={styles.large}>
            <PieceDrawing name={line.label} shape={row.shape} marks={row.marks} words={row.onWood} label={row.drawn} />
          </div>
          <DrawnHow rows={[row]} />
        </>
      )}
      {row.usedUp || line.form === 'pack' ? null : (
        <div className={styles.drawingKeys}>
          <LinkKey variant={line.shape ? 'ghost' : 'main'} href={`/pieces/${line.label}/measure`}>
            {line.shape ? 'Measure it again' : 'Measure its outline'}
          </LinkKey>
          <LinkKey variant="ghost" href={`/pieces/${line.label}/marks`}>
            {countMarks(line.marks) > 0 ? 'Change its marks' : 'Mark what is wrong'}
          </LinkKey>
          <LinkKey variant="ghost" href={`/pieces/${line.label}/print`}>
            Print its page
          </LinkKey>
        </div>
      )}
      {pack ? <PackPart label={line.label} pack={pack} prefer={prefer} gone={row.usedUp} /> : null}
      <div className={styles.columns}>
        <div>
          <Section title={`This ${line.form}`}>
            <Facts facts={pieceFacts(line, meant, head)} />
          </Section>
          {countMarks(line.marks) > 0 ? (
            <Section title="Marked on it">
              <MarkList marks={line.marks} prefer={prefer} />
            </Section>
          ) : null}
          {compared.length > 0 ? (
            <Section title="The seller’s figures">
              <SellerPart name={seller.name} rows={compared} />
            </Section>
          ) : null}
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
                      <td>{sayDate(reading.takenOn, { order, today })}</td>
                      <td>{reading.mcTenths / 10} %</td>
                      <td>{[reading.spot, reading.meter].filter(Boolean).join(', ') || 'Not noted'}</td>
                    </tr>
                  ))}
                </tbody>
              </table>
            )}
          </Section>
          <Section title="Worked out">
            <WoodFigures piece={figured} meant={meant} prefer={prefer} today={today} order={order} />
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
            <SellerAct key={JSON.stringify(seller)} label={line.label} said={seller} prefer={prefer} />
            <MoveAct
              label={line.label}
              places={placeChoices(placeTree(places))}
              here={line.placeLabel}
              hereWords={line.place}
            />
            <HoldAct key={hold} stockId={line.stockId} hold={hold} thing={`this ${line.form}`} states={WOOD_HOLDS} />
            <PhotoAct stockId={line.stockId} />
            {row.usedUp ? null : (
              <DiscardAct label={line.label} what={`the ${line.form}`} today={today} order={order} />
            )}
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
            rows={page.flitch.map((each) => pieceRow(each, { today, order, prefer }))}
            label={`Flitch ${line.flitch}`}
            here={line.label}
          />
        </Section>
      ) : null}
      <HistorySection of={{ stockId: line.stockId }} />
    </Page>
  );
}
