import { Empty } from '@/app/_ui/empty';
import { LinkKey } from '@/app/_ui/keys';
import { Page } from '@/app/_ui/page';

/** Stands where an address leads nowhere. */
export function Lost() {
  return (
    <Page title="Not in this book">
      <Empty
        title="There is nothing at this address."
        toDo="The label may be from another workshop, or the address has a typing mistake. Nothing is ever deleted from the book, so whatever was in it can be found: search for it by name, lot or label."
      >
        <LinkKey href="/on-hand">Search what is on hand</LinkKey>
        <LinkKey href="/pull" variant="ghost">
          Scan a label
        </LinkKey>
      </Empty>
    </Page>
  );
}
