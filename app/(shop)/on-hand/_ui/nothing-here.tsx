import { Empty } from '@/app/_ui/empty';
import { Key, LinkKey } from '@/app/_ui/keys';
import type { Ask } from '@/app/(shop)/on-hand/ask';

interface NothingHereProps {
  ask: Ask;
  /** Places, products or jobs were found. */
  also: boolean;
  /** How many things the other shelf has. */
  elsewhere: number;
  change: (next: Ask) => void;
}

/** What to do where the shelf shows nothing. */
export function NothingHere({ ask, also, elsewhere, change }: NothingHereProps) {
  const wood = ask.show === 'wood';
  const other = { ...ask, show: wood ? ('materials' as const) : ('wood' as const) };
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
      toDo={
        elsewhere > 0
          ? `The other shelf has ${sayThings(elsewhere, !wood)} for it.`
          : 'Try fewer letters, or only the beginning of a word. What was used up shows with the switch above.'
      }
    >
      {elsewhere > 0 ? (
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

function sayThings(count: number, areWood: boolean): string {
  return `${count.toLocaleString('en')} ${areWood ? 'piece' : 'container'}${count === 1 ? '' : 's'}`;
}
