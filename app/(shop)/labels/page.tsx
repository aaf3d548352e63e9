import type { Metadata } from 'next';
import { bookForPage } from '@/app/_server/book/book-for-page';
import { labelContentFor } from '@/app/_server/labels/label-content-for';
import { sayRefusal } from '@/app/_server/words/say-refusal';
import { Empty } from '@/app/_ui/empty';
import { LinkKey } from '@/app/_ui/keys';
import { LabelSheetForm } from '@/app/_ui/labels/label-sheet-form';
import { Page } from '@/app/_ui/page';
import { PlainError } from '@/app/_ui/plain-error';
import { labelCodeOf } from '@/shared/labels/symbol-text';

export const metadata: Metadata = { title: 'Print labels' };

export default async function LabelsPage({ searchParams }: { searchParams: Promise<{ codes?: string | string[] }> }) {
  const { codes } = await searchParams;
  const asked = [codes ?? []].flat().flatMap((list) => list.split(','));
  const wanted = [...new Set(asked.map((code) => code.trim()).filter((code) => code !== ''))];
  if (wanted.length === 0) {
    return (
      <Page title="Print labels">
        <Empty
          title="No labels are chosen."
          toDo="Open a tin, a piece or a place and choose to print its label; what you book in under Arrive offers its labels at the end."
        >
          <LinkKey href="/on-hand">Choose from what is on hand</LinkKey>
        </Empty>
      </Page>
    );
  }
  const found = await labelContentFor(wanted.map((code) => labelCodeOf(code) ?? code));
  if (!found.ok) {
    const { what, todo } = sayRefusal(found.error);
    return (
      <Page title="Print labels">
        <PlainError happened={what} kept="Nothing was printed and the book is unchanged." toDo={todo}>
          <LinkKey href="/on-hand">Choose from what is on hand</LinkKey>
        </PlainError>
      </Page>
    );
  }
  const { head } = await bookForPage();
  const labels = found.value.map(({ code, title, kind }) => ({ code, title, kind }));
  return (
    <Page title="Print labels" context={labels.length === 1 ? labels[0]?.title : `${labels.length} things`}>
      <LabelSheetForm labels={labels} prefer={head.units} />
    </Page>
  );
}
