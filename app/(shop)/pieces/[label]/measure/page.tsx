import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { bookForPage } from '@/app/_server/book/book-for-page';
import { toMeasure } from '@/app/_server/shapes/to-measure';
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
  return (
    <Page title="Measure its outline" context={shown} back={{ href: `/pieces/${label}`, words: shown }}>
      <MeasureForm
        label={label}
        begun={chalkAsTyped(piece.chalkLine, head.units)}
        isMeasured={piece.isMeasured}
        prefer={head.units}
      />
    </Page>
  );
}
