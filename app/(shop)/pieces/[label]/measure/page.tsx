import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { bookForPage } from '@/app/_server/book/book-for-page';
import { toMeasure } from '@/app/_server/shapes/to-measure';
import { Empty } from '@/app/_ui/empty';
import { Page } from '@/app/_ui/page';
import { labelOfPage, titleOfLabel } from '@/app/(shop)/_parts/label-of-page';
import { MeasureForm } from '@/app/(shop)/pieces/[label]/measure/_ui/measure-form';
import { chalkAsTyped } from '@/app/(shop)/pieces/[label]/measure/chalk';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';

type Props = { params: Promise<{ label: string }> };

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  return { title: `Measure ${await titleOfLabel(params, 'a piece')}` };
}

export default async function MeasurePage({ params }: Props) {
  const label = await labelOfPage(params, 'pieces');
  const { book, head } = await bookForPage();
  const piece = await toMeasure(book, label);
  if (!piece) notFound();
  const shown = printOwnLabel(label);
  const trouble = !piece.line.facts.inStock
    ? { title: 'It is no longer in the shop.', toDo: 'Its history says what became of it.' }
    : piece.line.form === 'pack'
      ? { title: 'A pack of boards has no outline.', toDo: 'Take a board out of it, and measure that.' }
      : undefined;
  return (
    <Page title="Measure its outline" context={shown} back={{ href: `/pieces/${label}`, words: shown }}>
      {trouble ? (
        <Empty {...trouble} />
      ) : (
        <MeasureForm
          label={label}
          begun={chalkAsTyped(piece.chalkLine, head.units)}
          isMeasured={piece.isMeasured}
          prefer={head.units}
        />
      )}
    </Page>
  );
}
