import type { Metadata } from 'next';
import Link from 'next/link';
import { notFound } from 'next/navigation';
import { bookForPage } from '@/app/_server/book/book-for-page';
import { airOfPlace } from '@/app/_server/climate/read-air';
import { outlineOfPiece } from '@/app/_server/fits/outline-of-piece';
import { listJobs } from '@/app/_server/jobs/read-jobs';
import { listPlaces } from '@/app/_server/places/place-page';
import { placeChoices, placeTree } from '@/app/_server/places/place-tree';
import { marksOffTheWood } from '@/app/_server/shapes/off-the-wood';
import { readShape } from '@/app/_server/shapes/read-shape';
import { readSellerFigures } from '@/app/_server/shapes/seller-figures';
import { listSpecies } from '@/app/_server/stock/list-species';
import { piecePage } from '@/app/_server/stock/piece-page';
import { readingsOfPiece } from '@/app/_server/stock/readings-of-piece';
import { Code } from '@/app/_ui/code';
import { Facts } from '@/app/_ui/facts';
import { LinkKey } from '@/app/_ui/keys';
import { Page } from '@/app/_ui/page';
import { Section } from '@/app/_ui/section';
import { DiscardAct } from '@/app/(shop)/_parts/acts/discard-act';
import { HoldAct } from '@/app/(shop)/_parts/acts/hold-act';
import { MoveAct } from '@/app/(shop)/_parts/acts/move-act';
import { PhotoAct } from '@/app/(shop)/_parts/acts/photo-act';
import { HistorySection } from '@/app/(shop)/_parts/history-section';
import { labelOfPage, titleOfLabel } from '@/app/(shop)/_parts/label-of-page';
import { Photos } from '@/app/(shop)/_parts/stock/photos';
import { pieceRow } from '@/app/(shop)/_parts/stock/piece-row';
import { PieceWall } from '@/app/(shop)/_parts/stock/piece-wall';
import { PrintLabel } from '@/app/(shop)/_parts/stock/print-label';
import { PromisedTo } from '@/app/(shop)/_parts/stock/promised-to';
import styles from '@/app/(shop)/_parts/stock/stock.module.css';
import { FaultsOfThing } from '@/app/(shop)/faults/_parts/faults-of-thing';
import { pourHref } from '@/app/(shop)/on-hand/fits/pour-href';
import { ChangePieceAct } from '@/app/(shop)/pieces/_ui/change-piece-act';
import { FamilyPart } from '@/app/(shop)/pieces/_ui/family-part';
import { GiveAct } from '@/app/(shop)/pieces/_ui/give-act';
import { PackPart } from '@/app/(shop)/pieces/_ui/pack-part';
import { PairPart } from '@/app/(shop)/pieces/_ui/pair-part';
import { PiecePicture } from '@/app/(shop)/pieces/_ui/piece-picture';
import { PieceVerdictToday } from '@/app/(shop)/pieces/_ui/piece-verdict-today';
import { ReadingAct } from '@/app/(shop)/pieces/_ui/reading-act';
import { ReadingsTable } from '@/app/(shop)/pieces/_ui/readings-table';
import { SellerAct } from '@/app/(shop)/pieces/_ui/seller-act';
import { SellerPart } from '@/app/(shop)/pieces/_ui/seller-part';
import { WoodFigures } from '@/app/(shop)/pieces/_ui/wood-figures';
import { MarkList } from '@/app/(shop)/pieces/[label]/marks/_ui/mark-list';
import { sayMarksOfBefore } from '@/app/(shop)/pieces/[label]/marks/say-marks-of-before';
import { compareSeller } from '@/app/(shop)/pieces/compare-seller';
import { figuredPiece } from '@/app/(shop)/pieces/figured-piece';
import { ourFigures } from '@/app/(shop)/pieces/our-figures';
import { packView } from '@/app/(shop)/pieces/pack-view';
import { pairChoices } from '@/app/(shop)/pieces/pair-choices';
import { pieceAsTyped } from '@/app/(shop)/pieces/piece-as-typed';
import { pieceFacts } from '@/app/(shop)/pieces/piece-facts';
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
  const [places, jobs, species, shape, seller, readings, air] = await Promise.all([
    listPlaces(book),
    listJobs(book, 'open'),
    listSpecies(book),
    readShape(book, line.stockId, head.timeZone),
    readSellerFigures(book, line.stockId),
    readingsOfPiece(book, line.stockId),
    line.placeLabel ? airOfPlace(book, { label: line.placeLabel }, today) : undefined,
  ]);
  const figured = figuredPiece(line, prefer);
  const sisters = page.flitch.filter((each) => each.stockId !== line.stockId);
  const hold = HOLD_STATES.find((state) => state === line.facts.hold) ?? 'free';
  const shown = printOwnLabel(line.label);
  const meant = speciesMeant(line.species);
  const typed = pieceAsTyped(line, prefer);
  const pack = line.form === 'pack' ? packView(line, seller.volumeMm3, prefer) : undefined;
  const isToFill = line.marks.defects.some(({ decision }) => decision === 'fill');
  const isMarked = countMarks(line.marks) > 0;
  const outline = outlineOfPiece(line);
  const compared = pack ? [] : compareSeller(seller, figured, ourFigures(line, figured, meant), prefer);

  return (
    <Page title={row.title} context={<Code>{shown}</Code>} back={{ href: '/on-hand?show=wood', words: 'On hand' }}>
      <PieceVerdictToday verdict={judgePiece(line.facts, today)} gone={row.usedUp} isSheet={line.form === 'sheet'}>
        <PiecePicture line={line} row={row} shape={shape} head={head} />
      </PieceVerdictToday>
      {pack ? <PackPart label={line.label} pack={pack} prefer={prefer} gone={row.usedUp} /> : null}
      <div className={styles.columns}>
        <div>
          <Section title={`This ${line.form}`}>
            <Facts facts={pieceFacts(line, meant, head)} />
            <PromisedTo stockId={line.stockId} unit="piece" left={line.facts.inStock ? 1 : 0} />
          </Section>
          {isMarked ? (
            <Section title="Marked on it">
              {line.marksOfBefore.length > 0 ? (
                <p className={styles.how}>
                  {sayMarksOfBefore(line.marksOfBefore.length)}{' '}
                  <Link href={`/pieces/${label}/marks`}>Look whether they lie where they should</Link>
                </p>
              ) : null}
              <MarkList
                marks={line.marks}
                prefer={prefer}
                off={outline.ok ? marksOffTheWood(outline.value, line.marks) : []}
              />
              {isToFill && line.facts.inStock ? (
                <p className={styles.keysRow}>
                  <LinkKey
                    variant="ghost"
                    href={pourHref('', { of: 'fills', labels: [line.label], marks: [] }, line.facts.promisedTo?.id)}
                  >
                    Plan the pour of its fills
                  </LinkKey>
                </p>
              ) : null}
            </Section>
          ) : null}
          {compared.length > 0 ? (
            <Section title="The seller’s figures">
              <SellerPart name={seller.name} rows={compared} />
            </Section>
          ) : null}
          <Section title="Moisture readings">
            <ReadingsTable label={line.label} readings={readings} prefer={prefer} today={today} order={order} />
          </Section>
          <Section title="Worked out">
            <WoodFigures piece={figured} meant={meant} air={air} prefer={prefer} today={today} order={order} />
          </Section>
        </div>
        <div>
          {page.undoneFrom ? (
            <Section title="It never was">
              <p>
                The cut that made it was undone.{' '}
                <Link href={`/pieces/${page.undoneFrom}`}>{printOwnLabel(page.undoneFrom)}</Link> is in one piece in the
                book. Throw this label away.
              </p>
            </Section>
          ) : (
            <Section title="Write about it">
              {row.usedUp ? null : (
                <GiveAct
                  key={line.facts.promisedTo?.id ?? 0}
                  label={line.label}
                  jobs={jobs}
                  promisedTo={line.facts.promisedTo ?? null}
                  pairedWith={line.pairedWith}
                />
              )}
              <ReadingAct
                label={line.label}
                today={today}
                order={order}
                now={row.moisture}
                meter={line.readings[0]?.meter ?? ''}
                prefer={prefer}
                length={line.lengthNm}
                outline={line.shape?.outline}
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
          )}
          <Photos photos={page.photos} of={shown} />
        </div>
      </div>
      <FamilyPart book={book} stockId={line.stockId} prefer={prefer} />
      {page.undoneFrom ? null : (
        <PairPart label={line.label} pairedWith={line.pairedWith} choices={pairChoices(line, page.flitch)} />
      )}
      {sisters.length > 0 ? (
        <Section title={`Flitch ${line.flitch}, in sawn order`} aside={`${page.flitch.length} in all`}>
          <PieceWall
            rows={page.flitch.map((each) => pieceRow(each, { today, order, prefer }))}
            label={`Flitch ${line.flitch}`}
            here={line.label}
          />
        </Section>
      ) : null}
      <FaultsOfThing
        stockId={line.stockId}
        label={line.label}
        kind="piece"
        drawing={outline.ok && line.form !== 'pack' ? { outline: outline.value, marks: line.marks } : undefined}
      />
      <HistorySection of={{ stockId: line.stockId }} />
    </Page>
  );
}
