import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { bookForPage } from '@/app/_server/book/book-for-page';
import { toMeasure } from '@/app/_server/shapes/to-measure';
import { Empty } from '@/app/_ui/empty';
import { Page } from '@/app/_ui/page';
import { labelOfPage, titleOfLabel } from '@/app/(shop)/_parts/label-of-page';
import { PhotoForm } from '@/app/(shop)/pieces/[label]/photo/_ui/photo-form';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';

type Props = { params: Promise<{ label: string }> };

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  return { title: `Measure ${await titleOfLabel(params, 'a piece')} from a photo` };
}

export default async function PhotoPage({ params }: Props) {
  const label = await labelOfPage(params, 'pieces');
  const { book, head } = await bookForPage();
  const piece = await toMeasure(book, label);
  if (!piece) notFound();
  const shown = printOwnLabel(label);
  return (
    <Page title="Measure from a photo" context={shown} back={{ href: `/pieces/${label}`, words: shown }}>
      {piece.line.form === 'pack' ? (
        <Empty title="A pack of boards has no outline." toDo="Take a board out of it, and measure that." />
      ) : (
        <PhotoForm key={label} label={label} isMeasured={piece.isMeasured} prefer={head.units} />
      )}
    </Page>
  );
}
