import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { bookForPage } from '@/app/_server/book/book-for-page';
import { outlineOfPiece } from '@/app/_server/fits/outline-of-piece';
import { marksOffTheWood } from '@/app/_server/shapes/off-the-wood';
import { loadPiece } from '@/app/_server/stock/load-piece';
import { Empty } from '@/app/_ui/empty';
import { LinkKey } from '@/app/_ui/keys';
import { Page } from '@/app/_ui/page';
import { labelOfPage, titleOfLabel } from '@/app/(shop)/_parts/label-of-page';
import { MarksForm } from '@/app/(shop)/pieces/[label]/marks/_ui/marks-form';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';

type Props = { params: Promise<{ label: string }> };

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  return { title: `Mark ${await titleOfLabel(params, 'a piece')}` };
}

export default async function MarksPage({ params }: Props) {
  const label = await labelOfPage(params, 'pieces');
  const { book, head } = await bookForPage();
  const line = await loadPiece(book.read, label);
  if (!line) notFound();
  const outline = outlineOfPiece(line);
  const shown = printOwnLabel(label);
  return (
    <Page title="Mark what is wrong with it" context={shown} back={{ href: `/pieces/${label}`, words: shown }}>
      {line.form === 'pack' ? (
        <Empty title="A pack of boards has no outline." toDo="Take a board out of it, and mark that." />
      ) : outline.ok ? (
        <MarksForm
          label={label}
          outline={outline.value}
          marks={line.marks}
          off={marksOffTheWood(outline.value, line.marks)}
          prefer={head.units}
          shapeId={line.shape?.id ?? null}
          before={line.marksOfBefore}
        />
      ) : (
        <Empty title="Its widths make no outline." toDo="Measure it down a chalk line first.">
          <LinkKey href={`/pieces/${label}/measure`}>Measure its outline</LinkKey>
        </Empty>
      )}
    </Page>
  );
}
