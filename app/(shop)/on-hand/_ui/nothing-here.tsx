import { Empty } from '@/app/_ui/empty';
import { Key, LinkKey } from '@/app/_ui/keys';
import type { Ask } from '@/app/(shop)/on-hand/ask';
import { sayWhatElse } from '@/app/(shop)/on-hand/say-count';
import type { Shelf } from '@/app/(shop)/on-hand/shelf';

interface NothingHereProps {
  ask: Ask;
  /** Places, products or jobs were found. */
  also: boolean;
  /** What the other shelf has, and whether all of it was looked through. */
  shelf: Pick<Shelf, 'elsewhere' | 'elsewhereMore' | 'cut'>;
  change: (next: Ask) => void;
}

/** What to do where the shelf shows nothing. */
export function NothingHere({ ask, also, shelf, change }: NothingHereProps) {
  const wood = ask.show === 'wood';
  const other = { ...ask, show: wood ? ('materials' as const) : ('wood' as const) };
  if (wood && ask.wood) {
    return (
      <Empty title="No wood here is like that." toDo="Ask for less, or show all of it.">
        <Key variant="ghost" onClick={() => change({ ...ask, wood: undefined })}>
          Show all of it
        </Key>
      </Empty>
    );
  }
  if (ask.query.trim() === '') {
    return (
      <Empty
        title={wood ? 'No wood is in the book yet.' : 'No resin, finish or glue is in the book yet.'}
        toDo={
          wood
            ? 'Book in a slab, board, sheet or offcut as it arrives: its measures, its moisture, its place.'
            : 'Scan the first tin as it arrives: the book reads its label, or you teach it the product once.'
        }
      >
        <LinkKey href="/arrive">Book something in</LinkKey>
      </Empty>
    );
  }
  return (
    <Empty
      title={`No ${wood ? 'wood' : 'containers'} ${also ? 'of it on hand' : 'found'} for “${ask.query.trim()}”.`}
      toDo={sayWhatElse(shelf, ask.show)}
    >
      {shelf.elsewhere > 0 ? (
        <Key variant="ghost" onClick={() => change(other)}>
          {wood ? 'Look under resin, finish, glue' : 'Look under wood'}
        </Key>
      ) : null}
      {ask.withEmpty ? null : (
        <Key variant="ghost" onClick={() => change({ ...ask, withEmpty: true })}>
          Also what is used up
        </Key>
      )}
    </Empty>
  );
}
