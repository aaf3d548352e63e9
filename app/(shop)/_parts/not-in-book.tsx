import { Empty } from '@/app/_ui/empty';
import { LinkKey } from '@/app/_ui/keys';
import { Page } from '@/app/_ui/page';

/** A page for a label or a number that is not in the book: what to do instead. */
export function NotInBook({ title, toDo }: { title: string; toDo: string }) {
  return (
    <Page title="Not in the book" back={{ href: '/on-hand', words: 'On hand' }}>
      <Empty title={title} toDo={toDo}>
        <LinkKey href="/on-hand">Search on hand</LinkKey>
        <LinkKey variant="ghost" href="/arrive">
          Book something in
        </LinkKey>
      </Empty>
    </Page>
  );
}
