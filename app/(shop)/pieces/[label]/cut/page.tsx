import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { bookForPage } from '@/app/_server/book/book-for-page';
import { readHouse } from '@/app/_server/cuts/read-house';
import { whatBecameOf } from '@/app/_server/cuts/what-became-of';
import { outlineOfPiece } from '@/app/_server/fits/outline-of-piece';
import { loadPiece } from '@/app/_server/stock/load-piece';
import { Empty } from '@/app/_ui/empty';
import { LinkKey } from '@/app/_ui/keys';
import { Page } from '@/app/_ui/page';
import { Section } from '@/app/_ui/section';
import { labelOfPage, titleOfLabel } from '@/app/(shop)/_parts/label-of-page';
import { sayPiece } from '@/app/(shop)/_parts/stock/say-piece';
import { PairWarning } from '@/app/(shop)/pieces/_ui/pair-warning';
import { CutForm } from '@/app/(shop)/pieces/[label]/cut/_ui/cut-form';
import { WasCut } from '@/app/(shop)/pieces/[label]/cut/_ui/was-cut';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';
import { printLengthExact } from '@/shared/units/print-length-exact';

type Props = { params: Promise<{ label: string }> };

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  return { title: `Cut ${await titleOfLabel(params, 'a piece')}` };
}

export default async function CutPage({ params }: Props) {
  const label = await labelOfPage(params, 'pieces');
  const { book, head } = await bookForPage();
  const line = await loadPiece(book.read, label);
  if (!line) notFound();
  const shown = printOwnLabel(label);
  const back = { href: `/pieces/${label}`, words: shown };
  if (!line.facts.inStock) {
    const cut = await whatBecameOf(book, line.stockId);
    return (
      <Page title={cut ? 'It is cut' : 'It is no longer here'} context={shown} back={back}>
        {cut ? (
          <Section title={cut.pieces.length === 1 ? 'One piece was kept' : `${cut.pieces.length} pieces were kept`}>
            <p>{cut.why}.</p>
            <WasCut
              entryId={cut.entryId}
              pieces={cut.pieces.map((piece) => {
                const { title, size } = sayPiece(piece, head.units);
                return { label: piece.label, words: `${title}, ${size}` };
              })}
            />
          </Section>
        ) : (
          <Empty title="There is nothing to cut." toDo="Its history says what became of it.">
            <LinkKey href={`/pieces/${label}`}>Open its page</LinkKey>
          </Empty>
        )}
      </Page>
    );
  }
  const outline = line.form === 'pack' ? undefined : outlineOfPiece(line);
  const house = await readHouse(book);
  const { form, shape, marks, thicknessNm, facts } = line;
  return (
    <Page title="Cut it" context={shown} back={back}>
      <PairWarning line={line} what="cut" />
      {outline?.ok ? (
        <CutForm
          key={`${shape?.id ?? 0} ${facts.promisedTo?.id ?? 0}`}
          piece={{
            label,
            form,
            flags: facts.flags,
            shapeId: shape?.id ?? null,
            outline: outline.value,
            marks,
            thicknessNm,
            job: facts.promisedTo?.name,
          }}
          house={house}
          kerf={printLengthExact(house.kerfNm, head.units)}
          prefer={head.units}
        />
      ) : line.form === 'pack' ? (
        <Empty title="A pack of boards has no outline." toDo="Take boards out of it on its page, and cut those.">
          <LinkKey href={`/pieces/${label}`}>Open the pack</LinkKey>
        </Empty>
      ) : (
        <Empty title="Its widths make no outline." toDo="Measure it down a chalk line first.">
          <LinkKey href={`/pieces/${label}/measure`}>Measure its outline</LinkKey>
        </Empty>
      )}
    </Page>
  );
}
