import { bookForPage } from '@/app/_server/book/book-for-page';
import { FINISH_KINDS } from '@/app/_server/finish/list-finishes';
import { readFinishSheet } from '@/app/_server/finish/read-finish-sheet';
import { Facts } from '@/app/_ui/facts';
import { Section } from '@/app/_ui/section';
import { FinishSheetForm } from '@/app/(shop)/products/_ui/finish-sheet-form';
import list from '@/app/(shop)/products/_ui/products.module.css';
import { sayCoverage } from '@/shared/finish/coverage-text';
import type { FinishSheet } from '@/shared/finish/finish-sheet';
import type { UnitSystem } from '@/shared/units/unit-system';

/** What a finish's sheet says, with the form that writes it down; nothing where the product is no finish. */
export async function FinishSheetSection({ productId, kind }: { productId: number; kind: string }) {
  if (!FINISH_KINDS.includes(kind)) return null;
  const { book, head } = await bookForPage();
  const sheet = (await readFinishSheet(book.read, productId)) ?? null;
  return (
    <Section
      title="In coats"
      aside={sheet ? (sheet.from === 'sheet' ? 'by its data sheet' : 'typed without a sheet') : undefined}
    >
      {sheet ? (
        <Facts facts={sheetFacts(sheet, head.units)} />
      ) : (
        <p className={list.soft}>
          Its data sheet is not in the book: coats of it cannot be reckoned, and nothing says when it may leave the
          shop.
        </p>
      )}
      <FinishSheetForm key={JSON.stringify(sheet)} productId={productId} sheet={sheet} prefer={head.units} />
    </Section>
  );
}

function sheetFacts(sheet: FinishSheet, prefer: UnitSystem) {
  const { coverageTenths, coats, recoatFromHours, recoatToHours, cureDays, sandBetween } = sheet;
  const unsaid = 'The sheet does not say';
  const until = recoatToHours === undefined ? '' : `, to ${recoatToHours} hours; after that sand first`;
  return [
    { term: 'Goes', value: coverageTenths === undefined ? unsaid : sayCoverage(coverageTenths, { prefer }) },
    { term: 'Coats', value: coats === undefined ? unsaid : String(coats) },
    {
      term: 'Coat again',
      value: recoatFromHours === undefined ? `${unsaid}: a day is waited` : `From ${recoatFromHours} hours${until}`,
    },
    { term: 'Cured', value: cureDays === undefined ? unsaid : `After ${cureDays} ${cureDays === 1 ? 'day' : 'days'}` },
    ...(sandBetween ? [{ term: 'Between coats', value: 'Sand every one' }] : []),
  ];
}
